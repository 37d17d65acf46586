package plainscale.render;

import java.util.ArrayList;
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
    return html(0, expanded.expansion().steps().size());
  }

  /** So many steps at a time. */
  List<String> parts(int most) {
    List<String> parts = new ArrayList<>();
    int all = expanded.expansion().steps().size();
    for (int from = 0; from < all; from += most) {
      parts.add(html(from, Math.min(all, from + most)));
    }
    return parts;
  }

  private String html(int from, int to) {
    String name = ContrastText.name(expanded.side());
    String head = name.isEmpty() ? "" : "<p><b>" + medium.words().apply(name) + "</b></p>";
    StringBuilder steps = new StringBuilder();
    expanded.expansion().steps().subList(from, to).forEach(step -> steps.append(step(step)));
    String list = from == 0 ? "<ol>" : "<ol start=\"" + (from + 1) + "\">";
    return "<div class=\"ps-expanded\">" + head + list + steps + "</ol></div>";
  }

  private String step(Expansion.Step step) {
    String reason = ExpandedText.reason(step, expanded.writing());
    String after = ExpandedText.after(step, expanded);
    return STEP.formatted(medium.words().apply(reason), medium.words().apply(after));
  }
}
