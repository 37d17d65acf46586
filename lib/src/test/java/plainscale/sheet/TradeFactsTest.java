package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.value;

import org.junit.jupiter.api.Test;
import plainscale.render.Renderers;

/** Facts that every teacher of electrostatics uses (common practice, no source). */
class TradeFactsTest {
  private final Sheet sheet = new Sheet();

  private String shown(String... lines) {
    return Renderers.text(run(sheet, "cell", lines).results());
  }

  /** Half of the nucleons of light atoms are protons, and each has its electron. */
  @Test
  void ordinaryMatterHoldsAboutOneElectronForEvery33ThousandthsOfAYoctogram() {
    String told =
        shown(
            "m_e1 = 2 [u] \"mass for each electron\"",
            "expect m_e1 about 3.3e-27 kg within 2 % \"common practice\"");
    assertTrue(told.endsWith("as expected (common practice)."), told);
  }

  @Test
  void aHandRubbedObjectHoldsWellBelowAMicrocoulomb() {
    String little = shown("given q = 67 nC \"charge of a straw rubbed by hand\"");
    assertEquals("q = 67 nC    (charge of a straw rubbed by hand)", little);
    String much = shown("given q = 6.7 µC \"charge of a straw rubbed by hand\"");
    assertTrue(much.contains("Hard to believe: q = 6.7 µC is 6.7 times 1 µC"), much);
    assertTrue(much.contains("With q = 6.7 nC instead of 6.7 µC it could be"), much);
  }

  @Test
  void twoProtonsInANucleusPushEachOtherWithSome200Newtons() {
    String told =
        shown(
            "given r = 1e-15 m",
            "F = k_e e^2/r^2",
            "expect F about 200 N within 30 % \"two protons in a nucleus\"");
    assertTrue(told.contains("lies within 30 % of 200 N, as expected"), told);
    assertEquals(230.7, value(sheet, "F").value().doubleValue(), 0.1);
  }

  @Test
  void rubbingMovesAShareOfTheOrderOfTenToTheMinusTwelve() {
    String told =
        shown(
            "given m = 2.70 g",
            "given q = 67 nC",
            "x = (q/e)/(m/(2 [u])) \"share of the electrons that were rubbed off\"",
            "expect x between 1e-13 and 1e-11",
            "show x in orders");
    assertTrue(told.contains("lies between 1 × 10⁻¹³ and 1 × 10⁻¹¹, as expected."), told);
    assertTrue(told.contains("order of magnitude 10⁻¹²"), told);
  }
}
