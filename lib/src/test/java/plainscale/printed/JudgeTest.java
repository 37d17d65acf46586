package plainscale.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What counts as the printed answer, on examples made for it. */
class JudgeTest {

  private static Verdict verdict(String cell, String... answer) {
    String lines = "example one: One\nsource here\n  " + cell + "\n" + String.join("\n", answer);
    List<PrintedExample> examples = ExampleReader.read("test", lines);
    assertEquals(1, examples.size());
    List<Verdict> verdicts = Judge.verdicts(examples.get(0));
    assertEquals(1, verdicts.size());
    return verdicts.get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "26.55 [µC], 26.6 µC, PASS",
    "26.55 [µC], 26.5 µC, PASS",
    "26.55 [µC], 27 µC, PASS",
    "26.5501 [µC], 26.5 µC, FAIL",
    "26.55 [µC], 26.4 µC, FAIL",
    "26.55 [µC], 26.5 mC, FAIL",
    "3935 [N], 3.9e3 N, PASS",
    "3935 [N], 3.90e3 N, FAIL",
    "-2.5, -3, PASS",
    "30°, 30.0 °, PASS",
    "3935 [N], 3935, FAIL",
    "3935 [N], 3935 J, FAIL",
    "1/0, 1, FAIL"
  })
  void thePrintedFiguresDecide(String value, String printed, Verdict.Outcome outcome) {
    assertEquals(outcome, verdict("x = " + value, "printed x = " + printed).outcome());
  }

  @ParameterizedTest
  @CsvSource({
    "6.017 [m], 6.01 m, 6.0170 m, NOTE",
    "6.013 [m], 6.01 m, 6.0130 m, FAIL",
    "6.017 [m], 6.01 m, 6.0160 m, FAIL",
    "6.017 [m], 6.01 m, 6.02 m, FAIL"
  })
  void aNoteIsCheckedToo(String value, String printed, String recomputed, Verdict.Outcome outcome) {
    Verdict verdict =
        verdict("x = " + value, "printed x = " + printed, "note " + recomputed + ": rounded twice");
    assertEquals(outcome, verdict.outcome(), verdict::line);
  }

  @Test
  void theStandardUncertaintyMayBeAsked() {
    assertEquals(
        Verdict.Outcome.PASS, verdict("given x = 5.0 ± 0.3 cm", "printed u(x) = 3 mm").outcome());
  }

  @Test
  void aNameWithoutAValueFails() {
    Verdict verdict = verdict("x = 1", "printed y = 1");
    assertEquals(Verdict.Outcome.FAIL, verdict.outcome());
    assertEquals("has no value", verdict.remark());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "example one: One\nsource here\n  x = 1",
        "example one: One\nsource here\nprinted x = 1",
        "example one: One\n  x = 1\nprinted x = 1",
        "source here\n  x = 1\nprinted x = 1",
        "example one: One\nsource here\n  x = 1\nanswer x = 1",
        "example one: One\nsource here\n  x = 1\nprinted x = one",
        "example one: One\nsource here\n  x = 1\nnote 2: nothing printed"
      })
  void whatIsNoExampleIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> ExampleReader.read("test", text));
  }

  @Test
  void anEmptyLinePartsExamplesAndCommentsDoNot() {
    String one = "example one: One\n# a remark\nsource here\n  x = 1\nprinted x = 1\n";
    String two = one.replace("example one", "example two");
    List<PrintedExample> examples = ExampleReader.read("test", "# heading\n\n" + one + "\n" + two);
    assertEquals(List.of("one", "two"), examples.stream().map(PrintedExample::id).toList());
    assertTrue(examples.get(1).toString().startsWith("test/two"));
  }
}
