package plainscale.render;

import java.util.List;
import java.util.stream.Collectors;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Run;

/**
 * Full digits as HTML: significant figures bold, zeros that only keep the place thinner and paler.
 * At 65 % ink black on white has a contrast of 7:1 (WCAG 2.2, 1.4.3 asks for 4.5:1), and the weight
 * tells them apart without colour. Groups are parted by room, not by a character, so that a number
 * that is copied is plain; a comma or point between groups is not selected with it.
 */
final class DigitsHtml {
  private static final String PALE = "<span style=\"opacity:0.65\">%s</span>";
  private static final String GAP = "<span style=\"padding-left:0.28em\"></span>";
  private static final String BREAK = "<wbr/>";
  private static final String UNSELECTED =
      "<span style=\"user-select:none;opacity:0.65\">%s</span>";
  private static final String ROW =
      "<tr><td class=\"ps-digits\" style=\"text-align:right;white-space:nowrap;"
          + "vertical-align:baseline;padding:0.1em 0;font-size:120%%\">%s</td>"
          + "<td class=\"ps-digits\" style=\"text-align:left;white-space:nowrap;width:100%%;"
          + "vertical-align:baseline;padding:0.1em 0;font-size:120%%\">%s</td></tr>";

  private DigitsHtml() {}

  /** Digits in a sentence, where a line may end between two groups. */
  static String of(List<Run> runs) {
    return runs.stream().map(run -> run(run, BREAK)).collect(Collectors.joining());
  }

  private static String unbroken(List<Run> runs) {
    return runs.stream().map(run -> run(run, "")).collect(Collectors.joining());
  }

  /**
   * Rows of two table cells that meet at the decimal marker, one for each line of the number; the
   * unit stands behind the last.
   */
  static String rows(Alignment.Row row, String unit) {
    StringBuilder rows = new StringBuilder();
    int last = row.lines().size() - 1;
    for (int i = 0; i <= last; i++) {
      Alignment.Line line = row.lines().get(i);
      rows.append(
          ROW.formatted(unbroken(line.whole()), unbroken(line.part()) + (i == last ? unit : "")));
    }
    return rows.toString();
  }

  private static String run(Run run, String afterGroup) {
    String text = Html.escape(run.text());
    return switch (run.role()) {
      case SIGNIFICANT -> "<b>" + text + "</b>";
      case LEADING_ZERO, PLACEHOLDER -> PALE.formatted(text);
      case SEPARATOR -> (isSpace(run) ? GAP : UNSELECTED.formatted(text)) + afterGroup;
      case SIGN, MARKER, POWER -> text;
    };
  }

  private static boolean isSpace(Run run) {
    return run.text().codePoints().allMatch(Character::isSpaceChar);
  }
}
