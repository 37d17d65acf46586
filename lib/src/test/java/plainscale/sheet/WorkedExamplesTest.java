package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.fixtures.Block;
import plainscale.fixtures.Block.Amount;
import plainscale.notation.Greek;
import plainscale.units.UnitParser;

/**
 * Worked examples of textbooks, each run as a cell. The sources stand in {@code openstax.txt}, with
 * a remark where the book's own answer is not the rounded value.
 */
class WorkedExamplesTest {
  private static final int FEWEST = 50;

  /** The values of the file are computed in doubles. */
  private static final double AS_COMPUTED = 1e-12;

  static List<Block> records() {
    return Block.read("openstax.txt");
  }

  @Test
  void noRecordIsLost() {
    assertTrue(records().size() >= FEWEST, records().size() + " records");
    assertEquals(records().size(), records().stream().map(r -> r.one("id")).distinct().count());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("records")
  void theCellGivesTheBooksAnswer(Block record) {
    List<Amount> printed = record.amounts("printed");
    assertFalse(printed.isEmpty());
    Sheet sheet = worked(record, record.one("constants"));
    Set<String> differs = differs(record);
    for (Amount answer : printed) {
      BigDecimal shown = shown(sheet, answer);
      if (differs.remove(answer.name())) {
        assertFalse(record.all("remark").isEmpty(), "no reason given");
        assertNotEquals(answer.number(), shown, answer.name());
        assertWithin(answer.number().ulp(), answer, full(sheet, answer));
      } else {
        assertEquals(answer.number(), shown, answer.name());
        BigDecimal half = answer.number().ulp().divide(BigDecimal.valueOf(2));
        assertWithin(half, answer, full(sheet, answer));
      }
    }
    assertEquals(Set.of(), differs, "differs names what is not printed");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("records")
  void theCellComputesTheFullValueWithEitherSetOfConstants(Block record) {
    boolean none = record.one("constants").equals("none");
    for (String set : none ? List.of("none") : List.of("textbook", "codata")) {
      List<Amount> values = record.amounts(none ? "value" : set);
      assertEquals(record.amounts("printed").size(), values.size());
      Sheet sheet = worked(record, set);
      for (Amount value : values) {
        double expected = value.number().doubleValue();
        double delta = Math.abs(expected) * AS_COMPUTED;
        assertEquals(expected, full(sheet, value).doubleValue(), delta, set + " " + value);
      }
    }
  }

  private static Sheet worked(Block record, String constants) {
    Stream<String> set =
        constants.equals("none") ? Stream.empty() : Stream.of("constants " + constants);
    Stream<String> givens = record.all("given").stream().map(given -> "given " + given);
    Stream<String> formulas = record.all("formula").stream();
    String cell =
        String.join("\n", Stream.of(set, givens, formulas).flatMap(lines -> lines).toList());
    Sheet sheet = new Sheet();
    Run run = sheet.run("example", cell);
    assertEquals(List.of(), run.mistakes());
    return sheet;
  }

  private static Set<String> differs(Block record) {
    Set<String> names = new TreeSet<>();
    record.all("differs").forEach(value -> names.addAll(List.of(value.split(", *"))));
    return names;
  }

  private static BigDecimal shown(Sheet sheet, Amount answer) {
    String unit = answer.unit().isEmpty() ? "" : " in " + answer.unit();
    String show =
        "show " + answer.name() + unit + " to " + answer.number().precision() + " figures";
    Run run = sheet.run("show", show);
    assertEquals(List.of(), run.mistakes());
    return ((Result.Valued) run.results().get(0)).shown().value();
  }

  private static BigDecimal full(Sheet sheet, Amount asked) {
    BigDecimal coherent = sheet.value(Greek.normal(asked.name())).orElseThrow().value();
    return asked.unit().isEmpty()
        ? coherent
        : UnitParser.parse(asked.unit()).fromCoherent(coherent);
  }

  private static void assertWithin(BigDecimal most, Amount printed, BigDecimal value) {
    BigDecimal off = value.subtract(printed.number()).abs();
    assertTrue(off.compareTo(most) <= 0, printed + " against " + value);
  }
}
