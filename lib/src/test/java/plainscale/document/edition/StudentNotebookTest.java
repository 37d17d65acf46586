package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.document.edition.StudentLessons.cell;
import static plainscale.document.edition.StudentLessons.ids;
import static plainscale.document.edition.StudentLessons.source;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;
import plainscale.document.Role;
import plainscale.document.WorkedLesson;

/** What students get of a lesson to rework. */
class StudentNotebookTest {
  private static final String NOTHING = "{\"blank\":{\"student\":\"nothing\"}}";
  private static final String VALUES = "{}";
  private static final String FORMULAS = "{\"blank\":{\"student\":\"formulas\"}}";
  private static final String ALL = "{\"blank\":{\"student\":\"all\"}}";
  private static final String MEASURED = "{\"role\":\"measurement\"}";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given m = 2.70 ± 0.05 g "mass"       | given m = ? ± ? g "mass"
          given s = 0.900(3) m                 | given s = ? ± ? m
          given d = 14.0 cm ± 2 %              | given d = ? cm ± ? %
          given h = 7.35 ± 0.05 m rectangular  | given h = ? ± ? m rectangular
          given T = (-5.0 ± 0.5) °C            | given T = (? ± ?) °C
          given t = 1.21, 1.25, 1.19 s         | given t = ?, ?, ? s
          given rho = 0.998 g/cm^3 "water"     | given rho = 0.998 g/cm^3 "water"
          w = m g_n in mN "weight"             | w = m g_n in mN "weight"
          relation r: m g_n = T "pull"         | relation r: m g_n = T "pull"
          solve r for T in mN "pull"           | solve r for T in mN with questions "pull"
          solve r for T                        | solve r for T with questions
          solve r for T with boxes "pull"      | solve r for T with boxes "pull"
          solve r for T with answer            | solve r for T with answer
          forces on b: pull 2.0 [N] up         | forces on b: pull 2.0 [N] up
          use coulomb with q_1 = q "push"      | use coulomb with q_1 = q "push"
          """)
  void valuesThatWereMeasuredAreBlankAndWhatComputesStays(String teacher, String student)
      throws LessonException {
    assertEquals(student, source(VALUES, teacher));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given rho = 0.998 g/cm^3 "water" | given rho = ? g/cm^3 "water"
          given n = 12                     | given n = ?
          d = 14.0 [cm] "distance"         | d = ? [cm] "distance"
          w = m g_n                        | w = m g_n
          """)
  void amongMeasurementsEveryNumberIsTheStudents(String teacher, String student)
      throws LessonException {
    assertEquals(student, source(MEASURED, teacher));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given m = 2.70 ± 0.05 g              | given m = ? ± ? g
          given rho = 0.998 g/cm^3 "water"     | given rho = 0.998 g/cm^3 "water"
          w = (m + m) g_n in mN "weight"       | w = ? in mN "weight"
          n = 4.19e11 "electrons"              | n = ? "electrons"
          m g_n                                | ?
          m                                    | m
          relation r: (m + m) g_n = T "pull"   | relation r: ? "pull"
          solve r, s for T in mN "pull"        | solve ? for T in mN with boxes "pull"
          solve r for T with small θ           | solve ? for T with small θ with boxes
          forces on b: pull m g_n up, push w down with missing | forces on b: ? with missing
          forces on b mirrors c                | forces on b mirrors c
          contrast n with m/(2 [u]) "So many"  | contrast n with m/(2 [u]) "So many"
          say "It is {n in words}."            | say "It is {n in words}."
          show n in words                      | show n in words
          field f: charge 3.0 nC at (0 cm, 0 cm) | field f: charge 3.0 nC at (0 cm, 0 cm)
          what if m = 2*m show w               | what if m = 2*m show w
          use coulomb with q_1 = q "push"      | relation coulomb: ? "push"
          use coulomb as push                  | relation push: ?
          expect w below 3.0 [N] "light"       | expect w below 3.0 [N] "light"
          """)
  void formulasCanBeTheStudentsToWrite(String teacher, String student) throws LessonException {
    assertEquals(student, source(FORMULAS, teacher));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given rho = 0.998 g/cm^3 "water" | given rho = ? g/cm^3 "water"
          given m = 2.70 ± 0.05 g          | given m = ? ± ? g
          w = m g_n "weight"               | w = ? "weight"
          field f: charge 3.0 nC at (0 cm, 0 cm) "one" | field f: ? "one"
          """)
  void allCanBeTheStudentsToWrite(String teacher, String student) throws LessonException {
    assertEquals(student, source(ALL, teacher));
  }

  @Test
  void anAuthorCanKeepTheFallbackValues() throws LessonException {
    String cell = "given m = 2.70 ± 0.05 g  # from the balance\nsolve r for T";
    assertEquals(cell, source(NOTHING, cell));
  }

  @Test
  void commentsMayTellTheKeyAndAreLeftOut() throws LessonException {
    String student =
        source(
            VALUES,
            "# the key is 67 nC",
            "given m = 2.70 ± 0.05 g   \"mass # one\"  # 2.70 it was",
            "",
            "w = m g_n  # about 26 mN",
            "x = m +  # first",
            "    m  # second",
            "# the end");
    assertEquals("given m = ? ± ? g   \"mass # one\"\n\nw = m g_n\nx = m +\n    m", student);
  }

  @Test
  void aFormulaOfSeveralLinesIsOneBlank() throws LessonException {
    assertEquals(
        "F = ?\n    in mN \"push\"",
        source(
            FORMULAS,
            "F = k_e (3.0 [nC])^2",
            "    /(2.0 [cm])^2  # Coulomb",
            "    in mN \"push\""));
  }

  @Test
  void aSearchAmongLawsIsLeftOutWhereFormulasAreAsked() throws LessonException {
    assertEquals("w = ?", source(FORMULAS, "use \"pull of two charges\"", "w = m g_n"));
  }

  @Test
  void aLineThatCannotBeReadIsLeftOut() throws LessonException {
    assertEquals("w = 2", source(VALUES, "given m = 2.70 flurbs", "w = 2", "given (67 nC"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          show 2.70 [g] in kg         | show ? [g] in kg
          show 2.7 [g] in kg          | show ? [g] in kg
          show 0.00270 [kg]           | show ? [kg]
          F = 2.70 [g]*g_n            | F = ? [g]*g_n
          say "It is {2.70 [g]}."     | say "It is {? [g]}."
          relation r: F = 2.70 [g]*a  | relation r: F = ? [g]*a
          show 26.5 [mN]              | show ? [mN]
          contrast 0.0265 [N] with w  | contrast ? [N] with w
          show 2.70 [m]               | show 2.70 [m]
          show 2.71 [g]               | show 2.71 [g]
          x = 2*m                     | x = 2*m
          """)
  void aHiddenNumberIsNotToldByAnotherLine(String teacher, String student) throws LessonException {
    Lesson lesson =
        new StudentLessons()
            .code("a", "{}", "given m = 2.70 ± 0.05 g", "given two = 2 ± 1 g", "w = m g_n")
            .code("b", "{}", teacher)
            .student();
    assertEquals(student, cell(lesson, "b").source());
  }

  @Test
  void whatIsForTheTeacherIsGoneAndIdsAreKept() throws LessonException {
    Lesson student =
        new StudentLessons()
            .prose("title", "{}", "# Lesson")
            .prose("note", "{\"plainscale\":{\"role\":\"note\"}}", "Prepare the balls.")
            .code("slips", "{\"plainscale\":{\"role\":\"slips\"}}", "x = 1")
            .prose("key", "{\"plainscale\":{\"role\":\"answer\"}}", "67 nC")
            .code("gone", "{\"plainscale\":{\"blank\":{\"student\":\"cell\"}}}", "y = 1")
            .raw("raw", "67 nC")
            .code("comment", "{}", "# 67 nC")
            .code("kept", "{}", "z = 1")
            .student();
    assertEquals(List.of("how-to-work", "title", "kept"), ids(student));
    assertEquals("lesson-student.ipynb", student.name());
  }

  @Test
  void aQuestionIsFollowedByRoomForTheAnswer() throws LessonException {
    String role = "{\"plainscale\":{\"role\":\"question\",\"lines\":4}}";
    Lesson student =
        new StudentLessons()
            .prose("why", role, "Why?")
            .prose("why-answer", role, "And how?")
            .prose("q".repeat(64), role, "How many?")
            .student();
    assertEquals("why", ids(student).get(1));
    assertEquals("why-answer-2", ids(student).get(2));
    assertEquals("why-answer", ids(student).get(3));
    assertEquals("why-answer-answer", ids(student).get(4));
    assertEquals(7, ids(student).stream().distinct().count());
    LessonCell answer = student.cells().get(2);
    assertTrue(answer.source().contains("Your answer"));
    assertEquals(Role.TEXT, answer.head().role().orElseThrow());
    assertEquals(4, student.cells().get(1).head().lines().orElseThrow());
    assertTrue(ids(student).stream().allMatch(id -> id.length() <= 64));
  }

  @Test
  void metadataAreReducedToWhatIsForEverybody() throws LessonException {
    String lesson =
        """
        {"kernelspec": {"name": "plainscale", "language": "plainscale", "display_name": "P", "x": "67"},
         "language_info": {"name": "plainscale", "file_extension": ".pls", "x": 67},
         "authors": [{"name": "67"}],
         "plainscale": {"format": 1, "title": "Balls", "aims": ["measure"], "minutes": 45,
                        "twin": "sha256-67", "key": "67", "hazards": ["sparks", 67]}}
        """;
    String cell =
        """
        {"tags": ["67"], "editable": false,
         "plainscale": {"role": "measurement", "minutes": 5, "lines": 2, "key": "67",
                        "blank": {"teacher": "nothing"}}}
        """;
    Lesson student = new StudentLessons(lesson).code("a", cell, "given m = 2 g").student();
    assertEquals(
        "{\"kernelspec\":{\"display_name\":\"P\",\"language\":\"plainscale\",\"name\":\"plainscale\"},"
            + "\"language_info\":{\"name\":\"plainscale\",\"file_extension\":\".pls\"},"
            + "\"plainscale\":{\"format\":1,\"title\":\"Balls\",\"minutes\":45,\"aims\":[\"measure\"],"
            + "\"hazards\":[\"sparks\"]}}",
        student.metadata().toString());
    assertEquals(
        "{\"plainscale\":{\"role\":\"measurement\",\"minutes\":5,\"lines\":2}}",
        cell(student, "a").metadata().toString());
  }

  @Test
  void onlyPicturesThatAreShownStayAttached() throws LessonException {
    Lesson student =
        new StudentLessons()
            .prose(
                "a",
                "{}",
                "![balls](attachment:balls.png) and ![one](attachment:one%20ball.png)",
                "",
                "<img src=\"attachment:html.png\">",
                "",
                "<!-- ![key](attachment:key.png) -->")
            .attached("balls.png", "AAAA")
            .attached("one ball.png", "AAAA")
            .attached("html.png", "AAAA")
            .attached("key.png", "NjcgbkM=")
            .student();
    LessonCell.Prose prose = (LessonCell.Prose) cell(student, "a");
    assertTrue(prose.attachments().has("balls.png"));
    assertTrue(prose.attachments().has("one ball.png"));
    assertTrue(prose.attachments().has("html.png"));
    assertFalse(prose.attachments().has("key.png"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Measure. <!-- 67 nC --> Then think.",
        "Measure.\n\n<!-- 67 nC -->\n\nThen think.",
        "Measure.\n\n<!--\nthe key:\n\n67 nC\n-->\nThen think.",
        "Measure.\n\n<div><!-- 67 nC --> <b>Then</b> think.</div>",
        "Measure.\n\n[//]: # (67 nC)\n\nThen think.",
        "Measure.\n\n[key]: # \"67 nC\"\n\nThen think.",
        "Measure.\n\n> <!-- 67 nC -->\n> Then think.",
        "- Measure.\n  <!-- 67 nC -->\n- Then think.",
        "Measure. <!-- 67\nnC --> Then think.",
        "Then think. Measure.\n\n<!-- 67 nC, never closed",
      })
  void commentsInProseAreLeftOut(String prose) throws LessonException {
    String student = cell(new StudentLessons().prose("a", "{}", prose).student(), "a").source();
    assertFalse(student.contains("67"), student);
    assertTrue(student.contains("Measure."), student);
    assertTrue(student.contains("think."), student);
  }

  @Test
  void proseWithoutCommentsStaysAsItIs() throws LessonException {
    String prose =
        "# A\n\nIf a < b, `<!-- code -->` and $x<!y$ [here](https://example.org).\n\n    <!-- code -->";
    assertEquals(prose, cell(new StudentLessons().prose("a", "{}", prose).student(), "a").source());
  }

  @Test
  void aCopyThatIsNotFilledInHasNoMistakes() throws LessonException {
    Lesson student =
        new StudentLessons()
            .code("a", "{}", "given m = 2.70 ± 0.05 g", "given T = 20.0 ± 0.5 °C")
            .code("b", "{\"plainscale\":" + FORMULAS + "}", "relation r: m g_n = 2*F")
            .code("c", "{\"plainscale\":" + FORMULAS + "}", "solve r for F", "w = 2*F", "w + F")
            .code("d", "{}", "say \"{w} and {r}\"", "contrast w with F", "what if m = 2*m")
            .student();
    WorkedLesson worked = WorkedLesson.run(student, done -> {});
    assertEquals(0, worked.mistakes());
    assertEquals(8, worked.blanks());
  }

  @Test
  void aCellBeyondTheLimitsIsLeftOut() throws LessonException {
    Lesson student =
        new StudentLessons()
            .code("a", "{}", "x = 1\n".repeat(600))
            .code("b", "{}", "y = 1")
            .student();
    assertEquals(List.of("how-to-work", "b"), ids(student));
  }
}
