package plainscale.document.edition;

import java.util.List;
import java.util.OptionalInt;
import plainscale.render.Html;
import plainscale.render.Renderers;
import plainscale.sheet.Result;

/** The page that students fill in: nothing of the key is in it. */
record StudentPage(Cells cells) {
  Page page() {
    return new Page(
        cells.words().tag(),
        cells.worked().lesson().title(),
        List.of("handout.css", "worksheet.css", "student.css"),
        opening() + sections(),
        "");
  }

  /** Whose page it is, and what the lesson says of itself. */
  private String opening() {
    FixedWords words = cells.words();
    OptionalInt minutes = cells.worked().lesson().head().minutes();
    String time =
        minutes.isPresent()
            ? "<p class=\"time\">"
                + Html.escape(words.say("time") + ": " + words.say("minutes", minutes.getAsInt()))
                + "</p>\n"
            : "";
    String title =
        cells.isTitled() ? "" : "<h1>" + Html.escape(cells.worked().lesson().title()) + "</h1>\n";
    return "<p class=\"whose\"><span>"
        + Html.escape(words.say("name"))
        + "</span><span class=\"who\"></span><span>"
        + Html.escape(words.say("date"))
        + "</span><span class=\"when\"></span></p>\n"
        + title
        + time;
  }

  /** Where the first cell has the title, what is needed to reckon stands below it. */
  private String sections() {
    List<String> sections = cells.shown().stream().map(cells::section).toList();
    int above = cells.isTitled() ? Math.min(1, sections.size()) : 0;
    return String.join("", sections.subList(0, above))
        + needed("constants", ConstantsUsed.of(cells.worked()))
        + needed("units", UnitsUsed.of(cells.worked()))
        + String.join("", sections.subList(above, sections.size()));
  }

  /** What nobody measures, and everybody who works on paper needs. */
  private String needed(String title, List<Result> results) {
    return results.isEmpty()
        ? ""
        : "<section class=\"worked\"><p><b>"
            + Html.escape(cells.words().say(title))
            + "</b></p>"
            + Renderers.pageHtml(results)
            + "</section>\n";
  }
}
