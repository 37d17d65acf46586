package plainscale.render;

import java.util.List;
import plainscale.magnitude.Expansion;
import plainscale.sheet.Result;

/** The steps to digits and words as HTML: a numbered list, the reason above what it gives. */
final class ExpandedHtml {
  private static final String STEP =
      "<li><span>%s</span><br/><span style=\"font-size:120%%;overflow-wrap:anywhere\">%s</span></li>";

  private final Medium medium;
  private final Result.Expanded expanded;

  ExpandedHtml(Medium medium, Result.Expanded expanded) {
    this.medium = medium;
    this.expanded = expanded;
  }

  String html() {
    String name = ContrastText.name(expanded.side());
    String head = name.isEmpty() ? "" : "<p><b>" + medium.words().apply(name) + "</b></p>";
    StringBuilder steps = new StringBuilder();
    List<Expansion.Step> all = expanded.expansion().steps();
    all.forEach(step -> steps.append(step(step)));
    return "<div class=\"ps-expanded\">" + head + "<ol>" + steps + "</ol></div>";
  }

  private String step(Expansion.Step step) {
    String reason = ExpandedText.reason(step, expanded.writing());
    String after = ExpandedText.after(step, expanded);
    return STEP.formatted(medium.words().apply(reason), medium.words().apply(after));
  }
}
