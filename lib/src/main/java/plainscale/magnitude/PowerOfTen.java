package plainscale.magnitude;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Scientific form: 8.7 × 10¹² has the mantissa 8.7 and the exponent 12. The mantissa carries all
 * significant figures and lies in [1, 10) without its sign. Zero has the mantissa 0 and the
 * exponent 0.
 */
public record PowerOfTen(BigDecimal mantissa, long exponent) {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** Beyond this many figures the text of a mantissa is cut and ends in an ellipsis. */
  private static final int MOST_FIGURES = 100;

  private static final int FIGURES_WHEN_CUT = 12;

  /** Takes a rounded number apart. */
  public static PowerOfTen of(BigDecimal value) {
    if (value.signum() == 0) {
      return new PowerOfTen(BigDecimal.ZERO, 0);
    }
    int figures = value.precision();
    return new PowerOfTen(
        new BigDecimal(value.unscaledValue(), figures - 1), figures - 1L - value.scale());
  }

  /** log₁₀|x| as a position on a ruler, good to about 15 figures; minus infinity for zero. */
  public double log10() {
    return Math.log10(mantissa.abs().doubleValue()) + exponent;
  }

  /** "8.7 × 10¹²"; a number from 1 to 10 is written without its power. */
  public String text(DigitStyle style) {
    return mantissaDigits(style).text() + tail();
  }

  /** What follows the mantissa: nothing, " × 10¹²", or "… × 10¹²" after a cut. */
  String tail() {
    return (isCut() ? "…" : "") + (exponent == 0 ? "" : " × " + power());
  }

  /** {@link #text(DigitStyle)} with a decimal point. */
  public String text() {
    return text(DigitStyle.SI);
  }

  /** "10¹²". */
  public String power() {
    return power(exponent);
  }

  /** "10¹²" for 12. */
  public static String power(long exponent) {
    StringBuilder text = new StringBuilder("10");
    for (char c : Long.toString(exponent).toCharArray()) {
      text.append(c == '-' ? '⁻' : RAISED.charAt(c - '0'));
    }
    return text.toString();
  }

  /** The mantissa to be shown: all of it unless it is monstrously long. */
  Digits mantissaDigits(DigitStyle style) {
    return Digits.of(
        isCut() ? mantissa.setScale(FIGURES_WHEN_CUT - 1, RoundingMode.DOWN) : mantissa, style);
  }

  private boolean isCut() {
    return mantissa.precision() > MOST_FIGURES;
  }
}
