package plainscale.document.edition;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainscale.data.DataFolder;
import plainscale.document.Blank;
import plainscale.document.CellIds;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.Role;
import plainscale.notation.Line;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/**
 * A lesson as a notebook that students rework: blanks where they put in what they measured or
 * found, and cells that compute from it. What is for the teacher is not in it.
 *
 * <pre>{@code
 * Lesson copy = StudentNotebook.of(lesson);
 * WholeFile.write(folder.resolve(copy.name()), copy.notebook());
 * }</pre>
 */
public final class StudentNotebook {
  private static final int LONGEST_STEM = 56;

  private final Lesson lesson;
  private final FixedWords words;
  private final Map<String, List<Line>> lines = new LinkedHashMap<>();
  private final HiddenNumbers numbers = new HiddenNumbers();
  private final Set<String> ids = new HashSet<>();

  private StudentNotebook(Lesson lesson) {
    this.lesson = lesson;
    this.words = FixedWords.of(lesson.head().locale());
    lesson.cells().forEach(cell -> ids.add(cell.id()));
  }

  /** The students' copy of a lesson, under the name of its file. */
  public static Lesson of(Lesson lesson) {
    return new StudentNotebook(lesson).copy();
  }

  private Lesson copy() {
    read();
    List<LessonCell> cells = new ArrayList<>();
    cells.add(text("how-to-work", words.say("notebook.how-to")));
    lesson.cells().stream()
        .filter(cell -> blank(cell) != Blank.CELL)
        .forEach(cell -> add(cell, cells));
    return new Lesson(
        lesson.stem() + "-student.ipynb", StudentMetadata.ofLesson(lesson.metadata()), cells);
  }

  private static Blank blank(LessonCell cell) {
    return cell.head().blank(Edition.STUDENT);
  }

  /** What a word after a number is hangs on the names of the sheet, so the cells are run. */
  private void read() {
    Sheet sheet = lesson.folder().map(DataFolder::new).map(Sheet::new).orElseGet(Sheet::new);
    for (LessonCell cell : lesson.cells()) {
      if (cell instanceof LessonCell.Code) {
        Run run = sheet.run(cell.id(), cell.source());
        lines.put(cell.id(), lines(cell.source(), sheet.names()));
        if (blank(cell) != Blank.NOTHING) {
          run.results().forEach(numbers::add);
          lines(cell).forEach(line -> hide(line, hiding(cell)));
        }
      }
    }
  }

  /** No line at all of a cell that is beyond the limits. */
  private static List<Line> lines(String source, Names names) {
    try {
      return Notation.lines(source, names);
    } catch (ProblemException beyond) {
      return List.of();
    }
  }

  private List<Line> lines(LessonCell cell) {
    return lines.getOrDefault(cell.id(), List.of());
  }

  private static Hiding hiding(LessonCell cell) {
    return new Hiding(blank(cell), is(cell, Role.MEASUREMENT));
  }

  private void hide(Line line, Hiding hiding) {
    Statement statement = line.read();
    if (statement instanceof Statement.Given given && !hiding.of(given).isEmpty()) {
      numbers.add(given.measurement());
    }
  }

  private void add(LessonCell cell, List<LessonCell> cells) {
    Optional<LessonCell> copy =
        cell instanceof LessonCell.Code
            ? code(cell)
            : cell instanceof LessonCell.Prose prose
                ? Optional.of(StudentProse.of(prose, StudentMetadata.ofCell(cell.head())))
                : Optional.empty();
    copy.ifPresent(cells::add);
    if (copy.isPresent() && is(cell, Role.QUESTION)) {
      cells.add(text(answerId(cell.id()), "**" + words.say("notebook.answer") + "** …"));
    }
  }

  private static boolean is(LessonCell cell, Role role) {
    return cell.head().role().filter(role::equals).isPresent();
  }

  private static String answerId(String question) {
    return question.substring(0, Math.min(LONGEST_STEM, question.length())) + "-answer";
  }

  private LessonCell text(String id, String source) {
    String free = CellIds.free(id, ids);
    ids.add(free);
    return new LessonCell.Prose(
        free, source, StudentMetadata.ofText(), StudentMetadata.nothing(), 0);
  }

  /** None if nothing is left of it. */
  private Optional<LessonCell> code(LessonCell cell) {
    boolean whole = blank(cell) == Blank.NOTHING;
    String source =
        whole ? cell.source() : StudentSource.of(cell.source(), lines(cell), hiding(cell), numbers);
    return whole || !source.isBlank()
        ? Optional.of(
            new LessonCell.Code(cell.id(), source, StudentMetadata.ofCell(cell.head()), 0))
        : Optional.empty();
  }
}
