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

  private final int size;
  private final long[] digits;
  private final short[] scales;
  private final Map<Integer, BigDecimal> longOnes;

  private Numbers(int size, long[] digits, short[] scales, Map<Integer, BigDecimal> longOnes) {
    this.size = size;
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
    return size;
  }

  /** Whether a decimal stands at this place, counted from 0. */
  public boolean has(int place) {
    return place < scales.length && scales[place] != MISSING;
  }

  /** The decimal at this place, with the figures that were written. */
  public BigDecimal get(int place) {
    if (!has(place)) {
      throw new IllegalArgumentException("no number at place " + place);
    }
    BigDecimal longOne = longOnes.isEmpty() ? null : longOnes.get(place);
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

  /** Grows one by one, then becomes immutable; places after the last number take no room. */
  static final class Builder {
    private static final int FIRST = 64;

    private long[] digits = {};
    private short[] scales = {};
    private final Map<Integer, BigDecimal> longOnes = new HashMap<>();
    private int size;
    private int used;

    void add(@Nullable BigDecimal value) {
      if (value != null) {
        makeRoom();
        put(value);
        used = size + 1;
      }
      size++;
    }

    private void makeRoom() {
      if (size >= digits.length) {
        int room = Math.max(FIRST, size + size / 2 + 1);
        digits = Arrays.copyOf(digits, room);
        scales = Arrays.copyOf(scales, room);
      }
      Arrays.fill(scales, used, size, MISSING);
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
          size, Arrays.copyOf(digits, used), Arrays.copyOf(scales, used), Map.copyOf(longOnes));
    }
  }
}
