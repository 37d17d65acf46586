package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.sheet.Cells.number;
import static plainscale.sheet.Cells.run;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Two balls of 5.0 g on threads of 50 cm, each 5.0° from the vertical; asked is the charge of each.
 * University Physics volume 2, chapter 5, m58415 #fs-id1172101729667, which prints T = 0.049 N, F =
 * 0.0043 N, d = 0.088 m and, from these rounded numbers, 6.1e-8 C.
 */
class HangingBallsTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void asPrinted() {
    run(
        sheet,
        "balls",
        "constants textbook",
        "given m = 5.0 g",
        "given L = 50 cm",
        "given θ = 5.0°",
        "T = m g_n/cos(θ)",
        "F = T sin(θ)",
        "d = 2*L sin(θ)",
        "q = d sqrt(F/k_e)");
  }

  private String shown(String what) {
    return number(run(sheet, "look", "show " + what).results());
  }

  @Test
  void theForcesAreAsPrinted() {
    assertEquals("0.049", shown("T in N"));
    assertEquals("0.0043", shown("F in N"));
  }

  @Test
  void theDistanceIsRoundedOnceWhereTheBookRoundedTwice() {
    assertEquals("0.087", shown("d in m"));
    assertEquals("0.0872", shown("d in m to 3 figures"));
  }

  @Test
  void theChargeIsComputedFromUnroundedSteps() {
    assertEquals("60", shown("q in nC")); // 6.0e-8 C to two figures
    assertEquals("60.185", shown("q in nC to 5 figures"));
  }

  @Test
  void thePrintedChargeFollowsFromThePrintedSteps() {
    String fromPrinted = "show 0.088 [m] * sqrt(0.0043 [N]/k_e) in nC to 2 figures";
    assertEquals("61", number(run(sheet, "look", fromPrinted).results()));
  }
}
