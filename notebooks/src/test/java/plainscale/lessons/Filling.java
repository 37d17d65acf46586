package plainscale.lessons;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.notation.Line;
import plainscale.notation.Measurement;
import plainscale.notation.Open;
import plainscale.notation.Printer;
import plainscale.notation.Span;
import plainscale.notation.Statement;

/** A students' copy whose blanks are filled in with what the lesson itself has there. */
final class Filling {
  private Filling() {}

  static Lesson of(Lesson student, Lesson lesson) {
    List<LessonCell> cells = new ArrayList<>();
    for (LessonCell cell : student.cells()) {
      cells.add(
          cell instanceof LessonCell.Code
              ? new LessonCell.Code(
                  cell.id(), filled(cell.source(), source(lesson, cell.id())), cell.metadata(), 0)
              : cell);
    }
    return new Lesson(student.name(), student.metadata(), cells);
  }

  private static String source(Lesson lesson, String id) {
    return lesson.cells().stream()
        .filter(cell -> cell.id().equals(id))
        .findFirst()
        .orElseThrow()
        .source();
  }

  private static String filled(String student, String source) {
    List<Line> copied = HiddenFromStudents.lines(student);
    List<Line> lines = HiddenFromStudents.lines(source);
    StringBuilder text = new StringBuilder(student);
    for (int i = copied.size() - 1; i >= 0; i--) {
      if (copied.get(i).read() instanceof Open open) {
        List<String> answers = answers(lines.get(i), source);
        for (int j = open.blanks().size() - 1; j >= 0; j--) {
          Span blank = open.blanks().get(j).span();
          text.replace(blank.start(), blank.end(), answers.get(j));
        }
      }
    }
    return text.toString();
  }

  /** What belongs into the blanks of a line, from what the lesson's line means. */
  private static List<String> answers(Line line, String source) {
    Statement statement = line.read();
    if (statement instanceof Statement.Given given) {
      return numbers(given.measurement());
    }
    if (statement instanceof Statement.Definition definition) {
      return List.of(Printer.print(definition.formula()));
    }
    if (statement instanceof Statement.Show show) {
      return List.of(Printer.print(show.value()));
    }
    if (statement instanceof Statement.Relation relation) {
      return List.of(Printer.print(relation.left()) + " = " + Printer.print(relation.right()));
    }
    if (statement instanceof Statement.Solve solve) {
      return List.of(
          solve.relations().stream().map(Statement.Option::text).collect(Collectors.joining(", ")));
    }
    return line.parts().stream()
        .filter(part -> part.what() == Line.What.FORCES || part.what() == Line.What.SOURCES)
        .map(part -> source.substring(part.span().start(), part.span().end()))
        .toList();
  }

  private static List<String> numbers(Measurement measurement) {
    List<BigDecimal> numbers = new ArrayList<>(measurement.readings());
    if (numbers.isEmpty()) {
      numbers.add(measurement.value());
      measurement.uncertainty().ifPresent(numbers::add);
    }
    return numbers.stream().map(BigDecimal::toString).toList();
  }
}
