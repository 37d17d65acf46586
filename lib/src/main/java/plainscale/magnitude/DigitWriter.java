package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Lays out the runs of one number. */
final class DigitWriter {
  static final String MINUS = "\u2212";

  private final DigitStyle style;
  private final List<Run> runs = new ArrayList<>();

  DigitWriter(DigitStyle style) {
    this.style = style;
  }

  /** The digits in full; the caller has checked that they are not too many. */
  List<Run> full(BigDecimal value) {
    sign(value);
    String figures = value.unscaledValue().abs().toString();
    int leading = Math.max(0, value.scale() + 1 - figures.length());
    String holders = "0".repeat(Math.max(0, -value.scale()));
    if (value.signum() == 0 && leading > 0) {
      // 0.00: the zero before the marker is there by rule, the two after it were written.
      leading = 1;
      figures = "0".repeat(value.scale());
    }
    String digits = "0".repeat(leading) + figures + holders;
    int places = digits.length() - Math.max(0, value.scale());
    for (int i = 0; i < digits.length(); i++) {
      gap(i, places, digits.length());
      add(role(i, leading, figures.length()), digits.substring(i, i + 1));
    }
    return Run.joined(runs);
  }

  /** The power of ten, for a number that is too long. */
  List<Run> power(BigDecimal value) {
    sign(value);
    PowerOfTen form = PowerOfTen.of(value.abs());
    runs.addAll(form.mantissaDigits(style).runs());
    add(Role.POWER, form.tail());
    return runs;
  }

  private void sign(BigDecimal value) {
    if (value.signum() < 0) {
      add(Role.SIGN, MINUS);
    }
  }

  /** What stands before digit {@code i}: the marker, a separator or nothing. */
  private void gap(int i, int places, int all) {
    if (i == places) {
      add(Role.MARKER, style.marker());
    } else if (i < places
        ? style.separates(places - i, places)
        : style.separatesAfterMarker(i - places, all - places)) {
      add(Role.SEPARATOR, style.separator());
    }
  }

  private static Role role(int i, int leading, int figures) {
    if (i < leading) {
      return Role.LEADING_ZERO;
    }
    return i < leading + figures ? Role.SIGNIFICANT : Role.PLACEHOLDER;
  }

  private void add(Role role, String text) {
    runs.add(new Run(role, text));
  }
}
