package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;
import plainscale.document.WorkedLesson;
import plainscale.document.edition.StudentNotebook;
import plainscale.notation.Statement;
import plainscale.render.Renderers;
import plainscale.sheet.GuardResult;
import plainscale.sheet.Result;

/** Students' copies of the lessons that ship, and of one with something to hide at every place. */
class StudentNotebooksTest {

  /** A lesson as it ships, or one whose code cells for students leave so much blank. */
  record Copied(String file, Optional<Blank> blank) {
    Lesson lesson() throws LessonException {
      Lesson lesson = Lesson.parse(file, NotationLessons.texts().getOrDefault(file, ""));
      return blank.isPresent() ? leaving(lesson, blank.get()) : lesson;
    }

    private static Lesson leaving(Lesson lesson, Blank blank) {
      List<LessonCell> cells = new ArrayList<>();
      for (LessonCell cell : lesson.cells()) {
        boolean there = cell.head().blank(Edition.STUDENT) != Blank.CELL;
        cells.add(there && cell instanceof LessonCell.Code code ? leaving(code, blank) : cell);
      }
      return new Lesson(lesson.name(), lesson.metadata(), cells);
    }

    private static LessonCell leaving(LessonCell.Code code, Blank blank) {
      ObjectNode metadata = code.metadata().deepCopy();
      metadata
          .withObjectProperty("plainscale")
          .withObjectProperty("blank")
          .put("student", blank.word());
      return new LessonCell.Code(code.id(), code.source(), metadata, 0);
    }

    @Override
    public String toString() {
      return file + ", " + blank.map(Blank::word).orElse("as it ships");
    }
  }

  static Stream<Copied> lessons() {
    return NotationLessons.texts().keySet().stream()
        .flatMap(
            file ->
                Stream.of(
                        Optional.<Blank>empty(),
                        Optional.of(Blank.FORMULAS),
                        Optional.of(Blank.ALL))
                    .filter(
                        blank ->
                            file.startsWith("two-balls")
                                || !blank.equals(Optional.of(Blank.FORMULAS)))
                    .map(blank -> new Copied(file, blank)));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void aCopyThatIsNotFilledInHasBlanksAndNoMistakes(Copied copied) throws LessonException {
    Lesson student = StudentNotebook.of(copied.lesson());
    WorkedLesson worked = WorkedLesson.run(student, done -> {});
    assertEquals("", mistakes(worked));
    assertTrue(worked.blanks() > 0);
  }

  private static String mistakes(WorkedLesson worked) {
    return Renderers.text(
        worked.cells().stream()
            .flatMap(cell -> cell.results().stream())
            .filter(Result.Mistaken.class::isInstance)
            .toList());
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void aCopyThatIsFilledInShowsWhatTheLessonShows(Copied copied) throws LessonException {
    Lesson lesson = copied.lesson();
    Lesson filled = Filling.of(StudentNotebook.of(lesson), lesson);
    WorkedLesson worked = WorkedLesson.run(filled, done -> {});
    assertEquals(0, worked.blanks());
    Map<String, String> whole = shown(WorkedLesson.run(lesson, done -> {}));
    whole.keySet().retainAll(shown(worked).keySet()); // cells for the teacher are not there
    assertEquals(whole, shown(worked));
  }

  private static Map<String, String> shown(WorkedLesson worked) {
    Map<String, String> shown = new TreeMap<>();
    for (WorkedLesson.WorkedCell cell : worked.cells()) {
      if (cell.cell() instanceof LessonCell.Code) {
        shown.put(
            cell.cell().id(),
            Renderers.text(
                cell.results().stream()
                    .filter(result -> !(result instanceof GuardResult.Expected)) // copies have none
                    .map(StudentNotebooksTest::told)
                    .toList()));
      }
    }
    return shown;
  }

  /** A derivation that is asked in the copy is the same derivation. */
  private static Result told(Result result) {
    return result instanceof Result.Derived derived
        ? new Result.Derived(
            derived.derivation(),
            derived.description(),
            Statement.Telling.STEPS,
            derived.value().orElse(null),
            derived.writing())
        : result;
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void aCopyTellsNothingThatIsHidden(Copied copied) throws LessonException, IOException {
    Lesson lesson = copied.lesson();
    Lesson student = StudentNotebook.of(lesson);
    HiddenFromStudents hidden = HiddenFromStudents.of(lesson, student);
    assertFalse(hidden.written().isEmpty());
    assertFalse(hidden.numbers().isEmpty());
    assertTrue(copied.blank().isEmpty() || !hidden.formulas().isEmpty());
    Lesson looked = copied.blank().isPresent() ? withoutProse(student) : student;
    assertEquals(Set.of(), Leaks.of(looked.notebook(), hidden));
  }

  /** What an author tells in prose is meant for what the lesson leaves blank as it ships. */
  private static Lesson withoutProse(Lesson student) {
    List<LessonCell> cells =
        student.cells().stream().filter(LessonCell.Code.class::isInstance).toList();
    return new Lesson(student.name(), student.metadata(), cells);
  }

  private static final String SECRETIVE = "secretive.json";

  private static Lesson secretive() throws LessonException, IOException {
    try (var in = StudentNotebooksTest.class.getResourceAsStream(SECRETIVE)) {
      return Lesson.parse("secretive.ipynb", new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void aLessonWithSomethingToHideAtEveryPlaceHidesIt() throws LessonException, IOException {
    Lesson lesson = secretive();
    Lesson student = StudentNotebook.of(lesson);
    HiddenFromStudents hidden = HiddenFromStudents.of(lesson, student);
    Set<String> told = Leaks.of(lesson.notebook(), hidden);
    assertTrue(
        told.containsAll(Set.of("37.20", "0.15", "37.2", "k_Sx", "mg_n=k_Sx")), told::toString);
    assertEquals(Set.of(), Leaks.of(student.notebook(), hidden));
    assertEquals("", mistakes(WorkedLesson.run(student, done -> {})));
  }

  /** The spring of the lesson: 37.20 g hang on it, and it pulls with 365 mN. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          37.20 g
          37,20 g
          3.720e1
          0.03720 kg
          37.2
          3.72 × 10⁻² kg
          3.72·10^-2 kg
          $3.72 \\times 10^{-2}$ kg
          0.037 20 kg
          0.365 N
          365 mN
          three hundred sixty-five
          364.8 thousandths
          m g_n = k_S x
          m*g_n = k_S*x
          F = k_S x
          <b>37</b>.20
          """)
  void whatIsToldInProseIsFound(String prose) throws LessonException, IOException {
    assertFound(with(StudentNotebook.of(secretive()), prose));
  }

  private static Lesson with(Lesson student, String prose) {
    List<LessonCell> cells = new ArrayList<>(student.cells());
    ObjectNode nothing = student.metadata().objectNode();
    cells.add(new LessonCell.Prose("added", prose, nothing, nothing, 0));
    return new Lesson(student.name(), student.metadata(), cells);
  }

  private static void assertFound(Lesson student) throws LessonException, IOException {
    Lesson lesson = secretive();
    HiddenFromStudents hidden = HiddenFromStudents.of(lesson, StudentNotebook.of(lesson));
    assertFalse(Leaks.of(student.notebook(), hidden).isEmpty(), student.notebook());
  }

  @Test
  void whatIsToldInMetadataIsFound() throws LessonException, IOException {
    Lesson student = StudentNotebook.of(secretive());
    ObjectNode metadata = student.metadata().deepCopy().put("key 37.20", true);
    assertFound(new Lesson(student.name(), metadata, student.cells()));
    ObjectNode number = student.metadata().deepCopy().put("key", 37.2);
    assertFound(new Lesson(student.name(), number, student.cells()));
  }

  @Test
  void whatIsToldInAPictureIsFound() throws LessonException, IOException {
    Lesson student = StudentNotebook.of(secretive());
    byte[] svg = "<svg><text>37.20 g</text></svg>".getBytes(StandardCharsets.UTF_8);
    String packed = Base64.getEncoder().encodeToString(svg);
    ObjectNode attachments = student.metadata().objectNode();
    attachments.putObject("key.svg").put("image/svg+xml", packed);
    List<LessonCell> cells = new ArrayList<>(student.cells());
    cells.add(new LessonCell.Prose("added", "?", student.metadata().objectNode(), attachments, 0));
    assertFound(new Lesson(student.name(), student.metadata(), cells));
    assertFound(with(student, "![](data:image/svg+xml;base64," + packed + ")"));
  }
}
