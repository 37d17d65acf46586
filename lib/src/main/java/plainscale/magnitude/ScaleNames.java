package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import plainscale.table.Table;

/** The named powers of ten of a language and a scale, the smallest power first; perhaps none. */
final class ScaleNames {
  private static final Map<List<String>, ScaleNames> LOADED = new ConcurrentHashMap<>();
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  /**
   * One named power: {@code (6, "million", "million", "millionth", "millionths")}. Where the
   * language has no such word, the text is empty.
   */
  record Name(int power, String one, String other, String part, String parts) {

    private static Name of(Table.Row row) {
      return new Name(
          Integer.parseInt(row.get("power")),
          row.get("one"),
          row.get("other"),
          row.get("part"),
          row.get("parts"));
    }

    /** What stands before the name of this power for a large number. */
    BigDecimal mantissaOf(BigDecimal value) {
      return value.scaleByPowerOfTen(-power);
    }

    /** What stands before the name of the fraction, "millionths". */
    BigDecimal partsOf(BigDecimal value) {
      return value.scaleByPowerOfTen(power);
    }

    String word(boolean isOne) {
      return isOne ? one : other;
    }

    String part(boolean isOne) {
      return isOne ? part : parts;
    }
  }

  private final List<Name> names;
  private final List<Name> counting;

  private ScaleNames(List<Name> names) {
    this.names = names;
    this.counting = names.stream().filter(n -> n.power() >= 3 && !n.other().isEmpty()).toList();
  }

  /** The rows with that word in the column "names" of scale-names.tsv. */
  static ScaleNames of(String language, Scale scale) {
    return LOADED.computeIfAbsent(List.of(language, scale.word()), key -> load(language, scale));
  }

  private static ScaleNames load(String language, Scale scale) {
    return new ScaleNames(
        Table.read(ScaleNames.class, "scale-names.tsv").stream()
            .filter(row -> row.get("names").equals(language))
            .filter(row -> List.of(row.get("scales").split(" ")).contains(scale.word()))
            .map(Name::of)
            .sorted((a, b) -> Integer.compare(a.power(), b.power()))
            .toList());
  }

  /** Whether the language does not have this scale. */
  boolean isEmpty() {
    return names.isEmpty();
  }

  boolean hasFractions() {
    return names.stream().anyMatch(n -> !n.part().isEmpty());
  }

  /** The name of this very power. */
  Optional<Name> exactly(long power) {
    return names.stream().filter(n -> n.power() == power).findFirst();
  }

  /** The largest named power, from thousand up, that is not above the number. */
  Optional<Name> under(BigDecimal value) {
    return within(PowerOfTen.of(value).exponent());
  }

  /** The largest name for a power from thousand up to {@code order}. */
  Optional<Name> within(long order) {
    for (int i = counting.size() - 1; i >= 0; i--) {
      if (counting.get(i).power() <= order) {
        return Optional.of(counting.get(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The name for a fraction: the one whose mantissa shows exactly the figures as a whole number (53
   * thousandths, not 5.3 hundredths), otherwise the coarsest power of a thousand with a mantissa
   * from 1 to 1000 (1.39 millionths).
   */
  Optional<Name> forFraction(BigDecimal value) {
    List<Name> fitting =
        names.stream().filter(n -> !n.part().isEmpty() && fits(n.partsOf(value))).toList();
    return fitting.stream()
        .filter(n -> n.partsOf(value).scale() == 0)
        .findFirst()
        .or(() -> fitting.stream().filter(n -> n.power() % 3 == 0).findFirst());
  }

  private static boolean fits(BigDecimal mantissa) {
    return mantissa.compareTo(BigDecimal.ONE) >= 0 && mantissa.compareTo(THOUSAND) < 0;
  }
}
