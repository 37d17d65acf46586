package plainscale.document.edition;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.LessonCell;
import plainscale.document.LessonHead;
import plainscale.document.Prose;
import plainscale.document.Role;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.laws.Hazard;
import plainscale.laws.Hazards;
import plainscale.render.Html;

/**
 * The teacher's edition: a box with what to know beforehand, cautions first, then the lesson with
 * its key, notes, slips and answers, and marks that tell what students fill in.
 */
final class TeacherPage {
  private static final Map<Role, String> LABELS =
      Map.of(Role.NOTE, "note", Role.SLIPS, "slips", Role.ANSWER, "answer");

  private final Cells cells;
  private final Cells students;
  private final FixedWords words;
  private final LessonHead head;

  TeacherPage(Cells cells, Fading fading) {
    this.cells = cells;
    this.students = Cells.of(cells.worked(), Edition.STUDENT, fading);
    this.words = cells.words();
    this.head = cells.worked().lesson().head();
  }

  Page page() {
    return new Page(
        words.tag(),
        cells.worked().lesson().title() + " – " + words.say("teacher"),
        List.of("handout.css", "worksheet.css", "teacher.css"),
        brief() + cells.shown().stream().map(this::section).collect(joining()),
        WorkedPage.footer(words));
  }

  private String brief() {
    return "<section class=\"brief\">\n<p class=\"edition\">"
        + said("teacher")
        + "</p>\n"
        + title()
        + cautions()
        + facts()
        + aims()
        + new Timing(cells).html()
        + "</section>\n";
  }

  /** The heading of the page, unless the lesson begins with it. */
  private String title() {
    String title = Html.escape(cells.worked().lesson().title());
    return cells.isTitled() ? "<p class=\"title\">" + title + "</p>\n" : "<h1>" + title + "</h1>\n";
  }

  private String said(String key) {
    return Html.escape(words.say(key));
  }

  /** What can hurt someone comes before all else. */
  private String cautions() {
    String prose =
        cells.shown().stream()
            .filter(cell -> Cells.is(cell, Role.CAUTION))
            .map(this::caution)
            .collect(joining());
    String named = hazards();
    return prose.isEmpty() && named.isEmpty()
        ? ""
        : "<div class=\"cautions\">" + prose + named + "<p>" + said("rules") + "</p></div>\n";
  }

  /** The usual cautions of the hazards that the lesson names or its values set off. */
  private String hazards() {
    Set<Hazard> known = new LinkedHashSet<>();
    List<String> others = new ArrayList<>();
    for (String name : head.hazards()) {
      Hazards.find(name).ifPresentOrElse(known::add, () -> others.add(name));
    }
    known.addAll(cells.worked().setOff());
    String items =
        Stream.concat(
                known.stream().map(TeacherPage::hazard), others.stream().map(TeacherPage::named))
            .collect(joining());
    return items.isEmpty() ? "" : "<p><b>" + said("hazards") + "</b></p>\n<ul>" + items + "</ul>\n";
  }

  private static String hazard(Hazard hazard) {
    String cautions = String.join(" ", hazard.cautions());
    return "<li><b>%s.</b> %s <small>(%s)</small></li>\n"
        .formatted(
            Html.escape(hazard.title()), Html.escape(cautions), Html.escape(hazard.source()));
  }

  private static String named(String hazard) {
    return "<li>" + Html.escape(hazard) + "</li>\n";
  }

  private String caution(WorkedCell cell) {
    return cell.cell() instanceof LessonCell.Prose prose ? Prose.html(prose) : "";
  }

  private String facts() {
    return fact("level", head.level())
        + fact(
            "time",
            head.minutes().isPresent()
                ? Optional.of(words.say("minutes", head.minutes().getAsInt()))
                : Optional.empty());
  }

  private String fact(String key, Optional<String> text) {
    return text.map(t -> "<p><b>" + said(key) + ":</b> " + Html.escape(t) + "</p>\n").orElse("");
  }

  private String aims() {
    return head.aims().isEmpty()
        ? ""
        : "<p><b>"
            + said("aims")
            + ":</b></p>\n<ul>"
            + head.aims().stream()
                .map(aim -> "<li>" + Html.escape(aim) + "</li>")
                .collect(joining())
            + "</ul>\n";
  }

  private String section(WorkedCell cell) {
    Optional<Role> role = cell.cell().head().role();
    String section = cells.section(cell);
    if (Cells.is(cell, Role.CAUTION) && cell.cell() instanceof LessonCell.Prose) {
      return "<p class=\"mark\">" + said("caution") + "</p>\n";
    }
    return role.map(LABELS::get)
        .map(
            label ->
                "<aside class=\"aside %s\"><p class=\"label\">%s</p>%s</aside>\n"
                    .formatted(label, said(label), section))
        .orElseGet(() -> mark(cell) + section);
  }

  /** What students fill in. */
  private String mark(WorkedCell cell) {
    Blank blank = students.blank(cell);
    boolean open =
        blank == Blank.CELL
            || (blank != Blank.NOTHING
                && students.worksheet(cell).stream().anyMatch(Worksheet::isOpen));
    return open ? "<p class=\"mark\">" + said("fills." + blank) + "</p>\n" : "";
  }
}
