import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import plainscale.algebra.Budget;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.Outcome;
import plainscale.algebra.Relation;
import plainscale.algebra.Solver;
import plainscale.notation.Expr;
import plainscale.notation.Functions;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Printer;

/**
 * Solves the system on each line of the input, relations, unknown and known names with tabs between
 * them: {@code java -cp plainscale.jar SolveMany.java}. Prints the outcome, the answers and the
 * rejected roots, with tabs between the three and "; " within them.
 */
class SolveMany {
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    try (var lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
      lines.lines().forEach(line -> out.println(told(line.split("\t", -1))));
    }
    out.flush();
  }

  private static String told(String[] cells) {
    List<Relation> relations = new ArrayList<>();
    for (String text : cells[0].split("; ")) {
      String[] sides = text.split(" = ", 2);
      relations.add(
          new Relation("", new Equation(expression(sides[0]), expression(sides[1])), ""));
    }
    Known known = new Given(Set.of(cells[2].split(" ")));
    Derivation derivation = Solver.solve(relations, cells[1], known, Budget.usual());
    Outcome outcome = derivation.outcome();
    List<Expr> answers = List.of();
    List<Expr> rejected = List.of();
    if (outcome instanceof Outcome.Solved solved) {
      answers = List.of(solved.answer());
      rejected = solved.rejected().stream().map(Outcome.Other::root).toList();
    } else if (outcome instanceof Outcome.Several several) {
      answers = several.answers();
    }
    return String.join("\t", outcome.getClass().getSimpleName(), text(answers), text(rejected));
  }

  private static Expr expression(String text) {
    return Notation.parseExpression(text, new EveryName()).value();
  }

  private static String text(List<Expr> expressions) {
    return String.join("; ", expressions.stream().map(Printer::print).toList());
  }

  private record Given(Set<String> names) implements Known {
    @Override
    public boolean isKnown(String name) {
      return names.contains(name);
    }

    @Override
    public OptionalDouble value(String name) {
      return OptionalDouble.empty();
    }
  }

  /** Every name but the functions is a quantity. */
  private record EveryName() implements Names {
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
