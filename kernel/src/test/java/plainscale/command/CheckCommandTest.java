package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.document.check.Finding;
import plainscale.document.check.Severity;

class CheckCommandTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String NOTEBOOK =
      """
      {"nbformat": 4, "nbformat_minor": 5, "metadata": %s, "cells": [
        {"cell_type": "markdown", "id": "a", "metadata": {}, "source": "# A small lesson"},
        {"cell_type": "code", "id": "b", "metadata": {}, "outputs": [], "execution_count": null, "source": "%s"}]}
      """;
  private static final String IN_ORDER = "given m = 2.70 g \\\"mass\\\"\\nsay \\\"It is {m}.\\\"";
  private static final String UNUSED = "given m = 2.70 g \\\"mass\\\"";
  private static final String FAILING = "1 + 1\\n1/0";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int check(String... arguments) {
    List<String> all = new ArrayList<>(List.of("check"));
    all.addAll(List.of(arguments));
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), all.toArray(String[]::new));
  }

  private String lesson(String name, String source) throws IOException {
    return file(name, NOTEBOOK.formatted("{}", source));
  }

  private String file(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text).toString();
  }

  private List<String> lines() {
    return out.toString().lines().toList();
  }

  @Test
  void aLessonInOrderIsOneLine() throws IOException {
    assertEquals(0, check(lesson("a.ipynb", IN_ORDER), "--strict"));
    assertEquals(List.of("1 lesson checked: nothing to mend."), lines());
    assertEquals("", err.toString());
  }

  @Test
  void eachFindingIsALineWithItsPlaceAndItsRule() throws IOException {
    String file = lesson("a.ipynb", FAILING);
    assertEquals(1, check(file));
    assertEquals(
        List.of(
            file + ", cell b, line 2: error: You are dividing by zero. [mistake]",
            "1 lesson checked: 1 error."),
        lines());
  }

  @Test
  void warningsCountOnlyWhereThatIsAskedFor() throws IOException {
    String file = lesson("a.ipynb", UNUSED);
    assertEquals(0, check(file));
    assertEquals(
        List.of(
            file
                + ", cell b, line 1: warning: Nothing uses the given m. Try: use it, or take its line out [unused-given]",
            "1 lesson checked: 1 warning."),
        lines());
    assertEquals(1, check(file, "--strict"));
  }

  @Test
  void remarksNeverCount() throws IOException {
    String file =
        file("a.ipynb", NOTEBOOK.formatted("{\"plainscale\": {\"titel\": \"T\"}}", IN_ORDER));
    assertEquals(0, check(file, "--strict"));
    assertEquals(
        List.of(
            file
                + ": remark: I know no field “titel” of a lesson; did you mean title? It is kept and means nothing. Try: write title [metadata]",
            "1 lesson checked: 1 remark."),
        lines());
  }

  @Test
  void jsonIsOneArrayAndNothingElse() throws IOException {
    String failing = lesson("a.ipynb", FAILING);
    String head = file("b.ipynb", NOTEBOOK.formatted("{\"plainscale\": 3}", "1 + 1"));
    assertEquals(1, check("--json", failing, head));
    JsonNode findings = JSON.readTree(out.toString());
    assertEquals(
        "[{\"file\":\"%s\",\"line\":2,\"cell\":\"b\",\"rule\":\"mistake\",\"severity\":\"error\",\"sentence\":\"You are dividing by zero.\",\"repair\":null},"
                .formatted(failing)
            + "{\"file\":\"%s\",\"line\":null,\"cell\":null,\"rule\":\"metadata\",\"severity\":\"error\",\"sentence\":\"plainscale is 3, a number; named fields belong there.\",\"repair\":null}]"
                .formatted(head),
        findings.toString());
    assertEquals("", err.toString());
  }

  @Test
  void jsonOfLessonsInOrderIsAnEmptyArray() throws IOException {
    assertEquals(0, check("--json", lesson("a.ipynb", IN_ORDER)));
    assertEquals(0, JSON.readTree(out.toString()).size());
    assertTrue(JSON.readTree(out.toString()).isArray());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''       | odd.ipynb is not a notebook: a notebook is a JSON object.",
        "not json | odd.ipynb is not a notebook: it is not JSON (line 1).",
        "{\"nbformat\": 4, \"metadata\": {\"kernelspec\": {\"language\": \"python\"}}} | odd.ipynb is written in python, not in Plainscale's notation.",
      })
  void aFileThatIsNoLessonIsASentenceAndTheOthersAreChecked(String text, String sentence)
      throws IOException {
    String odd = file("odd.ipynb", text);
    String good = lesson("z.ipynb", FAILING);
    assertEquals(2, check(odd, good));
    assertEquals(sentence, err.toString().strip());
    assertEquals("1 lesson checked: 1 error; 1 file could not be read.", lines().get(1));
    out.getBuffer().setLength(0);
    assertEquals(2, check("--json", odd, good));
    JsonNode findings = JSON.readTree(out.toString());
    assertEquals("file", findings.at("/0/rule").asText());
    assertEquals(sentence, findings.at("/0/sentence").asText());
    assertEquals("mistake", findings.at("/1/rule").asText());
  }

  @Test
  void whereNothingCouldBeReadNothingWasChecked() throws IOException {
    assertEquals(2, check(file("odd.ipynb", "{}")));
    assertEquals(List.of("No lesson checked; 1 file could not be read."), lines());
  }

  @Test
  void aMissingFileAndAWrongOptionAreUsage() {
    Path missing = folder.resolve("none.ipynb");
    assertEquals(2, check(missing.toString()));
    assertEquals("There is no file " + missing + ".", err.toString().strip());
    assertEquals(2, check("--jsn"));
  }

  @Test
  void aFolderMeansTheLessonsInItAndInItsFolders() throws IOException {
    String first = lesson("a.ipynb", FAILING);
    String second = lesson("more/b.ipynb", FAILING);
    lesson(".ipynb_checkpoints/c.ipynb", FAILING);
    lesson("more/.d.ipynb", FAILING);
    file("notes.txt", "no lesson");
    assertEquals(1, check(folder.toString()));
    assertEquals(
        List.of(
            first + ", cell b, line 2: error: You are dividing by zero. [mistake]",
            second + ", cell b, line 2: error: You are dividing by zero. [mistake]",
            "2 lessons checked: 2 errors."),
        lines());
  }

  @Test
  void aFolderWithoutLessonsIsASentence() throws IOException {
    file("notes.txt", "no lesson");
    assertEquals(2, check(folder.toString()));
    assertEquals(
        "There is no lesson in the folder "
            + folder
            + ": no notebook (.ipynb), and no text (.md) with a head.",
        err.toString().strip());
  }

  @Test
  void withoutAFileTheLessonsThatShipAreChecked() {
    assertEquals(0, check());
    String summary = lines().get(lines().size() - 1);
    assertTrue(summary.matches("\\d+ lessons checked: .*"), summary);
  }

  @Test
  void ofTenThousandFindingsAHundredArePrintedAndAllAreInTheJson() throws IOException {
    String aims = String.join(",", Collections.nCopies(10_000, "0"));
    String head = "{\"plainscale\": {\"aims\": [" + aims + "]}}";
    String file = file("a.ipynb", NOTEBOOK.formatted(head, IN_ORDER));
    assertEquals(1, check(file));
    assertEquals(102, lines().size());
    assertEquals(file + ": 9900 more; mend these first.", lines().get(100));
    assertEquals("1 lesson checked: 10000 errors.", lines().get(101));
    out.getBuffer().setLength(0);
    assertEquals(1, check(file, "--json"));
    assertEquals(10_000, JSON.readTree(out.toString()).size());
  }

  @Test
  void inATextAnEditorJumpsToTheLine() {
    Finding line = new Finding("mistake", Severity.ERROR, "givens", 41, "It fails.", "mend it");
    Finding whole = new Finding("title", Severity.REMARK, "", 0, "It is odd.", "");
    assertEquals(
        List.of(
            "two-balls.md:41: error: It fails. Try: mend it [mistake]",
            "two-balls.md: remark: It is odd. [title]"),
        CheckReport.lines(new CheckedFile("two-balls.md", true, List.of(line, whole))));
  }

  @Test
  void aTextIsCheckedByTheLinesOfItsFile() throws IOException {
    String text =
        """
        ---
        plainscale: 1
        minutes: long
        ---

        # Balls

        They weigh 26.5 mN.

        ```plainscale givens role: measurement, minuts: 5
        given m = 2.70 g "mass"
        w = m g_n
        ```
        """;
    String file = file("balls.md", text);
    assertEquals(1, check(file));
    assertEquals(
        List.of(
            file
                + ":1: error: minutes is \"long\", a text; a whole number belongs there. Try: write, for example, minutes: 45 [metadata]",
            file
                + ":8: warning: 26.5 mN stands in the text and is also computed as w. Try: put {w} into a say line of a cell, so that it follows the givens [typed-number]",
            file
                + ":10: remark: Line 10: a cell says nothing as “minuts”; did you mean minutes? [reader]",
            file
                + ":12: warning: Nothing refers to w after it is found. Try: say {w} in a sentence, set it against another number, or take the line out [unused-result]",
            "1 lesson checked: 1 error, 2 warnings, 1 remark."),
        lines());
  }

  @Test
  void aFindingIsOneLineThatATerminalCanShow() {
    Finding finding = new Finding("title", Severity.ERROR, "", 0, "A\nB \u001b[2J.", "");
    assertEquals(
        List.of("a.ipynb: error: A B \uFFFD[2J. [title]"),
        CheckReport.lines(new CheckedFile("a.ipynb", false, List.of(finding))));
  }

  @Test
  void theCommandLineIsSilentOnStandardError() throws Exception {
    String file = lesson("a.ipynb", UNUSED);
    Path errors = folder.resolve("err.txt");
    Process process =
        java("plainscale.command.Main", "check", file).redirectError(errors.toFile()).start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor());
    assertTrue(printed.endsWith("1 lesson checked: 1 warning." + System.lineSeparator()), printed);
    assertEquals("", Files.readString(errors));
  }

  @Test
  void aKernelOfTheNotationLoadsNothingOfTheCheckAndNothingOfJavaCells() throws Exception {
    Path classes = folder.resolve("classes.txt");
    Process process =
        java("-Xlog:class+load:file=" + classes, "plainscale.command.Main", WarmUpCommand.NAME)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    process.waitFor();
    String loaded = Files.readString(classes);
    assertTrue(loaded.contains(" plainscale.session.KernelServer "), "the kernel has started");
    assertTrue(loaded.contains(" plainscale.sheet.Presenter "), "a cell was run");
    for (String part : NOT_OF_THE_KERNEL) {
      assertFalse(loaded.contains(" " + part), part);
    }
  }

  private static final List<String> NOT_OF_THE_KERNEL =
      List.of(
          "com.networknt.",
          "org.slf4j.",
          "plainscale.document.check.",
          "jdk.jshell.",
          "com.sun.jdi.",
          "plainscale.language.java.",
          "plainscale.api.");

  private static ProcessBuilder java(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    return builder;
  }
}
