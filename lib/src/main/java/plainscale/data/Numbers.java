package plainscale.data;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Decimals as they were written, some of them missing. Ten bytes hold a decimal of up to eighteen
 * digits, so that a million rows fit; longer ones are kept beside.
 */
public final class Numbers {
  private static final short MISSING = Short.MIN_VALUE;
  private static final short LONG = Short.MAX_VALUE;
  private static final int BITS = 63;

  private final long[] digits;
  private final short[] scales;
  private final Map<Integer, BigDecimal> longOnes;

  private Numbers(long[] digits, short[] scales, Map<Integer, BigDecimal> longOnes) {
    this.digits = digits;
    this.scales = scales;
    this.longOnes = longOnes;
  }

  /** These decimals; null where one is missing. */
  public static Numbers of(Iterable<? extends @Nullable BigDecimal> values) {
    Builder builder = new Builder();
    values.forEach(builder::add);
    return builder.build();
  }

  /** How many places there are, empty ones among them. */
  public int size() {
    return scales.length;
  }

  /** Whether a decimal stands at this place, counted from 0. */
  public boolean has(int place) {
    return scales[place] != MISSING;
  }

  /** The decimal at this place, with the figures that were written. */
  public BigDecimal get(int place) {
    if (!has(place)) {
      throw new IllegalArgumentException("no number at place " + place);
    }
    BigDecimal longOne = longOnes.get(place);
    return longOne != null ? longOne : BigDecimal.valueOf(digits[place], scales[place]);
  }

  /** How many are there. */
  public int count() {
    return (int) IntStream.range(0, size()).filter(this::has).count();
  }

  /** Those at the places that pass, in their order. */
  Numbers at(IntPredicate places) {
    Builder builder = new Builder();
    IntStream.range(0, size()).filter(places).forEach(i -> builder.add(has(i) ? get(i) : null));
    return builder.build();
  }

  /** Grows one by one, then becomes immutable. */
  static final class Builder {
    private long[] digits = new long[64];
    private short[] scales = new short[64];
    private final Map<Integer, BigDecimal> longOnes = new HashMap<>();
    private int size;

    void add(@Nullable BigDecimal value) {
      if (size == digits.length) {
        digits = Arrays.copyOf(digits, 2 * size);
        scales = Arrays.copyOf(scales, 2 * size);
      }
      if (value == null) {
        scales[size] = MISSING;
      } else {
        put(value);
      }
      size++;
    }

    private void put(BigDecimal value) {
      BigInteger unscaled = value.unscaledValue();
      if (unscaled.bitLength() > BITS || Math.abs(value.scale()) >= LONG) {
        scales[size] = LONG;
        longOnes.put(size, value);
      } else {
        scales[size] = (short) value.scale();
        digits[size] = unscaled.longValueExact();
      }
    }

    Numbers build() {
      return new Numbers(
          Arrays.copyOf(digits, size), Arrays.copyOf(scales, size), Map.copyOf(longOnes));
    }
  }
}
