package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers typed into texts. The sheet has the weight of 2.70 g, 0.0265 N, and a number of
 * electrons, 4.19 × 10¹¹: 67.1 nC over 1.602 × 10⁻¹⁹ C.
 */
class TypedNumbersTest {
  private static final String SHEET =
      "given m = 2.70 ± 0.05 g\ngiven q = 67.1 nC\ngiven d = 3 m\nw = m g_n\nn = q/e\nk = 7*5";

  private static TestLesson lesson(String prose) {
    return new TestLesson().prose(prose).code(SHEET);
  }

  private static String computed(String number, String name) {
    return "warning c1:1 %s stands in the text and is also computed as %s. → put {%s} into a say line of a cell, so that it follows the givens"
        .formatted(number, name, name);
  }

  private static String given(String number, String name) {
    return "remark c1:1 %s stands in the text and is also the given %s. → put {%s} into a say line of a cell, so that it follows the measurement"
        .formatted(number, name, name);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "The ball weighs 0.0265 N.                | 0.0265 N        | w",
        "The ball weighs 0.026 N.                 | 0.026 N         | w",
        "The ball weighs 26.5 mN, not more.       | 26.5 mN         | w",
        "The ball weighs (26.5 ± 0.5) mN.         | (26.5 ± 0.5) mN | w",
        "The ball weighs 26.5(5) mN.              | 26.5(5) mN      | w",
        "It is 2.65 × 10⁻² N.                     | 2.65 × 10⁻² N   | w",
        "It is 2.65e-2 N here.                    | 2.65e-2 N       | w",
        "It is 2.65*10^-2 kg m/s^2 here.          | 2.65*10^-2 kg m/s^2 | w",
        "It is $2.65\\times10^{-2}\\,\\text{N}$.  | 2.65×10^-2 N    | w",
        "It is **0.0265** N.                      | 0.0265 N        | w",
        "It is 26.5 millinewtons.                 | 26.5 millinewtons | w",
        "In newtons it is 0.0265.                 | 0.0265          | w",
        "These are 419 000 000 000 electrons.     | 419 000 000 000 | n",
        "These are 419,000,000,000 electrons.     | 419,000,000,000 | n",
        "These are 4.19 × 10¹¹ electrons.         | 4.19 × 10¹¹     | n",
        "These are 4.2e11 electrons.              | 4.2e11          | n",
        "These are 419 billion electrons.         | 419 billion     | n",
        "These are 420 billion electrons.         | 420 billion     | n",
      })
  void aComputedNumberIsKnownInEverySpelling(String prose, String number, String name) {
    assertEquals(List.of(computed(number, name)), lesson(prose).found("typed-number"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "The mass is 2.70 g.                   | 2.70 g                     | m",
        "The mass is 2.7 g.                    | 2.7 g                      | m",
        "The mass is 0.0027 kg.                | 0.0027 kg                  | m",
        "It has 67.1 billionths of a coulomb.  | 67.1 billionths of a coulomb | q",
      })
  void aGivenIsARemark(String prose, String number, String name) {
    assertEquals(List.of(given(number, name)), lesson(prose).found("typed-number"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "It weighs 27.5 mN.",
        "It weighs 26.5 mg.",
        "It weighs 0.0265 kN.",
        "It weighs `26.5 mN`.",
        "It weighs [26.5 mN](https://example.org/26.5).",
        "![26.5 mN](a.png)",
        "    26.5 mN",
        "```\n26.5 mN\n```",
        "See figure 0.0265 and section 4.19e11.",
        "Version 0.0265.1, 0.0265/3, 10:0.0265.",
        "It is 3 m long and has 35 parts.",
        "It is 0.03 N or 400 billion.",
        "x0.0265 and a-0.0265",
        "419 million",
        "1. First\n2. Second",
      })
  void otherNumbersAndWhatIsNoTextAreLeftAlone(String prose) {
    assertEquals(List.of(), lesson(prose).found("typed-number"));
  }

  @Test
  void yearsAreNoCounts() {
    TestLesson lesson =
        new TestLesson().prose("Known since 1923, or 1 923 turns.").code("n = 1923*1");
    assertEquals(
        List.of(
            "warning c1:1 1 923 stands in the text and is also computed as n. → put {n} into a say line of a cell, so that it follows the givens"),
        lesson.found("typed-number"));
  }

  @Test
  void theLineIsThatOfTheNumber() {
    TestLesson lesson =
        new TestLesson()
            .asText()
            .prose("# T\n\nThe ball weighs\nmuch: 26.5\nmN.\n\n| w |\n| --- |\n| 26.5 mN |")
            .code(SHEET);
    List<Integer> lines =
        lesson.findings().stream()
            .filter(finding -> finding.rule().equals("typed-number"))
            .map(Finding::line)
            .toList();
    assertEquals(List.of(13, 18), lines);
  }

  @Test
  void theWordsOfASayAreTextToo() {
    TestLesson lesson =
        new TestLesson()
            .code(SHEET)
            .code("say \"For {n} electrons it weighs 26.5 mN.\"\nsay \"It weighs {w in mN}.\"");
    assertEquals(
        List.of(
            "warning c2:1 26.5 mN stands in the text and is also computed as w. → put {w} into a say line of a cell, so that it follows the givens"),
        lesson.found("typed-number"));
  }

  @Test
  void numbersWithoutANameAreKnownToo() {
    TestLesson lesson =
        new TestLesson()
            .prose("The ratio is 1.94 trillion, twice of 53.0 mN and 35.3 mN.")
            .code("given m = 2.70 g\nw = m g_n\na = 4.19e11\nb = 8.13e23\ncontrast a with b")
            .code("what if m = 2*m show w\nvary m from 3.60 g to 4.00 g by 0.20 g show w");
    assertEquals(
        List.of(
            computed("1.94 trillion", "b/a"),
            "warning c1:1 53.0 mN stands in the text and is also computed. → leave it to the cell that shows it",
            "warning c1:1 35.3 mN stands in the text and is also computed. → leave it to the cell that shows it"),
        lesson.found("typed-number"));
  }

  @Test
  void numbersAreReadAsTheLessonWritesThem() {
    TestLesson lesson =
        new TestLesson()
            .prose("Der Ball wiegt 26,5 mN; das sind 419 Milliarden oder 419.000.000.000.")
            .code("locale de-DE\n" + SHEET);
    assertEquals(
        List.of(
            computed("26,5 mN", "w"),
            computed("419 Milliarden", "n"),
            computed("419.000.000.000", "n")),
        lesson.found("typed-number"));
  }

  @Test
  void hostileNumbersAreRead() {
    String digits = "9".repeat(5000);
    TestLesson lesson =
        lesson(digits + " 1e999 N 1.5e-999 N " + "0.0265 ".repeat(2000) + "(((26.4 ± ± mN");
    assertEquals(2000, lesson.found("typed-number").size());
  }
}
