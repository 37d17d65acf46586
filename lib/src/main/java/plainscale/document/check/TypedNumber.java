package plainscale.document.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import plainscale.units.UnitOfMeasure;

/**
 * A number that somebody has typed into a text.
 *
 * @param at where it begins
 * @param text the number as it stands there, without its unit
 * @param value what it means, without its sign
 * @param figures how many figures were typed, without zeros that only keep the place
 * @param scaled whether a power of ten or its name stands behind the digits
 * @param after what stands behind it
 * @param units what the words behind it can mean as a unit, the longest reading first
 */
record TypedNumber(
    int at,
    String text,
    BigDecimal value,
    int figures,
    boolean scaled,
    String after,
    List<Reading> units) {
  /** Fewer figures than these are met by chance. */
  private static final int FEWEST = 3;

  private static final int FEWEST_WITH_UNIT = 2;

  /** A unit behind a number, as it stands there. */
  record Reading(String text, UnitOfMeasure unit) {}

  /** How the number would be typed if it were that quantity; none if it is another number. */
  Optional<String> as(Computed computed) {
    if (figures >= FEWEST_WITH_UNIT) {
      Optional<Reading> reading =
          units.stream().filter(r -> computed.is(value, figures, r.unit())).findFirst();
      Optional<Reading> inWords = reading.isPresent() ? reading : inWords(computed);
      if (inWords.isPresent()) {
        return inWords.map(r -> text + gap(r) + r.text());
      }
    }
    boolean enough = figures >= FEWEST || (scaled && figures >= FEWEST_WITH_UNIT);
    return enough && isBare(computed) ? Optional.of(text) : Optional.empty();
  }

  private static String gap(Reading reading) {
    return reading.text().startsWith("°") && reading.text().length() == 1 ? "" : " ";
  }

  /** “0.031 newtons”, “67 billionths of a coulomb”. */
  private Optional<Reading> inWords(Computed computed) {
    String words = after.strip();
    String of = words.startsWith("of a ") ? "of a " : words.startsWith("of an ") ? "of an " : "";
    return computed
        .units()
        .filter(unit -> !unit.equals(UnitOfMeasure.ONE))
        .filter(unit -> computed.is(value, figures, unit))
        .flatMap(
            unit ->
                List.of(unit.words(false), unit.words(true)).stream()
                    .filter(said -> words.startsWith(of + said))
                    .limit(1)
                    .map(said -> new Reading(of + said, unit)))
        .findFirst();
  }

  /** Without a unit a plain number is meant, or the digits that stand beside a unit elsewhere. */
  private boolean isBare(Computed computed) {
    if (!units.isEmpty()) {
      return false;
    }
    boolean number = computed.is(value, figures, UnitOfMeasure.ONE);
    return number
        || computed.shown().stream().anyMatch(shown -> shown.value().abs().compareTo(value) == 0);
  }

  /** A number cut to so many figures. */
  static BigDecimal rounded(BigDecimal value, int figures) {
    return value.round(new MathContext(figures, RoundingMode.HALF_EVEN));
  }
}
