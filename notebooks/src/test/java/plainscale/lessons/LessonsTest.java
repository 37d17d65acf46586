package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.WorkedLesson;
import plainscale.document.edition.Fading;
import plainscale.document.edition.Handout;
import plainscale.magnitude.Digits;
import plainscale.render.Renderers;
import plainscale.render.ValueText;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;

/** What holds for every lesson that ships. */
class LessonsTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Pattern LINK =
      Pattern.compile(
          "(?i)(?:\\b(?:src|srcset|href|action|poster)\\s*=|url\\()\\s*[\"']?([^\"'\\s)>]*)");
  private static final Pattern ACTIVE =
      Pattern.compile(
          "(?i)<(?:script|iframe|object|embed|link|base)\\b|<[^>]*\\son\\w+\\s*=|@import");

  record Shipped(String file, String text) {
    WorkedLesson work() throws LessonException {
      return WorkedLesson.run(Lesson.parse(file, text), done -> {});
    }

    @Override
    public String toString() {
      return file;
    }
  }

  static List<Shipped> lessons() {
    List<Shipped> lessons =
        NotationLessons.notebooks().entrySet().stream()
            .map(e -> new Shipped(e.getKey(), e.getValue()))
            .toList();
    assertFalse(lessons.isEmpty(), "no lesson ships");
    return lessons;
  }

  private static List<Result> results(WorkedLesson worked) {
    return worked.cells().stream().flatMap(cell -> cell.results().stream()).toList();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void runsWithoutMistakes(Shipped lesson) throws LessonException {
    List<Result> results = results(lesson.work());
    assertFalse(results.isEmpty());
    List<Result> mistakes = results.stream().filter(Result.Mistaken.class::isInstance).toList();
    assertEquals("", Renderers.text(mistakes));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void givesTheSameResultsTwice(Shipped lesson) throws LessonException {
    WorkedLesson once = lesson.work();
    WorkedLesson again = lesson.work();
    assertEquals(Renderers.text(results(once)), Renderers.text(results(again)));
    assertEquals(Handout.html(once), Handout.html(again));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void theHandoutNeedsNoNetworkAndRunsNothing(Shipped lesson) throws LessonException {
    WorkedLesson worked = lesson.work();
    for (Edition edition : Edition.values()) {
      assertNeedsNothing(Handout.html(worked, edition, Fading.LAST));
    }
  }

  private static void assertNeedsNothing(String html) {
    Matcher link = LINK.matcher(html);
    while (link.find()) {
      String target = link.group(1).toLowerCase(Locale.ROOT);
      assertTrue(target.startsWith("data:") || target.startsWith("#"), link.group());
    }
    Matcher active = ACTIVE.matcher(html);
    assertFalse(active.find(), () -> active.group());
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void theHandoutContainsEachComputedValue(Shipped lesson) throws LessonException {
    WorkedLesson worked = lesson.work();
    String page = bare(Handout.html(worked).replaceAll("<[^>]*>", ""));
    List<String> values =
        worked.cells().stream()
            .filter(cell -> cell.cell().head().blank(Edition.WORKED) != Blank.CELL)
            .flatMap(cell -> cell.results().stream())
            .flatMap(LessonsTest::values)
            .toList();
    assertFalse(values.isEmpty());
    assertAll(values.stream().map(v -> () -> assertTrue(page.contains(bare(v)), v)));
  }

  private static Stream<String> values(Result result) {
    if (result instanceof Result.Valued valued) {
      return Stream.concat(Stream.of(valued.shown()), valued.prefixed().stream())
          .map(shown -> ValueText.number(shown, valued.writing()));
    }
    if (result instanceof Result.Contrasted contrast) {
      return contrast.sides().stream()
          .map(side -> Digits.of(side.shown().value(), contrast.writing().digits()).text());
    }
    if (result instanceof Result.Narrated narrated) {
      return narrated.pieces().stream()
          .filter(Piece.Live.class::isInstance)
          .map(Piece.Live.class::cast)
          .map(live -> ValueText.of(live.numeral()));
    }
    return Stream.empty();
  }

  /** Digits, letters and signs without what the layout of a page puts between or above. */
  private static String bare(String text) {
    String raised = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
    String plain = "0123456789−";
    StringBuilder bare = new StringBuilder();
    for (char c : text.replaceAll("&nbsp;|[\\s\\u00A0\\u2009\\u202F\\u2062·]", "").toCharArray()) {
      int at = raised.indexOf(c);
      bare.append(at < 0 ? c : plain.charAt(at));
    }
    return bare.toString();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void theFileIsANotebookOfFormat45ForThisKernelWithoutOutputs(Shipped lesson) throws Exception {
    JsonNode notebook = JSON.readTree(lesson.text());
    assertEquals(4, notebook.path("nbformat").asInt());
    assertEquals(5, notebook.path("nbformat_minor").asInt());
    assertEquals("plainscale", notebook.at("/metadata/kernelspec/name").asText());
    assertEquals("plainscale", notebook.at("/metadata/kernelspec/language").asText());
    assertFalse(notebook.at("/metadata/kernelspec/display_name").asText().isEmpty());
    assertFalse(notebook.path("cells").isEmpty());
    Set<String> ids = new HashSet<>();
    for (JsonNode cell : notebook.path("cells")) {
      String id = cell.path("id").asText();
      assertTrue(id.matches("[a-zA-Z0-9-_]{1,64}"), "id: " + id); // spec: nbformat 4.5, cell_id
      assertTrue(ids.add(id), "twice: " + id);
      checkCell(cell, id);
    }
  }

  private static void checkCell(JsonNode cell, String id) {
    Set<String> allowed =
        Map.of(
                "markdown",
                Set.of("id", "cell_type", "metadata", "source", "attachments"),
                "code",
                Set.of("id", "cell_type", "metadata", "source", "outputs", "execution_count"))
            .getOrDefault(cell.path("cell_type").asText(), Set.of());
    cell.fieldNames()
        .forEachRemaining(name -> assertTrue(allowed.contains(name), id + ": " + name));
    assertTrue(cell.path("metadata").isObject(), id);
    assertTrue(cell.path("source").isTextual() || cell.path("source").isArray(), id);
    if (allowed.contains("outputs")) {
      assertTrue(cell.path("outputs").isArray() && cell.path("outputs").isEmpty(), id);
      assertTrue(cell.path("execution_count").isNull(), id);
    }
  }
}
