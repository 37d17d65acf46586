package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.algebra.Budget;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Scope;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;
import plainscale.units.UnitParser;

class PrinterTest {
  private static final int EXPRESSIONS = 10_000;
  private static final Names NAMES = new KnownNames(Set.copyOf(RandomExpressions.NAMES));

  private record Values(Map<String, Quantity> values) implements Scope {
    @Override
    public Quantity value(Expr.Name name, String source) {
      return Objects.requireNonNull(values.get(name.text()));
    }

    @Override
    public List<String> ofKind(Kind kind) {
      return List.of();
    }
  }

  private static final Scope NUMBERS =
      new Values(
          Map.of(
              "x", Quantity.number(new BigDecimal("0.7")),
              "y", Quantity.number(new BigDecimal("1.9")),
              "θ", Quantity.written(new BigDecimal("30.0"), UnitParser.parse("°")),
              "ε_0", Quantity.number(new BigDecimal("-3")),
              "q_1", Quantity.number(new BigDecimal("0.25"))));
  private static final Scope MEASURED =
      new Values(
          Map.of(
              "x", Quantity.written(new BigDecimal("0.70"), UnitParser.parse("m")),
              "y", Quantity.written(new BigDecimal("1.9"), UnitParser.parse("m")),
              "θ", Quantity.written(new BigDecimal("30.0"), UnitParser.parse("°")),
              "ε_0", Quantity.number(new BigDecimal("-3")),
              "q_1", Quantity.written(new BigDecimal("0.25"), UnitParser.parse("s"))));

  private static Expr parse(String text) {
    return Notation.parseExpression(text, NAMES).value();
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatIsPrintedIsReadAsTheSameExpression(boolean units) {
    Random random = new Random(4711);
    RandomExpressions expressions = new RandomExpressions(random, units);
    Scope scope = units ? MEASURED : NUMBERS;
    int valued = 0;
    for (int i = 0; i < EXPRESSIONS; i++) {
      Expr expr = expressions.next(1 + i % 4);
      String printed = Printer.print(expr);
      Expr read = parse(printed);
      assertEquals(tree(expr), tree(read), printed);
      assertEquals(printed, Printer.print(read));
      String value = outcome(expr, scope);
      assertEquals(value, outcome(read, scope), () -> Bracketed.text(expr) + " as " + printed);
      valued += value.startsWith("=") ? 1 : 0;
    }
    assertTrue(valued > EXPRESSIONS / 8, valued + " expressions with a value: too few to compare");
  }

  /** Where g and m are names and units too, a number is kept apart from the name after it. */
  @ParameterizedTest
  @ValueSource(strings = {"(-2)*g", "(-2)*g m", "-(2*g)", "(-0.5)*m/g", "(-1/2) m", "x (-2) g"})
  void aNameAfterANumberWithASignIsNotReadAsAUnit(String formula) {
    Names names = new KnownNames(Set.of("x", "g", "m"));
    Expr expr = Notation.parseExpression(formula, names).value();
    String printed = Printer.print(expr);
    assertEquals(tree(expr), tree(Notation.parseExpression(printed, names).value()), printed);
  }

  /** A raised ⁻² is one number, a printed ^-2 is a sign and a number. */
  private static String tree(Expr expr) {
    return Bracketed.text(expr).replaceAll("\\^-(\\d+)", "^(-$1)");
  }

  /** The value with its figures and unit, or what is wrong with it. */
  private static String outcome(Expr expr, Scope scope) {
    try {
      Quantity value = new Evaluator("", scope, Budget.usual()).evaluate(expr);
      return Evaluator.at("", expr.span(), () -> "= " + value.shown(12) + " " + value.shown());
    } catch (ProblemException e) {
      return e.problems().get(0).sentence();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x*y           | x y",
        "2*x           | 2*x",
        "x·2           | x*2",
        "(x y)         | x y",
        "x (y θ)       | x (y θ)",
        "((x + y))     | x + y",
        "x - (y - 1)   | x - (y - 1)",
        "x - y - 1     | x - y - 1",
        "(x/y)/2       | (x/y)/2",
        "x/(y q_1)     | x/(y q_1)",
        "1/2 x         | (1/2) x",
        "(x*2)/3       | (x*2)/3",
        "x*2/3         | x (2/3)",
        "-x y          | -x y",
        "(-2) x        | -2*x",
        "-2*x          | -2*x",
        "(-(-2)) x     | -(-2)*x",
        "(-2) (x y)    | -2*(x y)",
        "-(x y)        | -(x y)",
        "x - (-y)      | x - (-y)",
        "x (-y)        | x (-y)",
        "x⁻²           | x^-2",
        "(x^2)^3       | (x^2)^3",
        "x^2^3         | x^(2^3)",
        "2.0 [m/s]     | 2.0 [m/s]",
        "2.0 m/s       | 2.0 [m/s]",
        "(2.0) [m]     | (2.0) [m]",
        "x [m]         | x [m]",
        "(x y) [m]     | (x y) [m]",
        "2 m/x         | (2 m)/x",
        "30°           | 30°",
        "5 [[lb_av]]   | 5 [[lb_av]]",
        "5 [kg.m/s2]   | 5 [kg·m/s²]",
        "5 [1]         | 5 [1]",
        "(x in km/h)   | (x in km/h)",
        "sqrt(x + y)   | sqrt(x + y)",
        "1e-19         | 1e-19",
        "0.00012       | 0.00012",
        "1.50e3        | 1.50e3",
        "theta         | θ"
      })
  void bracketsStandWhereTheyAreNeeded(String formula, String printed) {
    assertEquals(printed, Printer.print(parse(formula)));
    assertEquals(printed, Printer.print(parse(printed)), "a second time");
  }
}
