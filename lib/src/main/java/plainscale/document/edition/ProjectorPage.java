package plainscale.document.edition;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.document.Blank;
import plainscale.document.LessonCell;
import plainscale.document.ProseScreens;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.render.Html;
import plainscale.render.Screens;

/**
 * The lesson for 1280 × 720 on a wall: one idea a screen, a step of a derivation at a time; back,
 * next and contents are plain links.
 */
final class ProjectorPage {
  private static final String CONTENTS = "contents";

  private final Cells cells;
  private final FixedWords words;
  private final List<Screen> screens = new ArrayList<>();
  private String running = "";

  /** One screen; it begins a section of the lesson if it has a heading of its own. */
  private record Screen(Optional<String> heading, String running, String html) {}

  ProjectorPage(Cells cells) {
    this.cells = cells;
    this.words = cells.words();
    cells.shown().forEach(this::add);
  }

  private void add(WorkedCell cell) {
    if (cell.cell() instanceof LessonCell.Prose prose) {
      for (ProseScreens.Screen screen : ProseScreens.of(prose)) {
        running = screen.heading().orElse(running);
        screens.add(new Screen(screen.heading(), running, prose(screen.html())));
      }
    } else if (cells.blank(cell) == Blank.NOTHING) {
      Screens.of(cell.results())
          .forEach(html -> screens.add(new Screen(Optional.empty(), running, worked(html))));
    } else {
      String html = new WorksheetHtml(words).html(cells.worksheet(cell));
      screens.add(new Screen(Optional.empty(), running, worked(html)));
    }
  }

  private static String prose(String html) {
    return "<div class=\"prose\">" + html + "</div>";
  }

  private static String worked(String html) {
    return "<div class=\"worked\">" + html + "</div>";
  }

  Page page() {
    StringBuilder body = new StringBuilder(contents());
    for (int i = 0; i < screens.size(); i++) {
      body.append(section(i));
    }
    return new Page(
        words.tag(),
        cells.worked().lesson().title(),
        List.of("handout.css", "worksheet.css", "projector.css"),
        body.toString(),
        "");
  }

  private static String id(int screen) {
    return "s" + (screen + 1);
  }

  private String section(int i) {
    Screen screen = screens.get(i);
    String above =
        screen.heading().isPresent()
            ? ""
            : "<p class=\"running\">" + Html.escape(screen.running()) + "</p>\n";
    String back = i == 0 ? CONTENTS : id(i - 1);
    Optional<String> next = i + 1 < screens.size() ? Optional.of(id(i + 1)) : Optional.empty();
    return "<section class=\"screen\" id=\""
        + id(i)
        + "\">\n"
        + above
        + "<div class=\"idea\">"
        + screen.html()
        + "</div>\n<nav>"
        + link(back, "back")
        + link(CONTENTS, CONTENTS)
        + next.map(place -> link(place, "next")).orElse("<span></span>")
        + "</nav>\n</section>\n";
  }

  private String link(String place, String key) {
    return "<a href=\"#" + place + "\">" + Html.escape(words.say(key)) + "</a>";
  }

  /** The sections of the lesson; the first screen. */
  private String contents() {
    List<String> items = new ArrayList<>();
    for (int i = 0; i < screens.size(); i++) {
      String place = id(i);
      screens
          .get(i)
          .heading()
          .map(words -> "<li><a href=\"#" + place + "\">" + Html.escape(words) + "</a></li>\n")
          .ifPresent(items::add);
    }
    String next = screens.isEmpty() ? "<span></span>" : link(id(0), "next");
    return "<section class=\"screen\" id=\""
        + CONTENTS
        + "\">\n<p class=\"running\">"
        + Html.escape(cells.worked().lesson().title())
        + "</p>\n<div class=\"idea\"><ol class=\"contents\">\n"
        + items.stream().collect(joining())
        + "</ol></div>\n<nav><span></span><span></span>"
        + next
        + "</nav>\n</section>\n";
  }
}
