package plainscale.algebra;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plainscale.notation.Expr;
import plainscale.notation.Functions;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Printer;
import plainscale.notation.Statement;
import plainscale.table.Table;

/** Relations from text, for tests. */
final class Systems {
  private static final Names ALL = new EveryName();

  private Systems() {}

  /** One row of the file of systems. */
  record Example(
      String id,
      List<Relation> relations,
      String unknown,
      Set<String> known,
      String outcome,
      int steps) {

    Derivation solve() {
      return Solver.solve(relations, unknown, Systems.known(known), Budget.usual());
    }

    @Override
    public String toString() {
      return id;
    }
  }

  static List<Example> examples() {
    return Table.read(Systems.class, "/plainscale/fixtures/derivations.tsv").stream()
        .map(Systems::example)
        .toList();
  }

  private static Example example(Table.Row row) {
    Set<String> known =
        Arrays.stream(row.get("known").split(" "))
            .filter(name -> !name.isEmpty())
            .collect(Collectors.toSet());
    return new Example(
        row.get("id"),
        relations(row.get("relations").split("; ")),
        row.get("unknown"),
        known,
        row.get("outcome"),
        Integer.parseInt(row.get("steps")));
  }

  /** Relations "left = right", called a, b, c … */
  static List<Relation> relations(String... texts) {
    List<Relation> relations = new ArrayList<>();
    for (String text : texts) {
      String name = String.valueOf((char) ('a' + relations.size()));
      relations.add(new Relation(name, equation(text), ""));
    }
    return relations;
  }

  static Equation equation(String text) {
    String[] sides = text.split(" = ", 2);
    return new Equation(expression(sides[0]), expression(sides[1]));
  }

  static Expr expression(String text) {
    Statement.Show show = Notation.parseExpression(text, ALL);
    return show.value();
  }

  /** Known names without values. */
  static Known known(Collection<String> names) {
    Map<String, Double> values = new HashMap<>();
    names.forEach(name -> values.put(name, Double.NaN));
    return known(values);
  }

  /** Known names with values; not a number stands for no value. */
  static Known known(Map<String, Double> values) {
    Map<String, Double> own = new TreeMap<>(values);
    return new Known() {
      @Override
      public boolean isKnown(String name) {
        return own.containsKey(name);
      }

      @Override
      public OptionalDouble value(String name) {
        double value = own.getOrDefault(name, Double.NaN);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
      }
    };
  }

  /** The derivation of the unknown from relations "left = right". */
  static Derivation solve(String unknown, Map<String, Double> known, String... relations) {
    return Solver.solve(relations(relations), unknown, Systems.known(known), Budget.usual());
  }

  /** The derivation as on a board, for messages. */
  static String text(Derivation derivation) {
    StringBuilder text = new StringBuilder();
    int number = 0;
    for (Relation relation : derivation.relations()) {
      text.append('(').append(++number).append(") ").append(relation.equation().text());
      text.append('\n');
    }
    for (Step step : derivation.steps()) {
      text.append("(%d) %s    %s".formatted(step.number(), step.after().text(), step.reason()));
      step.condition().ifPresent(condition -> text.append(" [").append(condition).append(']'));
      text.append('\n');
    }
    return text.append(text(derivation.outcome())).toString();
  }

  private static String text(Outcome outcome) {
    if (outcome instanceof Outcome.Solved solved) {
      String others =
          solved.rejected().stream()
              .map(other -> "; not " + Printer.print(other.root()) + ": " + other.why())
              .collect(Collectors.joining());
      return "Solved: " + Printer.print(solved.answer()) + others;
    }
    if (outcome instanceof Outcome.Several several) {
      return "Several: " + several.answers().stream().map(Printer::print).toList();
    }
    return outcome instanceof Outcome.Numeric numeric
        ? "Numeric: " + numeric.equation().text()
        : outcome.toString();
  }

  /** Every name is a quantity of the sheet. */
  private static final class EveryName implements Names {
    @Override
    public boolean isQuantity(String name) {
      return Functions.find(name).isEmpty();
    }

    @Override
    public boolean isDefined(String name) {
      return isQuantity(name);
    }

    @Override
    public boolean isSameAsUnit(String name) {
      return false;
    }

    @Override
    public String meaning(String name) {
      return "a quantity";
    }

    @Override
    public List<String> all() {
      return List.of();
    }
  }
}
