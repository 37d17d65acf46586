package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.number;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.remarks;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plainscale.algebra.Budget;

/** What happens to the other cells when one is run again. */
class DependenceTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void aMarbleRollsOffATable() {
    run(sheet, "height", "given h = 0.80 m");
    run(sheet, "speed", "given v = 1.50 m/s");
    run(sheet, "time", "t = sqrt(2*h/g_n)");
    run(sheet, "reach", "s = v t", "say \"It lands {s} away.\"");
    run(sheet, "push", "contrast s with h");
  }

  @Test
  void aChangedGivenUpdatesWhatHangsOnItInTheOrderOfTheSheet() {
    Run run = run(sheet, "height", "given h = 3.20 m");
    assertEquals(List.of("time", "reach", "push"), updated(run));
    assertEquals("0.808", number(run.updates().get(0).results()));
    assertEquals("1.21", number(run.updates().get(1).results().subList(0, 1)));
  }

  @Test
  void aChangedGivenLeavesTheRestAlone() {
    assertEquals(List.of("reach", "push"), updated(run(sheet, "speed", "given v = 1.90 m/s")));
  }

  @Test
  void anUnchangedRerunUpdatesNothing() {
    assertEquals(List.of(), updated(run(sheet, "height", "given h = 0.80 m")));
    assertEquals(List.of(), updated(run(sheet, "time", "t = sqrt(2*h/g_n)")));
  }

  @Test
  void aCellThatDefinesNothingUpdatesNothing() {
    assertEquals(List.of(), updated(run(sheet, "look", "show t in ms")));
    assertEquals(List.of(), updated(run(sheet, "look", "show s in cm")));
  }

  @Test
  void aWaveAgreesWithANewSheetWithTheChangedGiven() {
    run(sheet, "height", "given h = 1.23 m");
    Sheet fresh = new Sheet();
    run(fresh, "all", "given h = 1.23 m", "given v = 1.50 m/s", "t = sqrt(2*h/g_n)", "s = v t");
    for (String name : List.of("h", "v", "t", "s")) {
      assertEquals(Cells.value(fresh, name).value(), Cells.value(sheet, name).value());
    }
  }

  @Test
  void aMovedDefinitionSaysSoWhereItComesFromAndWhereItGoes() {
    Run run = run(sheet, "new", "given v = 2.00 m/s");
    assertEquals(
        List.of("“v” was defined in another cell; from now on this definition counts."),
        remarks(run.results()));
    assertEquals(List.of("speed", "reach", "push"), updated(run));
    assertEquals(
        List.of("“v” is defined in another cell now; this line no longer counts."),
        remarks(run.updates().get(0).results()));
    assertEquals("new", sheet.entry("v").orElseThrow().cellId());
  }

  @Test
  void aNameThatItsCellNoLongerDefinesIsGone() {
    Run run = run(sheet, "speed", "given w = 1.50 m/s");
    assertEquals(List.of("reach", "push"), updated(run));
    assertTrue(sheet.entry("v").isEmpty());
    List<Result> reach = run.updates().get(0).results();
    assertTrue(reach.stream().anyMatch(Result.Mistaken.class::isInstance), reach::toString);
  }

  @Test
  void aLineThatCannotBeReadPutsWhatLeansOnItOutOfDateAndKeepsTheOtherLines() {
    Run run = sheet.run("speed", "given v = = 7 m/s\ngiven mass = 2.0 kg");
    assertFalse(run.ok());
    assertEquals(List.of("reach", "push"), updated(run));
    assertTrue(run.updates().get(0).results().stream().anyMatch(Result.Mistaken.class::isInstance));
    assertEquals(new BigDecimal("2.0"), Cells.value(sheet, "mass").value());
  }

  @Test
  void aWrongUnitIsRepairedInPlace() {
    Run wrong = sheet.run("height", "given h = 0.80 kg");
    assertTrue(wrong.ok(), "the mistake shows where the height is used");
    for (Run.Update update : wrong.updates()) {
      assertTrue(
          update.results().stream().anyMatch(Result.Mistaken.class::isInstance), update::cellId);
    }
    Run mended = run(sheet, "height", "given h = 0.80 m");
    assertEquals("0.40", number(mended.updates().get(0).results()));
    assertEquals("0.61", number(mended.updates().get(1).results().subList(0, 1)));
  }

  @Test
  void theFirstOfTwoDefinitionsInOneCellCounts() {
    Run run = sheet.run("twice", "given a = 1.0 m\ngiven a = 2.0 m");
    assertTrue(onlyProblem(run).sentence().startsWith("“a” is defined twice in this cell"));
    assertEquals(0, BigDecimal.ONE.compareTo(Cells.value(sheet, "a").value()));
  }

  @Test
  void aLongChainIsUpdatedInOneWave() {
    List<String> expected = new ArrayList<>();
    run(sheet, "x0", "given x0 = 1.0 m");
    for (int i = 1; i <= 100; i++) {
      run(sheet, "x" + i, "x" + i + " = x" + (i - 1) + " + x0");
      expected.add("x" + i);
    }
    Run run = run(sheet, "x0", "given x0 = 2.0 m");
    assertEquals(expected, updated(run));
    assertEquals("202.0", number(run.updates().get(99).results()));
  }

  @Test
  void evaluatingAnExpressionChangesNothing() {
    Run run = sheet.evaluate("2*h", Budget.usual());
    assertEquals("1.6", number(run.results()));
    assertEquals(List.of(), updated(run(sheet, "height", "given h = 0.80 m")));
  }
}
