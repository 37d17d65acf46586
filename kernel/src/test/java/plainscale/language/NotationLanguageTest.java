package plainscale.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotationLanguageTest {
  private final NotationLanguage language = new NotationLanguage();
  private final ShownOutputs outputs = new ShownOutputs();

  private Outcome run(String id, String source) {
    return language.execute(new Cell(source, Optional.of(id), false), outputs, Input.none());
  }

  private MimeBundle bundle(String id) {
    return Objects.requireNonNull(outputs.displays.get("plainscale-" + id), id);
  }

  private String shown(String id) {
    return ShownOutputs.text(bundle(id));
  }

  @Test
  void everyBundleHasPlainTextAndHtmlAndTexWhereThereIsMathematics() {
    run("a", "given m = 2.70 g \"mass\"\nw = m g_n");
    MimeBundle bundle = bundle("a");
    assertEquals(
        List.of("text/html", "text/latex", "text/plain"), List.copyOf(bundle.data().keySet()));
    run("b", "say \"no mathematics\"");
    assertFalse(bundle("b").data().containsKey("text/latex"));
  }

  @Test
  void aChangedGivenUpdatesEveryCellThatHangsOnItInPlace() {
    run("a", "given m = 2.00 kg");
    run("b", "w = 2*m");
    run("c", "say \"nothing to do with it\"");
    run("a", "given m = 3.00 kg");
    assertEquals(List.of("plainscale-b"), outputs.updated);
    assertEquals("w = 2*m = 6.00 kg", shown("b"));
  }

  @Test
  void whatCannotBeUpdatedSaysThatItIsOutOfDate() {
    run("a", "given t = 2.0 s");
    run("b", "f = 1/t");
    run("a", "given t = 0.0 s");
    assertTrue(shown("b").startsWith("Note: Out of date"), shown("b"));
    assertTrue(shown("b").contains("dividing by zero"), shown("b"));
  }

  @Test
  void aBlankIsNoMistakeAndWhatHangsOnItIsUpdatedWhenItIsFilledIn() {
    assertInstanceOf(Outcome.Ok.class, run("a", "given m = ? kg"));
    assertInstanceOf(Outcome.Ok.class, run("b", "w = 2*m"));
    assertEquals("m is still blank: put your value in place of the ? (in kg).", shown("a"));
    assertEquals("w waits for m, which is still blank.", shown("b"));
    run("a", "given m = 3.00 kg");
    assertEquals(List.of("plainscale-b"), outputs.updated);
    assertEquals("w = 2*m = 6.00 kg", shown("b"));
    run("a", "given m = ? kg");
    assertEquals("w waits for m, which is still blank.", shown("b"));
    assertInstanceOf(Outcome.Ok.class, language.evaluate("m in kg", outputs));
  }

  @Test
  void aMistakeIsOneFailureWithSentencePlaceAndRepairAndTheRestIsShown() {
    Outcome outcome = run("a", "given m = 2.70 g\nx = m + n");
    Outcome.Failed failed = assertInstanceOf(Outcome.Failed.class, outcome);
    assertEquals("NameProblem", failed.name());
    assertEquals("I do not know “n” in this sheet.", failed.message());
    assertEquals("  line 2: x = m + n", failed.lines().get(1));
    assertEquals("m = 2.70 g", shown("a"));
  }

  @Test
  void aUserExpressionIsEvaluatedWithoutChangingTheSheet() {
    run("a", "given m = 2.70 g");
    assertInstanceOf(Outcome.Ok.class, language.evaluate("m in kg", outputs));
    assertInstanceOf(Outcome.Failed.class, language.evaluate("m = 3 g", outputs));
    run("b", "show m");
    assertEquals("m = 2.70 g", shown("b"));
  }

  @Test
  void anInterruptStopsARunningCellAndTheNextOneRuns() throws InterruptedException {
    StringBuilder slow = new StringBuilder("x_0 = 1.5 [m]\n");
    for (int i = 1; i < 400; i++) {
      slow.append("x_%d = %s\n".formatted(i, "+x_0".repeat(15).substring(1)));
    }
    Thread impatient =
        new Thread(
            () -> {
              for (int i = 0; i < 2000; i++) {
                language.interrupt();
                Thread.onSpinWait();
              }
            });
    impatient.start();
    run("slow", slow.toString());
    impatient.join();
    assertInstanceOf(Outcome.Ok.class, run("next", "1 + 1"));
    assertEquals("2", ShownOutputs.text(outputs.results.get(0)));
  }

  @ParameterizedTest
  @CsvSource({
    "'\\theta', θ",
    "'\\Delta', Δ",
    "'givne', ''",
    "'contr', contrast",
    "'comp', compare",
    "'pai', pairs",
    "'reli', relief",
    "'field f: charge q at (0 cm, 0 cm), pla', plates",
    "'forces on ball: weight w do', down",
    "'caution ', electrostatics",
    "'caution la', lasers",
    "'caution lasers, lat', latex",
    "'expect q ', between",
    "'expect q abou', about",
    "'expect q below 3 nC withi', within",
    "'w = N_', N_A",
    "'w = sq', sqrt",
    "'given x = 3 m', m",
    "'given x = ? k', kg",
    "'given x = ? ± ? cm', cm",
    "'show w in m', m",
    "'x = 3 [k', kg",
  })
  void completionKnowsLettersWordsNamesAndUnits(String code, String first) {
    Completion completion = language.complete(code, code.length());
    String found = completion.items().isEmpty() ? "" : completion.items().get(0).text();
    assertEquals(first, found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "use pen | 4 | pendulum",
        "use \"how long does it sw | 4 | pendulum",
        "use force between ch | 4 | coulomb",
        "x = 1 [m]\\n use lens | 15 | thin_lens",
        "use pendulum~ | 13 | with",
        "use coulomb with~ | 17 | F = ",
        "use coulomb as push with F = F_e,~ | 34 | q_1 = ",
        "use coulomb with F = 1, q1 = 2,~ | 32 | q_2 = ",
        "use coulomb with q_ | 17 | q_1 = ",
        "use lens_power with P = q_x, f = f | 33 | ft",
      })
  void completionKnowsLawsByNameByWordsAndTheirSymbols(String cell, int start, String first) {
    String code = cell.replace("\\n", "\n").replace('~', ' ');
    Completion completion = language.complete(code, code.length());
    assertEquals(first.strip(), completion.items().get(0).text().strip());
    assertEquals(start, completion.start());
    assertEquals(code.length(), completion.end());
  }

  @ParameterizedTest
  @CsvSource({
    "use pendulum, 6, 'T = 2*π sqrt(l/g_n)'",
    "use pendulum, 6, 'l: length, from the pivot'",
    "use pendulum, 6, 'Holds for small swings'",
    "use pendulum, 6, 'm58364'",
    "use coulomb with q1 = q, 18, 'first charge, in C'",
    "use ohm, 5, 'R_1: resistance, in Ω'",
    "solve push for q, 8, 'F = k_e q^2/r^2'",
    "solve push for q, 8, 'between charges'",
    "use lens, 6, 'thin_lens: Thin-lens equation, 1/f = 1/d_o + 1/d_i'",
    "'use \"how long does it swing\"', 12, 'pendulum: Simple pendulum'",
  })
  void inspectionOfALawSaysAllThatIsKnownOfIt(String code, int cursor, String part) {
    run("a", "use coulomb as push with q_1 = q, q_2 = q \"force between charges\"");
    String text = language.inspect(code, cursor, 0).map(ShownOutputs::text).orElse("nothing");
    assertTrue(text.contains(part), text);
  }

  @Test
  void completionReplacesTheWordAndTheBackslash() {
    Completion completion = language.complete("q = \\theta", 10);
    assertEquals(4, completion.start());
    assertEquals(10, completion.end());
  }

  @Test
  void completionOffersTheSheetsOwnNamesFirst() {
    run("a", "given mass_1 = 2.70 g\nmass_2 = mass_1");
    List<Completion.Item> items = language.complete("x = ma", 6).items();
    assertEquals(new Completion.Item("mass_1", "given"), items.get(0));
    assertEquals(new Completion.Item("mass_2", "definition"), items.get(1));
  }

  @Test
  void completionTellsABlankNameFromOthers() {
    run("a", "given mass_1 = ? g");
    List<Completion.Item> items = language.complete("x = ma", 6).items();
    assertEquals(new Completion.Item("mass_1", "blank"), items.get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "given m = ? g, 10, 'still to be filled in'",
    "given m = ? g, 11, 'still to be filled in'",
    "m_1, 1, 'm_1: still blank'",
    "m_1, 1, 'mass of a ball'",
    "m_1, 1, 'given m_1 = ? g'",
    "F, 1, 'no value yet'",
  })
  void inspectionSaysWhatIsStillBlank(String code, int cursor, String part) {
    run("a", "given m_1 = ? g \"mass of a ball\"\nF = m_1 g_n");
    String text = language.inspect(code, cursor, 0).map(ShownOutputs::text).orElse("nothing");
    assertTrue(text.contains(part), text);
  }

  @ParameterizedTest
  @CsvSource({
    "k_e, 'constant of Coulomb'",
    "kg, kilogram",
    "sqrt, 'any quantity'",
    "contrast, 'Example: contrast'",
    "pairs, 'action and reaction'",
    "along, anticlockwise",
    "release, 'with its energies'",
    "across, 'seen from the side'",
    "expect, 'from which it probably comes'",
    "latex, 'allergic to natural rubber'",
    "latex, 'licensed to decide'",
    "forces, 'whether they balance'",
    "inch, '1 inch = 0.0254 m'",
    "m, 'mass of a ball'",
    "theta, 'no value'",
    "c, '(exact)'",
  })
  void inspectionSaysWhatAWordIs(String word, String part) {
    run("a", "given m = 2.70 g \"mass of a ball\"\nθ = asin(2)");
    String text = language.inspect(word, 1, 0).map(ShownOutputs::text).orElse("nothing");
    assertTrue(text.contains(part), text);
  }

  @Test
  void inspectionOfAValueThatCannotBeShownSaysWhy() {
    run("a", "x = sqrt(2 [m])");
    String text = language.inspect("x", 1, 0).map(ShownOutputs::text).orElse("nothing");
    assertTrue(text.contains("the root of a unit"), text);
  }

  @Test
  void inspectionOfNothingIsEmpty() {
    assertTrue(language.inspect("2 + 2", 2, 0).isEmpty());
    assertTrue(language.inspect("unheard_of", 3, 0).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 + 1",
        "given m = 3 g",
        "given m = ? g",
        "F = ?",
        "relation r: ?",
        "",
        "say \"a (\"",
        "x = 3 # and (",
        "x = 1\ny = 2"
      })
  void aWholeCellIsComplete(String code) {
    assertEquals(Completeness.Status.COMPLETE, language.completeness(code).status());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x = (1 + 2",
        "x =",
        "x = 3 *",
        "contrast 2 with",
        "given m =",
        "forces on ball:",
        "field pair:"
      })
  void anOpenBracketOrAnOperatorAtTheEndAsksForMore(String code) {
    assertEquals(
        new Completeness(Completeness.Status.INCOMPLETE, "  "), language.completeness(code));
  }

  @ParameterizedTest
  @ValueSource(strings = {"x = 1 + 2)", "given = 3 g", "2 3", "say \"open"})
  void aMistakeIsInvalid(String code) {
    assertEquals(Completeness.Status.INVALID, language.completeness(code).status());
  }
}
