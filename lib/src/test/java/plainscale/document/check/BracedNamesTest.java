package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BracedNamesTest {
  private static List<String> found(String prose) {
    return new TestLesson().prose(prose).code("given F = 3.0 N \"pull\"").found("braces");
  }

  @Test
  void aLiveValueInProseIsToldWithTheSentenceThatWouldCompute() {
    assertEquals(
        List.of(
            "warning c1:2 {F in words} stands in a text, which shows it as it is written; only cells compute. → a line in a cell: say \"… {F in words} …\""),
        found("The pull\nis {F in words}."));
  }

  @Test
  void otherBracesAreLeftAlone() {
    assertEquals(
        List.of(), found("A set {a, b}, code `{F}`, a formula $\\frac{F}{2}$, {unknown}."));
  }
}
