package plainscale.magnitude;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.table.Table;

/** The named powers of ten of one scale, the smallest power first. */
final class ScaleNames {
  private static final Map<Scale, ScaleNames> LOADED = new EnumMap<>(Scale.class);
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  /** One named power: {@code (6, "million", 10^6)}. */
  record Name(int power, String word, BigInteger size) {

    /** What stands before the name of this power for a large number. */
    BigDecimal mantissaOf(BigDecimal value) {
      return value.scaleByPowerOfTen(-power);
    }

    /** What stands before the name of the fraction, "millionths". */
    BigDecimal partsOf(BigDecimal value) {
      return value.scaleByPowerOfTen(power);
    }
  }

  private final List<Name> names;

  private ScaleNames(List<Name> names) {
    this.names = names;
  }

  static ScaleNames of(Scale scale) {
    synchronized (LOADED) {
      return LOADED.computeIfAbsent(scale, ScaleNames::load);
    }
  }

  private static ScaleNames load(Scale scale) {
    List<Name> names = new ArrayList<>();
    for (Table.Row row : Table.read(ScaleNames.class, "scale-names.tsv")) {
      String word = row.get(scale.column());
      int power = Integer.parseInt(row.get("power"));
      if (!word.isEmpty()) {
        names.add(new Name(power, word, BigInteger.TEN.pow(power)));
      }
    }
    return new ScaleNames(List.copyOf(names));
  }

  /** The name of this very power. */
  Optional<Name> exactly(long power) {
    return names.stream().filter(n -> n.power() == power).findFirst();
  }

  /** The largest named power, from thousand up, that is not above the number. */
  Optional<Name> under(BigDecimal value) {
    long order = PowerOfTen.of(value).exponent();
    return names.stream()
        .filter(n -> n.power() >= 3 && n.power() <= order)
        .reduce((smaller, larger) -> larger);
  }

  /**
   * The name for a fraction: the one whose mantissa shows exactly the figures as a whole number (53
   * thousandths, not 5.3 hundredths), otherwise the coarsest power of a thousand with a mantissa
   * from 1 to 1000 (1.39 millionths).
   */
  Optional<Name> forFraction(BigDecimal value) {
    List<Name> fitting = names.stream().filter(n -> fits(n.partsOf(value))).toList();
    return fitting.stream()
        .filter(n -> n.partsOf(value).scale() == 0)
        .findFirst()
        .or(() -> fitting.stream().filter(n -> n.power() % 3 == 0).findFirst());
  }

  private static boolean fits(BigDecimal mantissa) {
    return mantissa.compareTo(BigDecimal.ONE) >= 0 && mantissa.compareTo(THOUSAND) < 0;
  }
}
