package plainscale.document.check;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Measurement;
import plainscale.notation.Statement.Given;
import plainscale.table.Table;
import plainscale.units.UnitOfMeasure;

/**
 * Givens without a unit that look like measurements: with decimals or an uncertainty, and without a
 * word in their description that tells a plain number ({@code plain-numbers.tsv}). Whole numbers
 * are counts; with an uncertainty they may be either, and that is a remark.
 */
record GivenUnits() implements Rule {
  private static final String REPAIR =
      "write the unit after the number, or say in the description that it is a number, a ratio or a coefficient";

  @Override
  public String name() {
    return "given-unit";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.lines(Given.class).flatMap(this::check);
  }

  private Stream<Finding> check(CheckedLesson.Line line) {
    Given given = (Given) line.statement();
    Measurement measured = given.measurement();
    boolean plain = measured.unit().equals(UnitOfMeasure.ONE);
    if (!plain || line.isOpen() || PlainNumbers.tells(given.description())) {
      return Stream.empty();
    }
    String sentence = "The given %s has no unit.".formatted(given.name());
    if (!isWhole(measured.value()) || !measured.readings().stream().allMatch(GivenUnits::isWhole)) {
      return Stream.of(CheckedLesson.at(line).warning(this, sentence, REPAIR));
    }
    return measured.uncertainty().isPresent()
        ? Stream.of(CheckedLesson.at(line).remark(this, sentence, REPAIR))
        : Stream.empty();
  }

  private static boolean isWhole(BigDecimal value) {
    return value.signum() == 0 || value.stripTrailingZeros().scale() <= 0;
  }

  /** Words in which a description tells that a number has no unit. */
  private static final class PlainNumbers {
    private static final Set<String> WORDS =
        Table.read(GivenUnits.class, "plain-numbers.tsv").stream()
            .map(row -> row.get("word"))
            .collect(Collectors.toSet());

    private static boolean tells(String description) {
      return Arrays.stream(description.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
          .anyMatch(WORDS::contains);
    }
  }
}
