package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.document.Lesson;
import plainscale.document.LessonException;

/**
 * Rules about what a lesson says of itself: one lesson that breaks each, and one that nearly does.
 */
class HeadRulesTest {
  private static final String FORMAT_2 =
      "The lesson is of format 2, and this program knows format 1; what is new in it is passed over.";

  @Test
  void whatTheReaderOfTheFileMendedIsPassedOn() throws LessonException {
    String json =
        """
        {"nbformat": 4, "cells": [
          {"id": "a", "cell_type": "code", "source": "1 + 1"},
          {"id": "a", "cell_type": "markdown", "source": "# T"}]}
        """;
    assertEquals(
        List.of("remark :0 Two cells have the id a; the later one is now called a-2. → "),
        TestLesson.shown(LessonCheck.of(Lesson.parse("a.ipynb", json)), "reader"));
    assertEquals(List.of(), new TestLesson().prose("# T").found("reader"));
  }

  @Test
  void aNewerFormatIsReadWithARemark() {
    assertEquals(
        List.of("remark :0 " + FORMAT_2 + " → use a newer Plainscale"),
        new TestLesson().head("{\"format\": 2}").prose("# T").found("format"));
    assertEquals(List.of(), new TestLesson().head("{\"format\": 1}").prose("# T").found("format"));
  }

  @Test
  void whatBreaksTheSchemaIsAnErrorAndInANewerFormatARemark() {
    String fault =
        " :0 minutes is \"45\", a text; a whole number belongs there. → write minutes: 45";
    assertEquals(
        List.of("error" + fault),
        new TestLesson().head("{\"minutes\": \"45\"}").prose("# T").found("metadata"));
    assertEquals(
        List.of("remark" + fault),
        new TestLesson()
            .head("{\"format\": 2, \"minutes\": \"45\"}")
            .prose("# T")
            .found("metadata"));
    assertEquals(
        List.of(), new TestLesson().head("{\"minutes\": 45}").prose("# T").found("metadata"));
  }

  @Test
  void cellsAreHeldToTheSchemaToo() {
    assertEquals(
        List.of(
            "error c2:0 lines is -1; the least is 0. → write lines: 0",
            "remark c2:0 I know no field “minuts” of a cell; did you mean minutes? It is kept and means nothing. → write minutes"),
        new TestLesson()
            .prose("# T")
            .code("1 + 1", "{\"lines\": -1, \"minuts\": 5, \"colour\": \"red\"}")
            .found("metadata"));
  }

  @Test
  void aTitleIsNeeded() {
    assertEquals(
        List.of(
            "warning :0 The lesson has no title. → begin its first text with # and the title, or write title: \"…\""),
        new TestLesson().prose("## Not a title").found("title"));
    assertEquals(List.of(), new TestLesson().prose("Words.\n\n# A title").found("title"));
    assertEquals(
        List.of(), new TestLesson().head("{\"title\": \"T\"}").prose("Words.").found("title"));
  }

  @Test
  void theTitleAndTheFirstHeadingAreTheSame() {
    assertEquals(
        List.of(
            "remark c1:12 The first heading is “Two balls”, and the title of the lesson “2 balls”. → write the same in both places"),
        new TestLesson()
            .head("{\"title\": \"2 balls\"}")
            .asText()
            .prose("Words.\n\n# Two *balls*")
            .found("title"));
    assertEquals(
        List.of(),
        new TestLesson()
            .head("{\"title\": \"Two  balls\"}")
            .prose("# Two *balls*\n\n## Others")
            .prose("# Another heading")
            .found("title"));
  }

  @Test
  void theTimesOfTheCellsAddUp() {
    assertEquals(
        List.of(
            "warning :0 The lesson takes 45 minutes, and its cells take 40 together. → write minutes: 40, or change the minutes of the cells"),
        minutes("{\"minutes\": 45}", 15, 25));
    assertEquals(List.of(), minutes("{\"minutes\": 45}", 20, 25));
    assertEquals(List.of(), minutes("{}", 20, 25));
    assertEquals(
        List.of(), new TestLesson().head("{\"minutes\": 45}").prose("# T").found("minutes"));
  }

  private static List<String> minutes(String head, int one, int other) {
    return new TestLesson()
        .head(head)
        .prose("# T", "{\"minutes\": %d}".formatted(one))
        .code("1 + 1", "{\"minutes\": %d}".formatted(other))
        .prose("and more")
        .found("minutes");
  }

  @Test
  void aSettingThatNoCellSetsIsToldWithTheLineToWrite() {
    TestLesson lesson =
        new TestLesson()
            .head("{\"locale\": \"de-CH\", \"scale\": \"long\", \"constants\": \"textbook\"}")
            .prose("# T")
            .code("1 + 1");
    assertEquals(
        List.of(
            "warning :0 The lesson says locale de-CH, and no cell sets it. → write locale de-CH as the first line of cell c2",
            "warning :0 The lesson says scale long, and no cell sets it. → write scale long as the first line of cell c2",
            "warning :0 The lesson says constants textbook, and no cell sets it. → write constants textbook as the first line of cell c2"),
        lesson.found("settings"));
  }

  @Test
  void aLessonWithoutStatementsNeedsACellForItsSetting() {
    assertEquals(
        List.of(
            "warning :0 The lesson says locale hi, and no cell sets it. → write locale hi in a cell"),
        new TestLesson().head("{\"locale\": \"hi\"}").prose("# T").found("settings"));
  }

  @Test
  void aSettingThatACellSetsOtherwiseIsToldThere() {
    assertEquals(
        List.of(
            "warning c2:2 The lesson says locale de-CH, and this line sets en-IN. → write locale de-CH here, or locale: \"en-IN\" in the metadata of the lesson"),
        new TestLesson()
            .head("{\"locale\": \"de-CH\"}")
            .prose("# T")
            .code("locale de-CH\nlocale en-IN")
            .found("settings"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"locale\": \"de-CH\"}",
        "{}",
        "{\"locale\": \"de-CH\", \"scale\": \"milliard\", \"constants\": \"codata\"}",
        "{\"locale\": \"de-CH\", \"scale\": \"lng\", \"constants\": 7}"
      })
  void whatIsSetOrUsualOrUnknownIsNotTold(String head) {
    TestLesson lesson = new TestLesson().head(head).prose("# T").code("locale de-CH");
    assertEquals(List.of(), lesson.found("settings"));
  }
}
