package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static plainscale.sheet.Cells.number;
import static plainscale.sheet.Cells.remarks;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainscale.laws.Constants;

/** Which constants a sheet computes with. */
class ConstantSetsTest {
  private final Sheet sheet = new Sheet();

  @Test
  void codataIsUsedUnlessAskedOtherwise() {
    assertSame(Constants.CODATA, sheet.constants());
    // CODATA 2022
    assertEquals("0.0000000000667430", number(run(sheet, "g", "G").results()));
  }

  @Test
  void theTextbookSetBringsItsFigures() {
    run(sheet, "set", "constants textbook");
    // College Physics 2e, Useful Information (m42720)
    assertEquals("0.0000000000667", number(run(sheet, "g", "G").results()));
    assertEquals(Optional.empty(), Cells.shown(run(sheet, "g", "G").results()).uncertainty());
  }

  @Test
  void changingTheSetUpdatesEveryCellAndBack() {
    run(sheet, "weight", "given m = 2.000 kg", "w = m g_n");
    Run textbook = run(sheet, "set", "constants textbook");
    assertEquals(List.of("weight"), updated(textbook));
    assertEquals("19.6", number(textbook.updates().get(0).results()));
    Run codata = run(sheet, "set", "constants codata");
    assertEquals("19.61", number(codata.updates().get(0).results()));
    assertEquals(List.of(), updated(run(sheet, "set", "constants codata")));
  }

  @Test
  void theLastChoiceCounts() {
    run(sheet, "one", "constants textbook");
    run(sheet, "two", "constants codata");
    assertSame(Constants.CODATA, sheet.constants());
    run(sheet, "one", "constants textbook");
    assertSame(Constants.TEXTBOOK, sheet.constants());
  }

  @Test
  void aChoiceThatIsTakenOutOfItsCellNoLongerCounts() {
    run(sheet, "one", "constants textbook");
    run(sheet, "one", "show 1");
    assertSame(Constants.CODATA, sheet.constants());
  }

  @Test
  void anOwnNameHidesAConstantAndSaysSo() {
    run(sheet, "before", "show 2*G");
    Run run = run(sheet, "own", "given G = 5.0 V");
    assertEquals(
        List.of("“G” is yours now; the constant G (constant of gravitation) is hidden."),
        remarks(run.results()));
    assertEquals(List.of("before"), updated(run));
    assertEquals("10", number(run.updates().get(0).results()));
  }
}
