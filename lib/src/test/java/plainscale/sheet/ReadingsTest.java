package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.quantity.Quantity;

/** Givens that are lists of readings. */
class ReadingsTest {

  /** By hand: mean 3, s² = (4 + 1 + 0 + 1 + 4)/4, u = √(2.5/5). */
  @Test
  void theMeanAndItsStandardUncertainty() {
    Sheet sheet = new Sheet();
    Cells.run(sheet, "cell", "given x = 1, 2, 3, 4, 5 cm");
    assertEquals(0.03, Cells.value(sheet, "x").value().doubleValue(), 1e-15);
    assertEquals(0.01 * Math.sqrt(0.5), Cells.value(sheet, "x").uncertainty().standard(), 1e-15);
  }

  @Test
  void theFiguresFollowTheUncertainty() {
    Run run = Cells.run(new Sheet(), "cell", "given V = 5.007, 4.994, 5.005, 4.990, 4.999 V");
    assertEquals("4.9990", Cells.number(run.results())); // JCGM 100:2008, table H.2: 4.9990(32)
    assertEquals("0.0032", Cells.shown(run.results()).uncertainty().orElseThrow().toPlainString());
  }

  @Test
  void readingsThatAreAllTheSameAreAsOneReading() {
    Sheet sheet = new Sheet();
    Run run = Cells.run(sheet, "cell", "given x = 2.70, 2.70, 2.70 g");
    assertEquals("2.70", Cells.number(run.results()));
    assertTrue(Cells.value(sheet, "x").uncertainty().derivatives().isEmpty());
  }

  @Test
  void readingsMayBeNegativeAndOfATemperature() {
    Sheet sheet = new Sheet();
    Run run = Cells.run(sheet, "cell", "given T = -1.5, -2.5, 0.5, 1.0 °C");
    assertEquals(273.15 - 0.625, Cells.value(sheet, "T").value().doubleValue(), 1e-9);
    assertEquals("°C", Cells.shown(run.results()).unit().text());
  }

  @Test
  void readingsThatRunInStepAreFullyCorrelated() {
    Sheet sheet = new Sheet();
    Run run =
        Cells.run(
            sheet,
            "cell",
            "given x = 1.0, 2.0, 4.0 cm",
            "given y = 3.0, 5.0, 9.0 s",
            "given z = 7.0, 7.0, 7.0 A",
            "together x, y, z",
            "v = y/(2 [s/cm]) - x");
    // y = 2 s/cm × x + 1 s, so that v is 0.5 cm for every pair
    assertEquals(0.005, Cells.value(sheet, "v").value().doubleValue(), 1e-15);
    assertEquals(0, Cells.value(sheet, "v").uncertainty().standard(), 1e-12);
    assertEquals(
        "The readings of x, y, z belong together, and so do the errors of their means:"
            + " r(x, y) = 1.00, r(x, z) = 0.00, r(y, z) = 0.00.",
        Cells.remarks(run.results()).get(0));
  }

  /** Two means have the uncertainty that the reading by reading differences have. */
  @Test
  void aDifferenceOfPairsIsAsCertainAsItsOwnReadings() {
    Sheet sheet = new Sheet();
    Cells.run(
        sheet,
        "cell",
        "given a = 10.1, 11.3, 12.2, 10.8 g",
        "given b = 7.0, 8.4, 9.1, 7.9 g",
        "given c = 3.1, 2.9, 3.1, 2.9 g",
        "together a, b",
        "d = a - b");
    Quantity paired = Cells.value(sheet, "d");
    Quantity differences = Cells.value(sheet, "c");
    assertEquals(differences.value().doubleValue(), paired.value().doubleValue(), 1e-15);
    assertEquals(differences.uncertainty().standard(), paired.uncertainty().standard(), 1e-15);
  }

  @Test
  void readingsStandAloneAgainWhenTheLineGoes() {
    Sheet sheet = new Sheet();
    String readings = "given a = 10.1, 11.3, 12.2 g\ngiven b = 7.0, 8.4, 9.1 g\n";
    Cells.run(sheet, "readings", readings + "together a, b");
    Cells.run(sheet, "difference", "d = a - b");
    double together = Cells.value(sheet, "d").uncertainty().standard();
    Run run = Cells.run(sheet, "readings", readings);
    assertEquals(List.of("difference"), Cells.updated(run));
    assertTrue(Cells.value(sheet, "d").uncertainty().standard() > 2 * together);
  }

  @Test
  void whatIsDefinedAnewElsewhereBelongsToTheOthersNoLonger() {
    Sheet sheet = new Sheet();
    Cells.run(
        sheet,
        "readings",
        "given a = 10.1, 11.3, 12.2 g",
        "given b = 7.0, 8.4, 9.1 g",
        "together a, b");
    Cells.run(sheet, "anew", "given b = 8.0 ± 0.1 g", "d = a - b");
    Quantity d = Cells.value(sheet, "d");
    Quantity a = Cells.value(sheet, "a");
    double expected = Math.hypot(a.uncertainty().standard(), 1e-4);
    assertEquals(expected, d.uncertainty().standard(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "given g = 5.0, V | After the comma comes another reading, a plain number.",
        "given g = 5.0, 5.1(2) V | After the comma comes another reading, a plain number.",
        "given g = 5.0,5.1 V | After the comma between two readings comes a space.",
        "given g = 5.0, 5.1 ± 0.1 V | Readings have no ±: their scatter tells how uncertain the mean is.",
        "given g = 5.0 V rectangular | “rectangular” tells how ± is meant, and here is no ±.",
        "given g = 5.0, 5.1 V triangular | “triangular” tells how ± is meant, and here is no ±.",
        "given g = 5.0(1) V triangular | “triangular” tells how ± is meant, and here is no ±.",
        "together a, b | Readings belong together one by one; here are 3 of a and 2 of b.",
        "together a, c | “c” is not a given with readings of this cell.",
        "together a, y | “y” is not a given with readings of this cell.",
        "together a | Here the line ends; a comma and another name belong here, as in: together V, I.",
        "together a, a | This name stands here twice.",
        "together 1, a | Here there is “1”; the name of a given belongs here, as in: together V, I."
      })
  void whatCannotBeReadTogetherIsSaidInASentence(String line, String sentence) {
    Sheet sheet = new Sheet();
    Cells.run(sheet, "other", "given y = 1.0, 2.0, 3.0 A");
    String cell = "given a = 1.0, 2.0, 3.0 V\ngiven b = 1.0, 2.0 A\ngiven c = 1.0 ± 0.1 s\n";
    assertEquals(sentence, Cells.onlyProblem(sheet.run("cell", cell + line)).sentence());
  }
}
