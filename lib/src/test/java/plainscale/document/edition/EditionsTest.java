package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plainscale.document.Edition;
import plainscale.document.LessonException;
import plainscale.document.Notebooks;
import plainscale.document.WorkedLesson;

/** Which edition has what. */
class EditionsTest {
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");
  private static final Pattern LINK = Pattern.compile(" href=\"#([^\"]*)\"");

  private static Notebooks lesson() {
    return new Notebooks()
        .head(
            """
            {"title": "A ball on a thread", "level": "upper secondary", "minutes": 45,
             "aims": ["weigh <things>", "read a ruler"], "hazards": ["eyes"]}
            """)
        .prose("# A ball on a thread\n\nWords for everybody.")
        .says("{\"minutes\": 5}")
        .prose("Mind the thread.")
        .says("{\"role\": \"caution\"}")
        .prose("## Weigh")
        .code("given m = 2.70 ± 0.05 g \"mass of a ball\"")
        .says("{\"role\": \"measurement\", \"minutes\": 10}")
        .code("w = m g_n \"weight\"")
        .says("{\"role\": \"result\", \"minutes\": 7}")
        .prose("Bring two balls.")
        .says("{\"role\": \"note\"}")
        .prose("Grams for kilograms.")
        .says("{\"role\": \"slips\"}")
        .prose("## Think\n\n1. How heavy is it?\n2. And on the Moon?")
        .says("{\"role\": \"question\", \"lines\": 2, \"minutes\": 3}")
        .prose("A sixth of it.")
        .says("{\"role\": \"answer\"}")
        .code("show w in mN")
        .says("{\"blank\": {\"student\": \"cell\"}}");
  }

  private static String page(Edition edition) throws LessonException {
    return Handout.html(lesson().worked(), edition, Fading.LAST);
  }

  private static String main(Edition edition) throws LessonException {
    String page = page(edition);
    return page.substring(page.indexOf("<main>"));
  }

  private static void assertHas(String page, String... parts) {
    assertAll(List.of(parts).stream().map(p -> () -> assertTrue(page.contains(p), p)));
  }

  private static void assertHasNone(String page, String... parts) {
    assertAll(List.of(parts).stream().map(p -> () -> assertFalse(page.contains(p), p)));
  }

  @Test
  void notesSlipsAndAnswersAreInTheTeachersEditionOnly() throws LessonException {
    String[] parts = {"Bring two balls.", "Grams for kilograms.", "A sixth of it."};
    assertHas(page(Edition.TEACHER), parts);
    assertHas(page(Edition.TEACHER), "Note for the teacher", "Common slips", ">Answer<");
    for (Edition edition : List.of(Edition.WORKED, Edition.STUDENT, Edition.PROJECTOR)) {
      assertHasNone(page(edition), parts);
    }
  }

  @Test
  void theWorkedEditionIsTheLessonAsItStands() throws LessonException {
    String page = main(Edition.WORKED);
    assertHas(page, "Words for everybody.", "Mind the thread.", "w = m g_n", "26.5", "How heavy");
    assertHasNone(page, "ws-line", "Students fill in", "Name");
    assertTrue(page.contains("Every number on this sheet was computed"), page);
  }

  @Test
  void theTeachersEditionOpensWithWhatToKnowCautionFirst() throws LessonException {
    String page = main(Edition.TEACHER);
    String brief = page.substring(0, page.indexOf("</section>"));
    assertHas(brief, "A ball on a thread", "Teacher’s edition", "upper secondary", "45 minutes");
    assertHas(brief, "<li>weigh &lt;things&gt;</li>", "Hazards", "eyes");
    int caution = brief.indexOf("Mind the thread.");
    int rules = brief.indexOf("those who are licensed to decide have the last word");
    assertTrue(caution > 0 && caution < rules && rules < brief.indexOf("upper secondary"), brief);
    assertEquals(page.indexOf("Mind the thread."), page.lastIndexOf("Mind the thread."));
  }

  @Test
  void theClockRunsOverTheHeadings() throws LessonException {
    String page = main(Edition.TEACHER);
    assertHas(
        page,
        "<tr><td>0–5</td><td>A ball on a thread</td></tr>",
        "<tr><td>5–22</td><td>Weigh</td></tr>",
        "<tr><td>22–25</td><td>Think</td></tr>",
        "together: 25 minutes");
  }

  @Test
  void theTeacherSeesWhatStudentsFillIn() throws LessonException {
    String page = main(Edition.TEACHER);
    int mark = page.indexOf("Students fill in: values");
    assertTrue(mark > 0 && mark < page.indexOf("given m = 2.70"), page);
    assertHas(page, "Not in the students’ edition");
    assertHas(page, "26.5");
  }

  @Test
  void theStudentsPageIsForNameDateAndHandwriting() throws LessonException {
    String page = main(Edition.STUDENT);
    assertHas(page, "Name", "Date", "45 minutes", "Words for everybody.", "Mind the thread.");
    assertHasNone(page, "<pre", "26.5", "0.0265", "show w", "upper secondary", "weigh &lt;");
    assertEquals(1, page.split("<h1>", -1).length - 1);
    String lines = "<div class=\"ws-line\"></div>".repeat(2) + "</div></li>";
    assertEquals(2, page.split(Pattern.quote(lines), -1).length - 1, page);
  }

  @Test
  void aQuestionWithoutAListHasItsLinesBelow() throws LessonException {
    WorkedLesson worked = new Notebooks().prose("Why?").says("{\"role\": \"question\"}").worked();
    String page = Handout.html(worked, Edition.STUDENT, Fading.LAST);
    assertTrue(
        page.contains(
            "<p>Why?</p>\n<div class=\"ws-lines\" aria-hidden=\"true\">"
                + "<div class=\"ws-line\"></div>".repeat(3)),
        page);
  }

  @Test
  void aTitleThatNoHeadingSaysStandsAbove() throws LessonException {
    WorkedLesson worked =
        new Notebooks().head("{\"title\": \"Another <title>\"}").prose("Words.").worked();
    for (Edition edition : List.of(Edition.STUDENT, Edition.TEACHER)) {
      String page = Handout.html(worked, edition, Fading.LAST);
      assertTrue(page.contains("<h1>Another &lt;title&gt;</h1>"), page);
    }
  }

  @Test
  void theProjectorHasAScreenForEachIdea() throws LessonException {
    String page = main(Edition.PROJECTOR);
    assertHasNone(page, "<pre", "given m");
    assertHas(page, "<li><a href=\"#s3\">Weigh</a></li>");
    List<String> screens = List.of(page.split("<section class=\"screen\"", -1));
    assertEquals(1, screens.stream().filter(s -> s.contains("Mind the thread.")).count());
    assertTrue(screens.size() > 6, page);
  }

  @Test
  void everyAnchorOfTheProjectorLeadsToAScreen() throws LessonException {
    String page = page(Edition.PROJECTOR);
    List<String> ids = ID.matcher(page).results().map(id -> id.group(1)).toList();
    Set<String> places = new HashSet<>(ids);
    assertEquals(ids.size(), places.size(), "an id stands there twice");
    List<String> links = LINK.matcher(page).results().map(link -> link.group(1)).toList();
    assertTrue(links.size() > 10);
    assertAll(links.stream().map(link -> () -> assertTrue(places.contains(link), link)));
    List<Integer> screens =
        ids.stream()
            .filter(id -> id.matches("s\\d+"))
            .map(id -> Integer.valueOf(id.substring(1)))
            .toList();
    assertEquals(IntStream.rangeClosed(1, screens.size()).boxed().toList(), screens);
  }

  @Test
  void theProjectorTellsADerivationStepByStep() throws LessonException {
    WorkedLesson worked =
        new Notebooks()
            .code("given m = 2.70 g\ngiven d = 14.0 cm\nrelation r: m g_n = k_e q^2/d^2")
            .code("solve r for q in nC")
            .worked();
    String page = Handout.html(worked, Edition.PROJECTOR, Fading.LAST);
    List<String> screens =
        Pattern.compile("class=\"ps-new\">\\((\\d)\\)")
            .matcher(page)
            .results()
            .map(MatchResult::group)
            .toList();
    assertEquals(List.of("class=\"ps-new\">(2)", "class=\"ps-new\">(3)"), screens);
    String first =
        page.substring(page.indexOf(screens.get(0)) - 2000, page.indexOf(screens.get(0)));
    assertFalse(first.contains("square root"), "the next step stands there already");
  }

  @Test
  void longTablesAndLongProseAreSplit() throws LessonException {
    WorkedLesson worked =
        new Notebooks()
            .prose(
                "## Long\n\n"
                    + "Words and more words go on and on here. ".repeat(8)
                    + "\n\n"
                    + ("A paragraph of words that is quite long for a screen on the wall. "
                                .repeat(8)
                            + "\n\n")
                        .repeat(3))
            .code("given d = 10 cm\nvary d from 1 cm to 20 cm by 1 cm show 2*d")
            .worked();
    String page = Handout.html(worked, Edition.PROJECTOR, Fading.LAST);
    int tables = page.split("class=\"ps-grid\"", -1).length - 1;
    assertEquals(3, tables);
    List<String> screens = List.of(page.split("<section class=\"screen\"", -1));
    assertTrue(screens.stream().filter(s -> s.contains("A paragraph")).count() > 1);
  }

  @ParameterizedTest
  @EnumSource(Edition.class)
  void everyEditionIsOneFileThatRunsNothingAndNeedsNothing(Edition edition) throws LessonException {
    String page = page(edition);
    assertFalse(
        Pattern.compile("(?i)<(script|iframe|object|embed|link|base)\\b|@import|url\\(")
            .matcher(page)
            .find());
    assertFalse(Pattern.compile("(?i)\\b(src|href)=\"(?!#|data:)").matcher(page).find());
    assertTrue(page.startsWith("<!DOCTYPE html>"), page);
    assertTrue(page.contains("@media print"));
    assertFalse(page.contains("{{"), page);
  }

  @ParameterizedTest
  @CsvSource({
    "WORKED,    test.html",
    "TEACHER,   test-teacher.html",
    "STUDENT,   test-student.html",
    "PROJECTOR, test-projector.html"
  })
  void theFileIsCalledAfterItsEdition(Edition edition, String name) throws LessonException {
    assertEquals(name, Handout.fileName(lesson().worked(), edition));
  }

  @Test
  void theLanguageOfTheLessonIsThatOfThePage() throws LessonException {
    WorkedLesson worked = new Notebooks().head("{\"locale\": \"de-CH\"}").prose("Wörter.").worked();
    for (Edition edition : Edition.values()) {
      String page = Handout.html(worked, edition, Fading.LAST);
      assertTrue(page.contains("<html lang=\"de-CH\">"), page);
    }
    assertTrue(Handout.html(worked, Edition.STUDENT, Fading.LAST).contains("Datum"));
  }

  @Test
  void anyEditionMayLeaveSomethingBlank() throws LessonException {
    WorkedLesson worked =
        new Notebooks()
            .code("given m = 2.70 g")
            .code("w = m g_n \"weight\"")
            .says("{\"blank\": {\"worked\": \"values\", \"projector\": \"cell\"}}")
            .worked();
    String page = Handout.html(worked);
    assertTrue(page.contains("ws-gap") && !page.contains("0.0265"), page);
    assertFalse(page.contains("w = m g_n \""), "the source tells the formula");
    assertFalse(Handout.html(worked, Edition.PROJECTOR, Fading.LAST).contains("26.5"));
  }
}
