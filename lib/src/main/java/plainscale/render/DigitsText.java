package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;

/**
 * Full digits as lines of plain text. Where some zeros only keep the place, a line of {@code ‾}
 * below marks the figures that are significant.
 */
final class DigitsText {
  private static final String MARK = "‾";

  private DigitsText() {}

  /** One number alone. */
  static List<String> lines(Digits digits, String after) {
    Alignment alone = Alignment.of(List.of(digits));
    return lines(alone, alone.rows().get(0), after);
  }

  /**
   * The lines of one number of a column, marks below each; {@code after} stands behind the number's
   * last line.
   */
  static List<String> lines(Alignment alignment, Alignment.Row row, String after) {
    List<String> lines = new ArrayList<>();
    boolean marks = row.digits().zeros() > 0;
    int last = row.lines().size() - 1;
    for (int i = 0; i <= last; i++) {
      Alignment.Line line = row.lines().get(i);
      String before = " ".repeat(alignment.wholeWidth() - Run.text(line.whole()).length());
      String digits = before + Run.text(line.whole()) + Run.text(line.part());
      lines.add(i == last ? digits + filled(alignment, line, after) : digits);
      String under = before + under(line.whole()) + under(line.part());
      if (marks && !under.isBlank()) {
        lines.add(under.stripTrailing());
      }
    }
    return lines;
  }

  private static String filled(Alignment alignment, Alignment.Line line, String after) {
    int blank = alignment.partWidth() - Run.text(line.part()).length();
    return after.isEmpty() ? "" : " ".repeat(blank) + after;
  }

  private static String under(List<Run> runs) {
    StringBuilder under = new StringBuilder();
    for (Run run : runs) {
      String sign = run.role() == Role.SIGNIFICANT ? MARK : " ";
      under.append(sign.repeat(run.text().length()));
    }
    return under.toString();
  }
}
