package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading a lesson, and the sentence for each file that is none. */
class LessonTest {
  @TempDir Path folder;

  private static String refused(String json) {
    return assertThrows(LessonException.class, () -> Lesson.parse("a.ipynb", json), json)
        .sentence();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                     | a.ipynb is not a notebook: a notebook is a JSON object.",
        "given m = 2 g          | a.ipynb is not a notebook: it is not JSON (line 1).",
        "{\"nbformat\": 4       | a.ipynb is not a notebook: it is not JSON (line 1).",
        "[]                     | a.ipynb is not a notebook: a notebook is a JSON object.",
        "null                   | a.ipynb is not a notebook: a notebook is a JSON object.",
        "4                      | a.ipynb is not a notebook: a notebook is a JSON object.",
        "{}                     | a.ipynb is JSON but not a notebook: it does not say its nbformat.",
        "{\"cells\": []}        | a.ipynb is JSON but not a notebook: it does not say its nbformat.",
        "{\"nbformat\": 3}      | a.ipynb is a notebook of nbformat 3; open it in JupyterLab and save it, which makes it nbformat 4.",
        "{\"nbformat\": 5}      | a.ipynb is a notebook of nbformat 5; open it in JupyterLab and save it, which makes it nbformat 4.",
        "{\"nbformat\": 4}      | a.ipynb has no cells; there is nothing to run.",
        "{\"nbformat\": 4, \"cells\": []} | a.ipynb has no cells; there is nothing to run.",
        "{\"nbformat\": 4, \"cells\": 7} | a.ipynb has no cells; there is nothing to run.",
        "{\"nbformat\": 4, \"cells\": [7, null, {}, {\"cell_type\": \"raw\"}]} | a.ipynb has no cells; there is nothing to run.",
        "{\"nbformat\": 4, \"metadata\": {\"kernelspec\": {\"language\": \"python\"}}} | a.ipynb is written in python, not in Plainscale's notation.",
        "{\"nbformat\": 4, \"metadata\": {\"language_info\": {\"name\": \"R\"}}} | a.ipynb is written in R, not in Plainscale's notation."
      })
  void whatIsNoLessonIsRefusedWithASentence(String json, String sentence) {
    assertEquals(sentence, refused(json));
  }

  @Test
  void jsonNestedWithoutEndIsRefused() {
    assertEquals(
        "a.ipynb is not a notebook: it is not JSON.",
        refused("{\"metadata\": " + "[".repeat(100_000)));
  }

  @Test
  void aFolderAMissingFileAndBytesThatAreNoTextAreNamed() throws IOException {
    assertEquals(folder.getFileName() + " is a folder; a lesson is a file.", cannotRead(folder));
    Path missing = folder.resolve("missing.ipynb");
    assertEquals("There is no file " + missing + ".", cannotRead(missing));
    Path latin = Files.write(folder.resolve("latin.ipynb"), new byte[] {'{', (byte) 0xE9, '}'});
    assertEquals(
        "latin.ipynb is not a text in UTF-8, so it is no lesson; save it as UTF-8.",
        cannotRead(latin));
  }

  @Test
  void outputsOfSixtyMegabytesArePassedOver() throws Exception {
    Path large = folder.resolve("large.ipynb");
    String line = "\"" + "x".repeat((1 << 20) - 4) + "\",\n";
    try (BufferedWriter file = Files.newBufferedWriter(large)) {
      file.write("{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"code\", \"outputs\": [\n");
      for (int i = 0; i < 60; i++) {
        file.write(line);
      }
      file.write("0], \"source\": \"x = 2\"}]}");
    }
    assertEquals("x = 2", Lesson.read(large).cells().get(0).source());
  }

  private static String cannotRead(Path file) {
    return assertThrows(LessonException.class, () -> Lesson.read(file)).sentence();
  }

  @Test
  void aSourceIsOneTextOrAListOfLines() throws LessonException {
    String json =
        """
        {"nbformat": 4, "cells": [
          {"id": "a", "cell_type": "code", "source": ["x = 2\\n", "x x"]},
          {"id": "b", "cell_type": "markdown", "source": "# Title\\nText"},
          {"cell_type": "code"}]}
        """;
    Lesson lesson = Lesson.parse("a.ipynb", json);
    assertEquals(
        List.of("x = 2\nx x", "# Title\nText", ""),
        lesson.cells().stream().map(LessonCell::source).toList());
    assertEquals(List.of("a", "b", "cell-2"), lesson.cells().stream().map(LessonCell::id).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"plainscale\": {\"title\": \"Named\"}} | # Headed | Named",
        "{}                                       | # Headed | Headed",
        "{}                                       | Text     | a.ipynb"
      })
  void theTitleIsNamedOrTheFirstHeadingOrTheFile(String metadata, String prose, String title)
      throws LessonException {
    String json =
        "{\"nbformat\": 4, \"metadata\": %s, \"cells\": [{\"cell_type\": \"markdown\", \"source\": \"%s\"}]}"
            .formatted(metadata, prose);
    assertEquals(title, Lesson.parse("a.ipynb", json).title());
  }

  @ParameterizedTest
  @CsvSource({"lesson.ipynb, lesson", "a.b.ipynb, a.b", "lesson, lesson", ".ipynb, .ipynb"})
  void theStemIsTheNameWithoutItsEnding(String name, String stem) {
    assertEquals(stem, new Lesson(name, JsonNodeFactory.instance.objectNode(), List.of()).stem());
  }

  @Test
  void cellsRunInOrderInOneSheet() throws LessonException {
    WorkedLesson worked =
        WorkedLesson.run(
            new Notebooks().code("x = 2").prose("text").code("x + 1").lesson(), done -> {});
    List<String> texts = worked.cells().stream().map(LessonText::of).toList();
    assertEquals(List.of("  x = 2", "text", "  x + 1 = 3"), texts);
    assertEquals(0, worked.mistakes());
  }

  @Test
  void aLessonReadsDataFromItsOwnFolder(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("class.csv"), "x (cm)\n14.0\n14.2\n");
    Files.writeString(
        folder.resolve("a.ipynb"),
        "{\"nbformat\": 4, \"metadata\": {}, \"cells\": [{\"cell_type\": \"code\", \"id\": \"a\","
            + " \"source\": \"data \\\"class.csv\\\"\"}]}");
    WorkedLesson worked = WorkedLesson.run(Lesson.read(folder.resolve("a.ipynb")), done -> {});
    assertEquals(0, worked.mistakes());
    assertTrue(LessonText.of(worked.cells().get(0)).contains("(14.10 ± 0.10) cm"));
  }
}
