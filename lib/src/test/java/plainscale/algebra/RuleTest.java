package plainscale.algebra;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.notation.Printer;
import plainscale.table.Table;

/** Each rule: what it makes of equations, in which words, and that the check refuses the wrong. */
class RuleTest {

  /** A step by that rule, right and wrong. */
  record Row(Rule rule, List<Relation> from, String after, String wrong) {
    @Override
    public String toString() {
      return rule + ": " + after;
    }

    private Check check(String equation) {
      List<Integer> numbers = from.size() == 1 ? List.of(1) : List.of(1, 2);
      Step step =
          new Step(
              from.size() + 1, rule, numbers, Systems.equation(equation), "", Optional.empty());
      Outcome open = new Outcome.Bounded("one step");
      return Check.of(new Derivation("x", from, List.of(step), open));
    }
  }

  static List<Row> rows() {
    return Table.read(RuleTest.class, "/plainscale/fixtures/rules.tsv").stream()
        .map(
            row ->
                new Row(
                    Rule.valueOf(row.get("rule")),
                    Systems.relations(row.get("from").split("; ")),
                    row.get("after"),
                    row.get("wrong")))
        .toList();
  }

  @Test
  void everyRuleHasARow() {
    Set<Rule> rules = rows().stream().map(Row::rule).collect(Collectors.toSet());
    assertEquals(EnumSet.allOf(Rule.class), rules);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theCheckAcceptsWhatFollows(Row row) {
    assertEquals(List.of(), row.check(row.after()).failures());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theCheckRefusesWhatDoesNotFollow(Row row) {
    assertFalse(row.check(row.wrong()).passes(), row.wrong());
  }

  /** A step as the solver tells it. */
  record Told(List<Relation> relations, String unknown, Set<String> known, String step) {
    @Override
    public String toString() {
      return step;
    }
  }

  static List<Told> told() {
    return Table.read(RuleTest.class, "/plainscale/fixtures/told.tsv").stream()
        .map(
            row ->
                new Told(
                    Systems.relations(row.get("relations").split("; ")),
                    row.get("unknown"),
                    Set.copyOf(Arrays.asList(row.get("known").split(" "))),
                    row.get("step")))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("told")
  void theStepIsToldInTheseWords(Told told) {
    Derivation derivation =
        Solver.solve(told.relations(), told.unknown(), Systems.known(told.known()), Budget.usual());
    List<String> steps =
        derivation.steps().stream()
            .map(s -> s.rule() + " | " + s.after().text() + " | " + s.reason())
            .toList();
    assertTrue(steps.contains(told.step()), () -> String.join("\n", steps));
  }

  @Test
  void anAnswerIsReadBackAsItself() {
    for (Systems.Example example : Systems.examples()) {
      if (example.solve().outcome() instanceof Outcome.Solved solved) {
        String text = Printer.print(solved.answer());
        Equation same = new Equation(solved.answer(), Systems.expression(text));
        Mentions mentions = Mentions.of(List.of(same));
        Map<String, Double> values = new Points(3, mentions.angles()).next(mentions.names(), 0);
        Approximate left = Approximate.of(same.left(), values);
        boolean exists = Double.isFinite(left.value());
        assertTrue(!exists || left.near(Approximate.of(same.right(), values)), text);
      }
    }
  }
}
