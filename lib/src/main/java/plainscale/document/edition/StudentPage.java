package plainscale.document.edition;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.OptionalInt;
import plainscale.render.Html;

/** The page that students fill in: nothing of the key is in it. */
record StudentPage(Cells cells) {
  Page page() {
    return new Page(
        cells.words().tag(),
        cells.worked().lesson().title(),
        List.of("handout.css", "worksheet.css", "student.css"),
        opening() + cells.shown().stream().map(cells::section).collect(joining()),
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
}
