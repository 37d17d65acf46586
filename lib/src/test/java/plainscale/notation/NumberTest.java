package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ways to write a number: its value, and its figures as the scale of the decimal. */
class NumberTest {
  private static final Names NONE = KnownNames.of();

  private static Expr.Literal number(String text) {
    Expr expr = Notation.parseExpression(text, NONE).value();
    assertTrue(expr instanceof Expr.Literal, expr.toString());
    return (Expr.Literal) expr;
  }

  // equals of BigDecimal compares the figures too.
  @ParameterizedTest
  @CsvSource({
    "3, 3",
    "3.0, 3.0",
    "0.50, 0.50",
    "50, 50",
    "2., 2",
    "3.0e-9, 3.0E-9",
    "3.0E-9, 3.0E-9",
    "3.0e+2, 3.0E+2",
    "3e8, 3E+8",
    "3.0×10⁻⁹, 3.0E-9",
    "3.0 × 10⁻⁹, 3.0E-9",
    "3.0·10^-9, 3.0E-9",
    "3.0⋅10^9, 3.0E+9",
    "1.60×10⁻¹⁹, 1.60E-19",
    "3.0×10^−9, 3.0E-9",
    "8\u2009700, 8700",
    "8\u202f700, 8700",
    "8\u00a0700.5, 8700.5",
    "0.000\u202f000\u202f067\u202f1, 6.71E-8",
    "8\u202f700\u202f000\u202f000\u202f000, 8700000000000"
  })
  void isReadWithItsFigures(String text, String value) {
    assertEquals(new BigDecimal(value), number(text).value());
  }

  @ParameterizedTest
  @CsvSource({
    "3, true",
    "3.0, true",
    "3e8, true",
    "3 kg, true",
    "3.0 kg, false",
    "3e2 kg, false",
    "0.5 [kg], false",
    "8\u202f700 kg, true"
  })
  void isExactIfWholeOrWithoutAUnit(String text, boolean exact) {
    assertEquals(exact, number(text).exact());
  }
}
