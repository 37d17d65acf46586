package plainscale.lessons;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.algebra.Equation;
import plainscale.document.Blank;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.document.edition.Fading;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.render.PageMath;
import plainscale.render.Renderers;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;

/**
 * No students' page tells what is to be found. The rule: a number may stand there if the lesson
 * itself says it to students (prose, measurements, formulas and relations that stand, words in
 * quotation marks, landmarks and ticks of a ruler), and no other; a formula if it stands; and the
 * whole page, drawings included, is the same for other measurements.
 */
class StudentPagesTest {
  private static final List<StudentLesson> LESSONS = StudentLesson.all();
  private static final List<Blank> LEVELS = List.of(Blank.VALUES, Blank.FORMULAS, Blank.ALL);
  private static final List<Fading> FADINGS = List.of(new Fading(0), Fading.LAST, Fading.ALL);
  private static final Pattern OWN_ROW =
      Pattern.compile("<tr>(?:(?!</tr>).)*own:(?:(?!</tr>).)*</tr>");

  static Stream<Arguments> pages() {
    return LESSONS.stream()
        .flatMap(
            lesson ->
                LEVELS.stream()
                    .flatMap(
                        level ->
                            FADINGS.stream().map(faded -> Arguments.of(lesson, level, faded))));
  }

  /** Every number that any renderer makes of the results of a cell. */
  static Set<String> rendered(List<Result> results) {
    Set<String> numbers = new TreeSet<>(PageNumbers.ofText(Renderers.text(results)));
    numbers.addAll(PageNumbers.ofPage(Renderers.pageHtml(results)));
    numbers.addAll(PageNumbers.ofPage(Renderers.cellHtml(results)));
    Renderers.latex(results).ifPresent(tex -> numbers.addAll(PageNumbers.ofText(tex)));
    return numbers;
  }

  /** The same, and what they are rounded to any two or more figures. */
  private static Set<String> roundedToo(Set<String> numbers) {
    Set<String> all = new TreeSet<>();
    numbers.forEach(number -> all.addAll(PageNumbers.rounded(number)));
    return all;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noNumberStandsThereThatTheLessonDoesNotSay(StudentLesson lesson, Blank blank, Fading faded) {
    Set<String> page = PageNumbers.ofPage(lesson.page(blank, faded));
    page.removeAll(Open.of(lesson, blank, faded).numbers());
    assertEquals(Set.of(), page);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noValueOfAnyRendererStandsThere(StudentLesson lesson, Blank blank, Fading faded) {
    Set<String> hidden = roundedToo(rendered(lesson.results()));
    hidden.removeAll(Open.of(lesson, blank, faded).numbers());
    Set<String> found = PageNumbers.ofPage(lesson.page(blank, faded));
    found.retainAll(hidden);
    assertEquals(Set.of(), found);
  }

  /** The search is worth something only if it sees what is let through. */
  @Test
  void everyCellThatIsLetThroughIsFound() {
    int told = 0;
    for (StudentLesson lesson : LESSONS) {
      Set<String> open = Open.of(lesson, Blank.VALUES, Fading.LAST).numbers();
      for (WorkedCell cell : lesson.code()) {
        Set<String> hidden = rendered(cell.results());
        hidden.removeAll(open);
        String page = lesson.page(Blank.VALUES, Fading.LAST, cell.cell().id());
        Set<String> found = PageNumbers.ofPage(page);
        found.removeAll(open);
        assertEquals(
            hidden.isEmpty(), found.isEmpty(), () -> cell.cell().source() + hidden + found);
        told += hidden.isEmpty() ? 0 : 1;
      }
    }
    assertTrue(told > 50, told + " cells");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noNumberStandsThereInWords(StudentLesson lesson, Blank blank, Fading faded) {
    String page = PageNumbers.text(lesson.page(blank, faded));
    String open = Open.of(lesson, blank, faded).text();
    for (String words : Spelled.in(lesson.results())) {
      if (!open.contains(words)) {
        assertFalse(page.contains(words), words);
      }
    }
  }

  @Test
  void numbersInWordsAreFoundWhereTheyStand() {
    int found = 0;
    for (StudentLesson lesson : LESSONS) {
      String text = PageNumbers.text(lesson.page(Blank.NOTHING, Fading.LAST));
      found += Spelled.in(lesson.results()).stream().filter(text::contains).toList().size();
    }
    assertTrue(found > 20, found + " numbers in words");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noFormulaStandsThereThatIsToBeFound(StudentLesson lesson, Blank blank, Fading faded) {
    String page = lesson.page(blank, faded);
    for (Expr formula : hiddenFormulas(lesson, blank, faded)) {
      assertFalse(tells(page, formula), () -> Printer.print(formula));
    }
  }

  private static boolean tells(String page, Expr formula) {
    String math = PageMath.of(formula, Writing.USUAL).replaceAll("</?math[^>]*>", "");
    String bare = PageNumbers.text(page).replaceAll("\\s", "");
    return page.contains(math) || bare.contains(Printer.print(formula).replaceAll("\\s", ""));
  }

  /** Of steps, definitions and relations that are blank, as far as they are no mere names. */
  private static List<Expr> hiddenFormulas(StudentLesson lesson, Blank blank, Fading faded) {
    List<Expr> hidden = new ArrayList<>();
    Set<String> open = new TreeSet<>();
    for (Result result : lesson.results()) {
      if (result instanceof Result.Derived derived) {
        boolean all = blank != Blank.VALUES;
        List<Equation> steps =
            derived.derivation().steps().stream().map(step -> step.after()).toList();
        int shown = all ? 0 : (int) Math.max(0, steps.size() - (long) faded.steps());
        steps.subList(shown, steps.size()).forEach(step -> hidden.add(step.right()));
      } else if (result instanceof Result.Valued valued) {
        valued.label().formula().ifPresent(f -> add(f, blank != Blank.VALUES, hidden, open));
      } else if (result instanceof Result.Stated stated) {
        add(stated.equation().left(), blank == Blank.ALL, hidden, open);
        add(stated.equation().right(), blank == Blank.ALL, hidden, open);
      } else if (result instanceof LawResult.Used used) {
        add(used.equation().left(), blank == Blank.ALL, hidden, open);
        add(used.equation().right(), blank == Blank.ALL, hidden, open);
      }
    }
    String changes = Open.of(lesson, blank, faded).text().replaceAll("\\s", "");
    hidden.removeIf(formula -> !(formula instanceof Expr.Binary) || isShort(formula));
    hidden.removeIf(formula -> open.contains(Printer.print(formula)));
    hidden.removeIf(formula -> changes.contains(Printer.print(formula).replaceAll("\\s", "")));
    return hidden;
  }

  /** Two letters side by side stand in many words. */
  private static boolean isShort(Expr formula) {
    return Printer.print(formula).length() < 5;
  }

  private static void add(Expr formula, boolean blank, List<Expr> hidden, Set<String> open) {
    if (blank) {
      hidden.add(formula);
    } else {
      open.add(Printer.print(formula));
    }
  }

  @Test
  void formulasAreFoundWhereTheyStand() {
    StudentLesson balls =
        LESSONS.stream().filter(l -> l.name().startsWith("two-balls")).findFirst().orElseThrow();
    List<Expr> hidden = hiddenFormulas(balls, Blank.VALUES, Fading.LAST);
    assertFalse(hidden.isEmpty());
    String open = balls.page(Blank.VALUES, new Fading(0));
    assertTrue(hidden.stream().anyMatch(formula -> tells(open, formula)), hidden::toString);
  }

  /** Whatever a page tells of the measurements, in whichever way, would differ. */
  @ParameterizedTest
  @MethodSource("pages")
  void thePageIsTheSameForOtherMeasurements(StudentLesson lesson, Blank blank, Fading faded) {
    StudentLesson other = Remeasured.of(lesson);
    assertEquals(
        withoutMeasurements(lesson.page(blank, faded)),
        withoutMeasurements(other.page(blank, faded)));
  }

  /** Measurements are given to students; they stand in rows of their own. */
  private static String withoutMeasurements(String page) {
    return OWN_ROW.matcher(page).replaceAll("");
  }

  @Test
  void otherMeasurementsMakeOtherPagesWhereNothingIsBlank() {
    long different =
        LESSONS.stream()
            .filter(
                lesson ->
                    !lesson
                        .page(Blank.NOTHING, Fading.LAST)
                        .equals(Remeasured.of(lesson).page(Blank.NOTHING, Fading.LAST)))
            .count();
    assertTrue(different > LESSONS.size() / 2, different + " of " + LESSONS.size());
    StudentLesson first = LESSONS.get(0);
    assertNotEquals(
        withoutMeasurements(first.page(Blank.NOTHING, Fading.LAST)),
        withoutMeasurements(Remeasured.of(first).page(Blank.NOTHING, Fading.LAST)));
  }

  /** What only programs show, which have no students' page. */
  private static final Set<String> OF_PROGRAMS = Set.of("Printed", "Failed", "Drawn");

  @Test
  void theLessonsHaveEveryKindOfResult() {
    Set<String> met =
        LESSONS.stream()
            .flatMap(lesson -> lesson.results().stream())
            .map(result -> result.getClass().getSimpleName())
            .collect(toCollection(TreeSet::new));
    Set<String> all =
        Stream.of(
                Result.class,
                FieldResult.class,
                DataResult.class,
                LawResult.class,
                GuardResult.class)
            .flatMap(kind -> Arrays.stream(kind.getPermittedSubclasses()))
            .filter(Class::isRecord)
            .map(Class::getSimpleName)
            .collect(toCollection(TreeSet::new));
    all.removeAll(met);
    all.removeAll(OF_PROGRAMS);
    assertEquals("", all.stream().collect(joining(", ")));
  }
}
