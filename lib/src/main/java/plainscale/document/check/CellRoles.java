package plainscale.document.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.ProseText;
import plainscale.document.Role;
import plainscale.document.WrittenIn;
import plainscale.notation.DataStatement;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.GuardStatement;
import plainscale.notation.LawStatement;
import plainscale.notation.Part;
import plainscale.notation.Statement;

/**
 * Roles that do not fit their cells. A text may have the role of the cells that it introduces, so
 * only statements are held to most roles.
 */
record CellRoles() implements Rule {
  private static final String NONE = "";

  @Override
  public String name() {
    return "role";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    List<Finding> findings = new ArrayList<>();
    boolean asked = false;
    for (LessonCell cell : lesson.lesson().cells()) {
      Optional<Role> role = cell.head().role();
      boolean answersNothing = role.equals(Optional.of(Role.ANSWER)) && !asked;
      String missing =
          answersNothing
              ? "no question stands before it"
              : role.filter(r -> canBeRead(lesson, cell))
                  .map(r -> missing(lesson, cell, r))
                  .orElse(NONE);
      if (!missing.isEmpty()) {
        findings.add(misfit(cell, role.orElseThrow(), missing));
      }
      asked |= role.equals(Optional.of(Role.QUESTION)) || asks(lesson, cell);
    }
    return findings.stream();
  }

  /** What cells in Java do cannot be seen from here. */
  private static boolean canBeRead(CheckedLesson lesson, LessonCell cell) {
    return lesson.lesson().writtenIn() == WrittenIn.NOTATION || cell instanceof LessonCell.Prose;
  }

  private Finding misfit(LessonCell cell, Role role, String missing) {
    String sentence = "The role of the cell is %s, and %s.".formatted(role.word(), missing);
    String repair =
        role == Role.ANSWER
            ? "put it behind its question, or give it another role"
            : "give it another role";
    return CheckedLesson.at(cell).warning(this, sentence, repair);
  }

  /** What the cell would need for the role; empty if it fits. */
  private static String missing(CheckedLesson lesson, LessonCell cell, Role role) {
    if (role == Role.QUESTION) {
      return asks(lesson, cell) || cell.head().lines().isPresent() ? NONE : "it asks nothing";
    }
    if (role == Role.PICTURE && cell instanceof LessonCell.Prose) {
      return lesson.text(cell).pictures().isEmpty() ? "it shows no picture" : NONE;
    }
    return cell instanceof LessonCell.Code ? missing(lesson.lines(cell), role) : NONE;
  }

  private static String missing(List<CheckedLesson.Line> lines, Role role) {
    return switch (role) {
      case MEASUREMENT ->
          without(
              lines,
              s -> s instanceof Statement.Given || s instanceof DataStatement.Table,
              "it has no given and no data");
      case RELATION ->
          without(
              lines,
              s ->
                  s instanceof Statement.Relation
                      || s instanceof Statement.Definition
                      || s instanceof LawStatement.Use,
              "it states no relation");
      case DERIVATION ->
          without(
              lines,
              s -> s instanceof Statement.Solve || s instanceof Statement.Definition,
              "nothing is derived in it");
      case RESULT -> without(lines, CellRoles::shows, "it shows no result");
      case CONTRAST ->
          without(lines, CellRoles::contrasts, "no numbers are set against each other in it");
      case PICTURE ->
          lines.stream().anyMatch(line -> line.read().drawing()) ? NONE : "it draws no picture";
      default -> NONE;
    };
  }

  private static String without(
      List<CheckedLesson.Line> lines, Predicate<Statement> wanted, String otherwise) {
    return lines.stream().map(CheckedLesson.Line::statement).anyMatch(wanted) ? NONE : otherwise;
  }

  private static boolean shows(Statement statement) {
    boolean says =
        statement instanceof Statement.Given
            || statement instanceof Statement.Relation
            || statement instanceof LawStatement
            || statement instanceof Statement.Choice
            || statement instanceof Statement.Together
            || statement instanceof Statement.Unreadable
            || statement instanceof GuardStatement
            || statement instanceof Figure
            || statement instanceof FieldStatement.Declared;
    return !says;
  }

  private static boolean contrasts(Statement statement) {
    return statement instanceof Statement.Contrast
        || statement instanceof Statement.Near
        || statement instanceof Statement.Picture
        || statement instanceof Statement.Expand
        || statement instanceof Statement.Compare;
  }

  private static boolean asks(CheckedLesson lesson, LessonCell cell) {
    if (cell instanceof LessonCell.Code) {
      return lesson.lines(cell).stream()
          .anyMatch(line -> line.isOpen() || leavesOpen(line.statement()));
    }
    return lesson.text(cell).passages().stream()
        .anyMatch(
            passage -> passage.kind() == ProseText.Kind.ITEM || passage.text().indexOf('?') >= 0);
  }

  /** Whether the statement leaves something to be filled in. */
  private static boolean leavesOpen(Statement statement) {
    boolean boxes = statement instanceof Statement.Expand expand && expand.boxes();
    boolean steps =
        statement instanceof Statement.Solve solve
            && (solve.telling() == Statement.Telling.BOXES
                || solve.telling() == Statement.Telling.QUESTIONS);
    boolean paper = statement instanceof Statement.Forces forces && !forces.edition().isOpen();
    boolean said =
        statement instanceof Statement.Say say
            && say.parts().stream().anyMatch(CellRoles::isQuestion);
    return boxes || steps || paper || said;
  }

  private static boolean isQuestion(Part part) {
    return part instanceof Part.Text words && words.text().indexOf('?') >= 0;
  }
}
