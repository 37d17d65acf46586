package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;

/** Relations whose units cannot agree are told where they stand, solved or not. */
class RelationUnitsTest {
  private static final String GIVENS =
      "given p = 3 Pa\ngiven V = 2 m^3\ngiven E = 5 J\ngiven θ = 30°\ngiven s = 2 m\ngiven d = 1 m\n";

  private static List<Problem> told(String cell) {
    Sheet sheet = new Sheet();
    sheet.run("givens", GIVENS);
    return sheet.run("cell", cell).mistakes().stream().map(Result.Mistaken::problem).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "relation r: p + V = p | p + V = p. Here V is a volume, p is a pressure.",
        "relation r: p = V     | p = V. Here V is a volume, p is a pressure.",
        "relation r: x + p = V | x + p = V. Here V is a volume, p is a pressure.",
        "relation r: E = p V^2 | E = p V^2. Here E is an energy, V is a volume, p is a pressure.",
        "relation r: sin(s) = d/s | sin(s) = d/s. Here d is a length, s is a length.",
      })
  void whatCannotAgreeIsToldWithTheKinds(String cell, String rest) {
    List<Problem> told = told(cell);
    assertEquals(1, told.size());
    assertEquals(
        "The units of the relation “r” cannot agree, whatever its unknowns are: " + rest,
        told.get(0).sentence());
    assertEquals(List.of(RelationUnits.REPAIR), told.get(0).repairs());
  }

  @ParameterizedTest
  @CsvSource({
    "relation r: E = p V",
    "relation r: p = V x",
    "relation r: θ = s/d",
    "relation r: sin(θ) = d/s",
    "relation r: 0 = p - p",
    "relation r: x = y",
    "relation r: nothing_yet + p = E/V",
  })
  void whatAgreesOrMayAgreeIsNotTold(String cell) {
    assertEquals(List.of(), told(cell));
  }

  @Test
  void solvingTellsTheKindsToo() {
    List<Problem> told = told("relation r: x + p = V\nsolve r for x");
    assertEquals(List.of(RelationUnits.REPAIR), told.get(told.size() - 1).repairs());
  }
}
