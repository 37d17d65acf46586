package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules about what cells state: one lesson that breaks each, and some that nearly do. */
class StatementRulesTest {
  private static final String UNIT_REPAIR =
      "write the unit after the number, or say in the description that it is a number, a ratio or a coefficient";

  private static List<String> found(String rule, String... cells) {
    TestLesson lesson = new TestLesson();
    for (String cell : cells) {
      lesson.code(cell);
    }
    return lesson.found(rule);
  }

  @Test
  void aCellThatFailsIsAnErrorAtItsLine() {
    assertEquals(
        List.of(
            "error c1:2 I do not know “y” in this sheet. → define it first: given y = …, or y = …"),
        found("mistake", "x = 2\nz = x + y\nx"));
    assertEquals(List.of(), found("mistake", "x = 2", "z = x + 1"));
  }

  @Test
  void inATextTheLineIsThatOfTheFile() {
    TestLesson lesson = new TestLesson().asText().prose("# T\n\nWords.").code("x = 2\n1/0\nx x");
    assertEquals(List.of("error c2:16 You are dividing by zero. → "), lesson.found("mistake"));
  }

  @Test
  void repairsOfAMistakeAreHandedOn() {
    List<String> found = found("mistake", "given m = 2 g\nshow 3 m");
    assertEquals(1, found.size());
    assertTrue(found.get(0).endsWith("→ 3*m (the quantity) or 3 [m] (the unit)"), found.get(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "given f = 2.5 \"stretch of the spring\" | warning",
        "given f = 2.50 ± 0.05                  | warning",
        "given f = 2.5, 2.6, 2.4 \"stretch\"    | warning",
        "given f = 12 ± 2 \"stretch\"           | remark",
      })
  void aGivenThatLooksMeasuredNeedsAUnit(String line, String severity) {
    assertEquals(
        List.of(severity + " c1:1 The given f has no unit. → " + UNIT_REPAIR),
        found("given-unit", line));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "given f = 2.5 cm \"stretch\"",
        "given f = 12 \"drops\"",
        "given f = 8.2e9 \"people on Earth\"",
        "given f = 1.52 \"refractive index of glass\"",
        "given f = 0.30 ± 0.02 \"coefficient of friction\"",
        "given f = 2.5 % \"loss\"",
        "given f = 30.0° \"slope\"",
        "f = 2.5"
      })
  void countsRatiosAndWhatHasAUnitAreInOrder(String line) {
    assertEquals(List.of(), found("given-unit", line));
  }

  @Test
  void aGivenIsDescribed() {
    assertEquals(
        List.of(
            "remark c1:2 Nothing says what the given s is. → write it in quotation marks at the end of the line"),
        found("given-description", "given m = 2 g \"mass\"\ngiven s = 3 m\nw = m g_n"));
  }

  @Test
  void aGivenThatNothingUsesIsTold() {
    assertEquals(
        List.of(
            "warning c1:2 Nothing uses the given r. → use it, or take its line out",
            "warning c1:3 Nothing uses the given t. → use it, or take its line out"),
        found(
            "unused-given",
            "given m = 2 g\ngiven r = 2, 3 cm\ngiven t = 2, 3 s\ntogether r, t\nw = m g_n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "w = r g_n",
        "relation a: F = r g_n",
        "say \"It is {r}.\"",
        "show r in cm",
        "contrast r with 3 m",
        "what if r = 2*r",
        "w = r +",
        "\"an open text r"
      })
  void aGivenIsUsedByAnyLineThatNamesItEvenIfThatCannotBeRead(String line) {
    assertEquals(List.of(), found("unused-given", "given r = 2 cm", line));
  }

  @Test
  void aResultToWhichNothingRefersIsTold() {
    assertEquals(
        List.of(
            "warning c2:2 Nothing refers to w after it is found. → say {w} in a sentence, set it against another number, or take the line out",
            "warning c3:1 Nothing refers to F after it is found. → say {F} in a sentence, set it against another number, or take the line out"),
        found(
            "unused-result",
            "given m = 2 g\nrelation a: F = 2*m g_n",
            "v = 3 m/s\nw = m g_n\nshow v",
            "solve a for F"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "F = 2*w",
        "contrast w with 3 N",
        "say \"It weighs {w}.\"",
        "show w in mN",
        "ruler w with 3 N",
        "what if m = 2*m show w",
        "what if m = 2*m",
        "vary m from 1 g to 3 g show w",
        "relation b: 2*w = K",
        "say \"{w"
      })
  void aResultIsUsedByAnyLineThatNamesIt(String line) {
    List<String> found = found("unused-result", "given m = 2 g\nw = m g_n", line);
    assertEquals(List.of(), found.stream().filter(f -> f.contains(" w ")).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Compare `w` with yours.",
        "Compare *w* with yours.",
        "Compare $w = 3$ with yours.",
        "Is the weight\nof the ball plausible?",
        "| name | value |\n| --- | --- |\n| weight of the balls | look above |"
      })
  void aTextRefersByTheNameOrByItsDescription(String prose) {
    TestLesson lesson =
        new TestLesson().code("given m = 2 g\nw = m g_n \"weight of a ball\"").prose(prose);
    assertEquals(List.of(), lesson.found("unused-result"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"A ball has a weight? No: w is no word.", "Weight matters.", "[w](w)"})
  void aSingleLetterInPlainWordsOrHalfOfADescriptionRefersToNothing(String prose) {
    TestLesson lesson =
        new TestLesson().code("given m = 2 g\nw = m g_n \"weight of a hanging ball\"").prose(prose);
    assertEquals(1, lesson.found("unused-result").size());
  }

  @Test
  void aGreekLetterIsAReferenceWhereverItStands() {
    TestLesson lesson = new TestLesson().code("θ = 30°").prose("Is θ small?");
    assertEquals(List.of(), lesson.found("unused-result"));
  }

  @Test
  void theLawFromWhichAResultIsDerivedDoesNotUseIt() {
    String law = "given r = 0.14 m\ngiven q = 67 nC\nuse coulomb with q_1 = q, q_2 = q";
    String solve = "solve coulomb for F";
    assertEquals(1, found("unused-result", law, solve).size());
    assertEquals(List.of(), found("unused-result", law, solve, "say \"{F}\""));
    assertEquals(List.of(), found("unused-given", law, solve));
  }

  @Test
  void anApproximationShowsByItselfHowFarItMisses() {
    String relations =
        "given m = 2 g\ngiven F = 1 mN\nrelation a: m g_n = T cos(θ)\nrelation b: F = T sin(θ)";
    assertEquals(List.of(), found("unused-result", relations, "solve a, b for θ with small θ"));
  }

  @Test
  void twoQuantitiesWithTheSameDescriptionAreTold() {
    assertEquals(
        List.of("warning c2:1 “Mass  of a ball” describes m and M. → say in words how they differ"),
        found(
            "same-description",
            "given m = 2 g \"mass of a ball\"\ngiven s = 2 m",
            "M = 3*m \"Mass  of a ball\"\nw = m g_n"));
    assertEquals(
        List.of(),
        found(
            "same-description",
            "given m = 2 g \"mass of a ball\"",
            "M = 3*m \"mass of three balls\"",
            "given m = 3 g \"mass of a ball\""));
  }

  @Test
  void aPictureWithoutANumberIsRemarkedWhereOthersHaveOne() {
    String forces = "forces on \"ball\": weight 3 N down by \"Earth\"";
    String numbered = forces.replace("ball", "other") + "\nfigure one \"The other\"";
    assertEquals(
        List.of(
            "remark c1:2 Other pictures of the lesson have a number and a caption, and this one has none. → write figure, a name and a caption in quotation marks on the line after it"),
        found("figure", "x = 2\n" + forces + "\nruler 1 m with 3 m", numbered));
    assertEquals(List.of(), found("figure", forces, "ruler 1 m with 3 m"));
    assertEquals(List.of(), found("figure", numbered, "contrast 2 with 3\nnear 3 m"));
  }

  @Test
  void aValueThatIsNotExpectedOrCannotBeIsTold() {
    List<String> found =
        found(
            "implausible",
            "given m = 2.70 g \"mass of a ball\"\nexpect m between 1 kg and 2 kg",
            "given v = 4e8 m/s \"speed\"",
            "w = m g_n\nexpect w between 20 mN and 30 mN");
    assertEquals(2, found.size(), found.toString());
    assertTrue(found.get(0).startsWith("warning c1:1 Unexpected: m = 2.70 g should lie between"));
    assertTrue(found.get(1).startsWith("warning c2:1 Cannot be: v = "), found.get(1));
  }

  @Test
  void aLineWithBlanksIsNotHeldToWhatIsToBeFilledIn() {
    String cell = "given m = ? g \"mass\"\ngiven f = ? \"stretch\"\nF = ?\nw = m f g_n";
    for (String rule : List.of("given-unit", "unused-given", "mistake", "implausible")) {
      assertEquals(List.of(), found(rule, cell, "say \"It is {w}.\""), rule);
    }
    assertEquals(List.of(), found("unused-result", cell, "say \"It is {w}.\""));
  }
}
