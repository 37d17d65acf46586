package plainscale.document.edition;

import static java.util.stream.Collectors.joining;

import java.util.List;
import plainscale.render.Html;

/** The worked example: prose, what was written, and all that came of it. */
record WorkedPage(Cells cells) {
  Page page() {
    return new Page(
        cells.words().tag(),
        cells.worked().lesson().title(),
        List.of("handout.css", "worksheet.css"),
        cells.shown().stream().map(cells::section).collect(joining()),
        footer(cells.words()));
  }

  /** What the signs on a page mean. */
  static String footer(FixedWords words) {
    return "<p>" + Html.escape(words.say("footer")) + "</p>";
  }
}
