package plainscale.render;

import java.util.List;
import java.util.stream.Collectors;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;

/**
 * Full digits as HTML: significant figures bold, zeros that only keep the place thinner and paler.
 * At 65 % ink black on white has a contrast of 7:1 (WCAG 2.2, 1.4.3 asks for 4.5:1), and the weight
 * tells them apart without colour.
 */
final class DigitsHtml {
  private static final String PALE = "<span style=\"opacity:0.65\">";

  private DigitsHtml() {}

  static String of(List<Run> runs) {
    return runs.stream().map(DigitsHtml::run).collect(Collectors.joining());
  }

  private static String run(Run run) {
    String text = Html.escape(run.text());
    if (run.role() == Role.SIGNIFICANT) {
      return "<b>" + text + "</b>";
    }
    if (run.role() == Role.SEPARATOR) { // a thin space alone is too thin to count groups by
      return "<span style=\"padding:0 0.08em\">" + text + "</span>";
    }
    boolean pale = run.role() == Role.PLACEHOLDER || run.role() == Role.LEADING_ZERO;
    return pale ? PALE + text + "</span>" : text;
  }
}
