package plainscale.document.edition;

import java.util.List;
import plainscale.document.Blank;
import plainscale.document.CellHead;
import plainscale.document.Edition;
import plainscale.document.LessonCell;
import plainscale.document.Prose;
import plainscale.document.Role;
import plainscale.document.WorkedLesson;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.render.Html;
import plainscale.render.Renderers;

/** The cells of a worked lesson as an edition has them. */
record Cells(WorkedLesson worked, Edition edition, Key key, FixedWords words) {

  static Cells of(WorkedLesson worked, Edition edition, Fading fading) {
    FixedWords words = FixedWords.of(worked.lesson().head().locale());
    return new Cells(worked, edition, Key.of(worked, edition, fading), words);
  }

  /** Those that the edition has and that show something. */
  List<WorkedCell> shown() {
    return worked.cells().stream()
        .filter(cell -> blank(cell) != Blank.CELL)
        .filter(cell -> !(cell.cell() instanceof LessonCell.Raw))
        .filter(cell -> !cell.cell().source().isBlank())
        .toList();
  }

  Blank blank(WorkedCell cell) {
    return cell.cell().head().blank(edition);
  }

  static boolean is(WorkedCell cell, Role role) {
    return cell.cell().head().role().filter(role::equals).isPresent();
  }

  /** A section with the prose of a cell, or with its results. */
  String section(WorkedCell cell) {
    return cell.cell() instanceof LessonCell.Prose prose
        ? prose(prose)
        : "<section class=\"worked\">" + source(cell) + results(cell) + "</section>\n";
  }

  private String prose(LessonCell.Prose prose) {
    CellHead head = prose.head();
    boolean lines =
        edition == Edition.STUDENT && head.role().filter(Role.QUESTION::equals).isPresent();
    return "<section class=\"prose\">"
        + (lines ? Prose.html(prose, head.lines().orElse(LINES)) : Prose.html(prose))
        + "</section>\n";
  }

  /** Lines below a question, unless its cell says how many. */
  private static final int LINES = 3;

  /** What the teacher wrote tells what is blank, and it is no text for students. */
  private String source(WorkedCell cell) {
    boolean shown =
        (edition == Edition.WORKED || edition == Edition.TEACHER) && blank(cell) == Blank.NOTHING;
    return shown ? "<pre class=\"source\">" + Html.escape(cell.cell().source()) + "</pre>" : "";
  }

  private String results(WorkedCell cell) {
    return blank(cell) == Blank.NOTHING
        ? Renderers.pageHtml(cell.results())
        : new WorksheetHtml(words).html(worksheet(cell));
  }

  /** What is left of the results of a cell of which something is blank. */
  List<Worksheet> worksheet(WorkedCell cell) {
    return Blanks.of(cell.results(), new Task(blank(cell), key, words));
  }

  /** The title if no heading of the first cell says it already. */
  boolean isTitled() {
    return worked.cells().stream()
        .map(WorkedCell::cell)
        .filter(LessonCell.Prose.class::isInstance)
        .map(LessonCell.Prose.class::cast)
        .limit(1)
        .flatMap(cell -> Prose.headings(cell).stream())
        .anyMatch(worked.lesson().title()::equals);
  }
}
