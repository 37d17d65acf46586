package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  private static final String NOTEBOOK =
      """
      {"nbformat": 4, "nbformat_minor": 5, "metadata": {}, "cells": [
        {"cell_type": "markdown", "id": "a", "metadata": {}, "source": "# A small lesson"},
        {"cell_type": "code", "id": "b", "metadata": {}, "outputs": [], "execution_count": null, "source": "%s"}]}
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private List<Path> files(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.toList();
    }
  }

  @Test
  void runPrintsTheResultsOfALesson() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("given m = 2.70 g\\nw = m g_n"));
    assertEquals(0, run("run", lesson.toString()));
    assertTrue(out.toString().contains("w = m g_n = 0.0265 N = 26.5 mN"), out.toString());
  }

  @Test
  void runReadsDataFromTheFolderOfTheLesson() throws IOException {
    file("class.csv", "x (cm)\n14.0\n14.2\n");
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("data \\\"class.csv\\\"\\nshow x"));
    assertEquals(0, run("run", lesson.toString()));
    assertTrue(out.toString().contains("x = (14.10 ± 0.10) cm"), out.toString());
  }

  @Test
  void runOfALessonWithAMistakeShowsItInPlaceAndFails() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("w = m g_n"));
    assertEquals(1, run("run", lesson.toString()));
    assertTrue(out.toString().contains("I do not know “m” in this sheet."), out.toString());
  }

  @Test
  void handoutWithoutAFileWritesOneForEachLessonThatShips() throws IOException {
    Path target = folder.resolve("made/here");
    assertEquals(0, run("handout", "--out", target.toString()));
    assertFalse(files(target).isEmpty());
    for (Path handout : files(target)) {
      assertTrue(Files.readString(handout).startsWith("<!DOCTYPE html>"));
    }
    assertTrue(out.toString().contains("no mistakes"), out.toString());
  }

  @Test
  void blanksAreNoMistakesAndAreCounted() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("given m = ? ± ? g\\nw = m g_n"));
    assertEquals(0, run("run", lesson.toString()));
    assertTrue(out.toString().contains("w waits for m, which is still blank."), out.toString());
    assertEquals(0, run("handout", lesson.toString(), "--out", folder.toString()));
    assertTrue(out.toString().contains("no mistakes, 2 blanks to fill in"), out.toString());
  }

  @Test
  void theStudentsEditionCanBeANotebookThatComputesWhatIsPutIn() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("given m = 2.70(5) g\\nw = m g_n"));
    Path target = folder.resolve("students");
    String[] command = {
      "handout", lesson.toString(), "--edition", "student", "--notebook", "--out", target.toString()
    };
    assertEquals(0, run(command));
    Path notebook = target.resolve("small-student.ipynb");
    assertEquals(List.of(notebook), files(target));
    String text = Files.readString(notebook);
    assertTrue(text.contains("given m = ? ± ? g"), text);
    assertFalse(text.contains("2.70"), text);
    assertEquals(0, run("run", notebook.toString()));
    Files.writeString(notebook, text.replace("? ± ?", "5.0 ± 0.1"));
    assertEquals(0, run("run", notebook.toString()));
    assertTrue(out.toString().contains("w = m g_n = (0.0490 ± 0.0010) N"), out.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"worked", "teacher", "projector"})
  void noOtherEditionIsANotebook(String edition) {
    assertEquals(2, run("handout", "--notebook", "--edition", edition));
    assertTrue(err.toString().contains("Try: --edition student --notebook"), err.toString());
  }

  @Test
  void handoutWritesTheEditionsThatAreAskedFor() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("given m = 2.70 g\\nw = m g_n"));
    Path target = folder.resolve("out");
    String place = target.toString();
    String name = lesson.toString();
    assertEquals(0, run("handout", name, "--out", place, "--edition", "student"));
    assertEquals(List.of("small-student.html"), names(target));
    String student = Files.readString(target.resolve("small-student.html"));
    assertFalse(student.contains("0.0265"), student);
    assertEquals(
        0, run("handout", name, "--out", place, "--edition", "teacher", "--edition", "worked"));
    assertEquals(List.of("small-student.html", "small-teacher.html", "small.html"), names(target));
    assertEquals(0, run("handout", name, "--out", place, "--edition", "all"));
    assertEquals(4, names(target).size());
  }

  private List<String> names(Path in) throws IOException {
    return files(in).stream().map(file -> String.valueOf(file.getFileName())).sorted().toList();
  }

  @Test
  void handoutFadesAsManyStepsAsAreAskedFor() throws IOException {
    String cell =
        "given m = 2.70 g\\ngiven d = 14.0 cm\\nrelation r: m g_n = k_e q^2/d^2\\nsolve r for q";
    Path lesson = file("small.ipynb", NOTEBOOK.formatted(cell));
    String place = folder.resolve("out").toString();
    for (String faded : List.of("0", "1", "all")) {
      String[] command = {
        "handout", lesson.toString(), "--out", place, "--edition", "student", "--faded", faded
      };
      assertEquals(0, run(command), err::toString);
      String page = Files.readString(folder.resolve("out/small-student.html"));
      int asked = page.split("Which principle", -1).length - 1;
      assertEquals(faded.equals("all") ? 2 : Integer.parseInt(faded), asked);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--edition | pupil | There is no edition “pupil”. Try: worked, teacher, student, projector or all.",
        "--faded   | some  | “some” is no number of steps. Try: 0, 1, 2, … or all."
      })
  void anEditionThatThereIsNotIsOneSentence(String option, String word, String sentence)
      throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("1 + 1"));
    assertEquals(2, run("handout", lesson.toString(), option, word));
    assertEquals(sentence, err.toString().lines().findFirst().orElse(""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "not json | is not a notebook: it is not JSON (line 1).",
        "[] | is not a notebook: a notebook is a JSON object.",
        "{\"a\": 1} | is JSON but not a notebook: it does not say its nbformat.",
        "{\"nbformat\": 3, \"worksheets\": []} | is a notebook of nbformat 3; open it in JupyterLab and save it, which makes it nbformat 4.",
        "{\"nbformat\": 4, \"cells\": []} | has no cells; there is nothing to run.",
      })
  void aFileThatIsNoLessonIsOneSentence(String text, String sentence) throws IOException {
    Path file = file("odd.ipynb", text);
    for (String command : List.of("run", "handout")) {
      err.getBuffer().setLength(0);
      assertEquals(1, run(command, file.toString()));
      assertEquals("odd.ipynb " + sentence, err.toString().strip());
    }
  }

  @Test
  void aPlaceThatCannotBeWrittenIsOneSentenceAndNothingIsLeftThere() throws IOException {
    Path lesson = file("small.ipynb", NOTEBOOK.formatted("1 + 1"));
    Path notAFolder = file("taken", "an older text");
    assertEquals(1, run("handout", lesson.toString(), "--out", notAFolder.toString()));
    assertEquals(1, err.toString().strip().lines().count(), err.toString());
    assertTrue(err.toString().contains("Nothing was changed."), err.toString());
    assertEquals("an older text", Files.readString(notAFolder));
    assertEquals(2, files(folder).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"run", "handout", "check", "convert", "install", "lab", "kernel"})
  void helpOfEveryCommandShowsAnExample(String command) {
    assertEquals(0, run(command, "--help"));
    assertTrue(out.toString().contains("java -jar plainscale.jar " + command), out.toString());
  }

  @Test
  void aMisspelledCommandGetsTheNearestOne() {
    assertEquals(2, run("handuot"));
    assertTrue(err.toString().contains("handout"), err.toString());
  }

  @Test
  void aKernelWithoutItsConnectionFileIsOneLine() {
    assertEquals(1, run("kernel", folder.resolve("none.json").toString()));
  }
}
