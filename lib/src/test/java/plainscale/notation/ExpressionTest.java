package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a formula is read: what binds to what, where a space multiplies, where a unit ends. */
class ExpressionTest {
  private static final Names NAMES =
      KnownNames.of("a", "b", "c", "k", "q", "d", "v", "x", "θ", "F_1", "n");

  private static String read(String formula) {
    return Bracketed.text(Notation.parseExpression(formula, NAMES).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a + b*c                 | (a+(b*c))",
        "a - b - c               | ((a-b)-c)",
        "a - (b - c)             | (a-(b-c))",
        "a*b + c*d               | ((a*b)+(c*d))",
        "(a + b)*c               | ((a+b)*c)",
        "a*b^2                   | (a*(b^2))",
        "(a*b)^2                 | ((a*b)^2)",
        "a^b^c                   | (a^(b^c))",
        "2^3^2                   | (2^(3^2))",
        "-a^2                    | (-(a^2))",
        "(-a)^2                  | ((-a)^2)",
        "a^-2                    | (a^(-2))",
        "a^-b^2                  | (a^(-(b^2)))",
        "--a                     | (-(-a))",
        "-a b                    | ((-a)*b)",
        "a - -b                  | (a-(-b))",
        "a/b                     | (a/b)",
        "a b/c                   | ((a*b)/c)",
        "a*b/c                   | ((a*b)/c)",
        "a/(b c)                 | (a/(b*c))",
        "(a/b)*c                 | ((a/b)*c)",
        "(a/b)/c                 | ((a/b)/c)",
        "a/b^2                   | (a/(b^2))",
        "a/b + c                 | ((a/b)+c)",
        "a/b - c/d               | ((a/b)-(c/d))",
        "a²                      | (a^2)",
        "a⁻¹²                    | (a^-12)",
        "a² b³                   | ((a^2)*(b^3))",
        "a×b                     | (a*b)",
        "a·b⋅c                   | ((a*b)*c)",
        "a − b                   | (a-b)"
      })
  void operatorsBindAsOnTheBoard(String formula, String bracketed) {
    assertEquals(bracketed, read(formula));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "k q^2                   | (k*(q^2))",
        "k q q/d^2               | (((k*q)*q)/(d^2))",
        "2 x                     | (2*x)",
        "2 (a + b)               | (2*(a+b))",
        "2(a + b)                | (2*(a+b))",
        "(a + b)(a - b)          | ((a+b)*(a-b))",
        "(a + b) c               | ((a+b)*c)",
        "a (b + c)               | (a*(b+c))",
        "F_1 sin(θ)              | (F_1*sin(θ))",
        "sin(θ) cos(θ)           | (sin(θ)*cos(θ))",
        "a sqrt(b) c             | ((a*sqrt(b))*c)",
        "a b + c                 | ((a*b)+c)",
        "a -b                    | (a-b)",
        "1/2 a v^2               | (((1/2)*a)*(v^2))",
        "a*1/2                   | (a*(1/2))",
        "3/4 a/b                 | (((3/4)*a)/b)",
        "1/2                     | (1/2)",
        "1/a                     | (1/a)",
        "2^3 a                   | ((2^3)*a)",
        "a^2 b                   | ((a^2)*b)",
        "sin (θ)                 | sin(θ)",
        "sqrt(a)^2               | (sqrt(a)^2)"
      })
  void aSpaceMultiplies(String formula, String bracketed) {
    assertEquals(bracketed, read(formula));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 m                     | 2[m]",
        "2m                      | 2[m]",
        "2.0 m/s                 | 2.0[m/s]",
        "2 m/s^2                 | 2[m/s²]",
        "2 m/s²                  | 2[m/s²]",
        "9.81 m s⁻²              | 9.81[m/s²]",
        "9.81 m s^-2             | 9.81[m/s²]",
        "2 N·m                   | 2[N·m]",
        "2 N m                   | 2[N·m]",
        "2 [N m]                 | 2[N·m]",
        "2 [kg m/s²]             | 2[kg·m/s²]",
        "a [m]                   | (a[m])",
        "a^2 [m]                 | (a^2[m])",
        "(a + b) [m]             | ((a+b)[m])",
        "a b [m]                 | (a*(b[m]))",
        "30°                     | 30[°]",
        "25 °C                   | 25[°C]",
        "2 % x                   | (2[%]*x)",
        "2 m x                   | (2[m]*x)",
        "2 m*x                   | (2[m]*x)",
        "2 m/x                   | (2[m]/x)",
        "2 m + 3 m               | (2[m]+3[m])",
        "5 [[lb_av]]             | 5[[lb_av]]",
        "5 [kg.m/s2]             | 5[kg·m/s²]",
        "(x in m)                | (x in m)",
        "(x + a in km/h)         | ((x+a) in km/h)",
        "2 (x in K) a            | ((2*(x in K))*a)",
        "1/2 m                   | ((1/2)*m)"
      })
  void aUnitStandsRightAfterANumberOrInBrackets(String formula, String bracketed) {
    assertEquals(bracketed, read(formula));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"a +\\n  b*c | (a+(b*c))", "a # b\\n  + c | (a+c)", "(a\\n\t+ b) | (a+b)"})
  void anIndentedLineGoesOnWithTheLineBefore(String formula, String bracketed) {
    assertEquals(bracketed, read(formula.replace("\\n", "\n")));
  }
}
