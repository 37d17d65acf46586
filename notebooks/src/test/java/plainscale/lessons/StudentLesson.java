package plainscale.lessons;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;
import plainscale.document.WorkedLesson;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.document.edition.Fading;
import plainscale.document.edition.Handout;
import plainscale.sheet.Result;

/**
 * A lesson whose students' pages are tested: one that ships, or a section of the guide, whose
 * examples together have every kind of statement.
 */
record StudentLesson(String name, WorkedLesson worked) {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Pattern MEASURED = Pattern.compile("(?m)^(given \\S+ = -?[\\d.]*)(\\d)");

  /** What lies beside the lessons and the guide. */
  private static final Path FOLDER = Path.of("").toAbsolutePath();

  @Override
  public String toString() {
    return name;
  }

  /** All lessons, each run once. */
  static List<StudentLesson> all() {
    try {
      return Stream.concat(shipped(), guide()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<StudentLesson> shipped() {
    return NotationLessons.texts().entrySet().stream()
        .map(file -> run(file.getKey(), parsed(file.getKey(), file.getValue())));
  }

  private static Lesson parsed(String file, String text) {
    try {
      return Lesson.parse(file, text);
    } catch (LessonException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<StudentLesson> guide() throws IOException {
    Map<String, List<Guide.Example>> sections =
        Guide.examples(Files.readString(Path.of("LANGUAGE.md"))).stream()
            .collect(
                groupingBy(
                    example -> example.place().replaceFirst(", line \\d+$", ""),
                    LinkedHashMap::new,
                    toList()));
    return sections.entrySet().stream().map(s -> run("guide: " + s.getKey(), s.getValue()));
  }

  private static StudentLesson run(String name, List<Guide.Example> examples) {
    List<LessonCell> cells = new ArrayList<>();
    for (Guide.Example example : examples) {
      String id = "cell-" + cells.size();
      cells.add(new LessonCell.Code(id, example.source(), JSON.createObjectNode(), 0));
    }
    return run(name, new Lesson(name, JSON.createObjectNode(), cells));
  }

  private static StudentLesson run(String name, Lesson lesson) {
    return new StudentLesson(name, WorkedLesson.run(lesson.in(FOLDER), done -> {}));
  }

  /** The same lesson with other measurements: the last digit of each is another. */
  StudentLesson remeasured() {
    Lesson lesson = worked.lesson();
    List<LessonCell> cells = lesson.cells().stream().map(StudentLesson::remeasured).toList();
    return run(name, new Lesson(lesson.name(), lesson.metadata(), cells));
  }

  private static String remeasured(String source) {
    return MEASURED
        .matcher(source)
        .replaceAll(
            given -> {
              int digit = Integer.parseInt(given.group(2));
              return Matcher.quoteReplacement(given.group(1) + (digit == 9 ? 8 : digit + 1));
            });
  }

  private static LessonCell remeasured(LessonCell cell) {
    return cell instanceof LessonCell.Code code
        ? new LessonCell.Code(code.id(), remeasured(code.source()), code.metadata(), 0)
        : cell;
  }

  /** The students' page with the same blank in every cell of code. */
  String page(Blank blank, Fading fading) {
    return page(blank, fading, "");
  }

  /** The same with one cell that is let through. */
  String page(Blank blank, Fading fading, String open) {
    List<WorkedCell> cells =
        worked.cells().stream()
            .map(cell -> blanked(cell, cell.cell().id().equals(open) ? Blank.NOTHING : blank))
            .toList();
    return Handout.html(new WorkedLesson(worked.lesson(), cells), Edition.STUDENT, fading);
  }

  private static WorkedCell blanked(WorkedCell worked, Blank blank) {
    if (!(worked.cell() instanceof LessonCell.Code code)) {
      return worked;
    }
    ObjectNode metadata = JSON.createObjectNode();
    metadata.putObject("plainscale").putObject("blank").put("student", blank.word());
    LessonCell.Code other = new LessonCell.Code(code.id(), code.source(), metadata, 0);
    return new WorkedCell(other, worked.results());
  }

  /** The cells of code. */
  List<WorkedCell> code() {
    return worked.cells().stream().filter(cell -> cell.cell() instanceof LessonCell.Code).toList();
  }

  List<Result> results() {
    return code().stream().flatMap(cell -> cell.results().stream()).toList();
  }

  /** The prose of the lesson. */
  String prose() {
    StringBuilder prose = new StringBuilder(worked.lesson().title());
    worked.lesson().head().minutes().ifPresent(minutes -> prose.append('\n').append(minutes));
    worked.cells().stream()
        .map(WorkedCell::cell)
        .filter(LessonCell.Prose.class::isInstance)
        .forEach(cell -> prose.append('\n').append(cell.source()));
    return prose.toString();
  }
}
