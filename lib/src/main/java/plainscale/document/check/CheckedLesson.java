package plainscale.document.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import plainscale.document.CellRunner;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.ProseText;
import plainscale.document.WorkedLesson;
import plainscale.document.WrittenIn;
import plainscale.notation.Open;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.sheet.Sheet;
import plainscale.sheet.SheetLine;

/**
 * A lesson that has been run, with all that rules look at.
 *
 * @param worked the lesson and what its cells showed
 * @param wasRun whether its cells were run; those in Java are only if they may
 * @param sheet the sheet in which they ran
 * @param lines the statements of its cells, in order
 * @param prose what its cells of prose say, by their ids
 */
record CheckedLesson(
    WorkedLesson worked,
    boolean wasRun,
    Sheet sheet,
    List<Line> lines,
    Map<String, ProseText> prose) {

  /** A statement and the cell in which it stands. */
  record Line(LessonCell.Code cell, SheetLine read) {
    /** The statement, and around its blanks that of a line with blanks. */
    Statement statement() {
      return Open.within(read.statement());
    }

    /** Whether something in it is left to be filled in. */
    boolean isOpen() {
      return read.statement() instanceof Open;
    }

    /** Its text. */
    String text() {
      Span span = statement().span();
      int length = cell.source().length();
      return cell.source().substring(Math.min(span.start(), length), Math.min(span.end(), length));
    }
  }

  /** A passage of prose and the cell in which it stands. */
  record Said(LessonCell.Prose cell, ProseText.Passage passage) {}

  /** Runs the lesson with the runner, its own sheet if it is in the notation, or not at all. */
  static CheckedLesson run(Lesson lesson, Optional<CellRunner> runner, IntConsumer progress) {
    Sheet sheet = WorkedLesson.sheet(lesson);
    Optional<CellRunner> used =
        lesson.writtenIn() == WrittenIn.NOTATION ? Optional.of(sheet::run) : runner;
    WorkedLesson worked =
        used.map(cells -> WorkedLesson.run(lesson, cells, progress))
            .orElseGet(() -> WorkedLesson.unrun(lesson));
    List<Line> lines = new ArrayList<>();
    Map<String, ProseText> prose = new LinkedHashMap<>();
    for (LessonCell cell : lesson.cells()) {
      if (cell instanceof LessonCell.Code code) {
        sheet.lines(code.id()).forEach(line -> lines.add(new Line(code, line)));
      } else if (cell instanceof LessonCell.Prose text) {
        prose.put(text.id(), ProseText.of(text));
      }
    }
    return new CheckedLesson(worked, used.isPresent(), sheet, List.copyOf(lines), prose);
  }

  Lesson lesson() {
    return worked.lesson();
  }

  /** The cells that hold statements. */
  Stream<LessonCell.Code> code() {
    return lesson().cells().stream()
        .filter(LessonCell.Code.class::isInstance)
        .map(LessonCell.Code.class::cast);
  }

  /** The cells that hold prose. */
  Stream<LessonCell.Prose> texts() {
    return lesson().cells().stream()
        .filter(LessonCell.Prose.class::isInstance)
        .map(LessonCell.Prose.class::cast);
  }

  /** What a cell of prose says. */
  ProseText text(LessonCell cell) {
    ProseText text = prose.get(cell.id());
    return text == null ? new ProseText(List.of(), List.of()) : text;
  }

  /** All passages of prose. */
  Stream<Said> said() {
    return texts()
        .flatMap(cell -> text(cell).passages().stream().map(passage -> new Said(cell, passage)));
  }

  /** The statements of a cell. */
  List<Line> lines(LessonCell cell) {
    return lines.stream().filter(line -> line.cell().id().equals(cell.id())).toList();
  }

  /** The statements of that kind. */
  <S extends Statement> Stream<Line> lines(Class<S> kind) {
    return lines.stream().filter(line -> kind.isInstance(line.statement()));
  }

  /** The lesson as a whole, whose head is at the top of a text file. */
  Place whole() {
    return new Place("", isText() ? 1 : 0);
  }

  /** Whether it was read from a text, in whose lines its cells stand. */
  boolean isText() {
    return lesson().cells().stream().anyMatch(cell -> cell.line() > 0);
  }

  /** A cell as a whole: in a text the line in which its fence opens. */
  static Place at(LessonCell cell) {
    boolean fenced = cell instanceof LessonCell.Code && cell.line() > 1;
    return new Place(cell.id(), fenced ? cell.line() - 1 : cell.line());
  }

  /** The line of a cell that defines the name, else the cell. */
  Place at(LessonCell cell, String name) {
    return lines(cell).stream()
        .filter(line -> line.read().defines().contains(name))
        .findFirst()
        .map(CheckedLesson::at)
        .orElseGet(() -> at(cell));
  }

  /** A line of a cell, from 1. */
  static Place at(LessonCell cell, int line) {
    return new Place(cell.id(), cell.line() == 0 ? line : cell.line() + line - 1);
  }

  /** Where a statement begins. */
  static Place at(Line line) {
    return at(line.cell(), lineOf(line, line.statement().span().start()));
  }

  /** The line of a place in the source of a statement's cell. */
  static int lineOf(Line line, int at) {
    String source = line.cell().source();
    return 1
        + (int)
            source
                .substring(0, Math.min(at, source.length()))
                .chars()
                .filter(c -> c == '\n')
                .count();
  }
}
