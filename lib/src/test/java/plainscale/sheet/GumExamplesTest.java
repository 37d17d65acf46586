package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plainscale.fixtures.Block;
import plainscale.notation.Greek;
import plainscale.quantity.Quantity;

/** The worked examples of JCGM 100:2008 (GUM), appendix H, by derivatives by source. */
class GumExamplesTest {
  private static final double NANO = 1e-9;

  private static Block block(String id) {
    return Block.read("gum.txt").stream()
        .filter(block -> block.one("id").equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** {@code l; printed 50000838; computed 50000838.0; nm}: the last number of the line. */
  private static double computed(List<String> lines, String name) {
    String line = lines.stream().filter(l -> l.startsWith(name + ";")).findFirst().orElseThrow();
    return Double.parseDouble(line.replaceFirst(".*computed ([-0-9.e]+).*", "$1"));
  }

  static Sheet gauge() {
    Block gauge = block("H.1");
    List<String> lines = new ArrayList<>();
    for (String input : gauge.all("input")) {
      // l_S = 50000623 nm; u 25; nu 18
      String[] parts = input.split("; ", -1);
      String[] amount = parts[0].split(" ", 4);
      String u = parts[1].substring("u ".length());
      lines.add("given " + amount[0] + " = " + amount[2] + " ± " + u + " " + amount[3]);
    }
    lines.add(gauge.one("formula"));
    Sheet sheet = new Sheet();
    Cells.run(sheet, "H.1", lines.toArray(new String[0]));
    return sheet;
  }

  @Test
  void theLengthOfTheEndGauge() {
    List<String> results = block("H.1").all("result");
    Quantity length = Cells.value(gauge(), "l");
    assertEquals(computed(results, "l"), length.value().doubleValue() / NANO, 1e-6);
    assertEquals(computed(results, "u"), length.uncertainty().standard() / NANO, 1e-9);
    assertEquals(31.71, length.uncertainty().standard() / NANO, 0.005);
  }

  @Test
  void theLengthOfTheEndGaugeAsPrinted() {
    Run run = Cells.run(gauge(), "show", "show l in nm");
    assertEquals("50000838", Cells.number(run.results()));
    assertEquals("32", Cells.shown(run.results()).uncertainty().orElseThrow().toPlainString());
  }

  @Test
  void eachInputContributesWhatTheGumSays() {
    Map<String, Double> parts = new TreeMap<>();
    Cells.value(gauge(), "l")
        .uncertainty()
        .derivatives()
        .forEach((source, d) -> parts.put(source.name(), Math.abs(d) * source.standard() / NANO));
    List<String> components = block("H.1").all("component");
    assertEquals(4, components.size());
    for (String component : components) {
      String name = component.substring(0, component.indexOf(';'));
      assertEquals(computed(components, name), parts.getOrDefault(name, -1.0), 1e-9, name);
      parts.remove(name);
    }
    // The other two, th and a_S, enter in products with a factor of zero.
    assertEquals(List.of(0.0, 0.0), List.copyOf(parts.values()));
  }

  /** H.2 without its correlations: the wrong answers that the file keeps for comparison. */
  @Test
  void independentMeansOfTheResistanceExampleAreTakenAsIndependent() {
    Block example = block("H.2");
    List<String> results = example.all("result");
    Sheet sheet = new Sheet();
    List<String> lines = new ArrayList<>();
    for (String name : List.of("V", "I", "phi")) {
      String line =
          example.all("readings").stream()
              .filter(readings -> readings.startsWith(name + " "))
              .findFirst()
              .orElseThrow();
      String unit = line.substring(line.lastIndexOf(' ') + 1);
      lines.add(
          "given %s = %s ± %s %s"
              .formatted(
                  name, computed(results, name), computed(results, "u(" + name + ")"), unit));
    }
    // The notation asks for brackets around what is divided first.
    example.all("formula").forEach(formula -> lines.add(formula.replace("V/I", "(V/I)")));
    Cells.run(sheet, "H.2", lines.toArray(new String[0]));
    List<String> uncorrelated = example.all("uncorrelated");
    for (String name : List.of("R", "X", "Z")) {
      Quantity value = Cells.value(sheet, name);
      assertEquals(computed(results, name), value.value().doubleValue(), 1e-10, name);
      double u = value.uncertainty().standard();
      assertEquals(computed(uncorrelated, "u(" + name + ")"), u, 1e-10, name);
    }
  }

  /** H.2 from its readings, with their correlations as the GUM prints them. */
  @Test
  void theReadingsOfTheResistanceExampleBelongTogether() {
    Block example = block("H.2");
    List<String> results = example.all("result");
    Sheet sheet = new Sheet();
    List<String> lines = new ArrayList<>();
    for (String readings : example.all("readings")) {
      // V = 5.007 4.994 5.005 4.990 4.999 V
      String list = readings.substring(0, readings.lastIndexOf(' ')).replace("= ", "=");
      String unit = readings.substring(readings.lastIndexOf(' '));
      lines.add("given " + list.replace(" ", ", ").replace(", =", " = ") + unit);
    }
    lines.add("together V, I, phi");
    example.all("formula").forEach(formula -> lines.add(formula.replace("V/I", "(V/I)")));
    Run run = Cells.run(sheet, "H.2", lines.toArray(new String[0]));
    for (String name : List.of("R", "X", "Z")) {
      Quantity value = Cells.value(sheet, name);
      assertEquals(computed(results, name), value.value().doubleValue(), 1e-10, name);
      assertEquals(
          computed(results, "u(" + name + ")"), value.uncertainty().standard(), 1e-10, name);
    }
    for (String pair : List.of("R,X", "R,Z", "X,Z", "V,I", "V,phi", "I,phi")) {
      String[] names = pair.split(",", -1);
      Quantity x = Cells.value(sheet, Greek.normal(names[0]));
      Quantity y = Cells.value(sheet, Greek.normal(names[1]));
      double r = x.uncertainty().correlation(y.uncertainty());
      assertEquals(computed(results, "r(" + pair + ")"), r, 1e-10, pair);
    }
    String told = Cells.remarks(run.results()).stream().collect(Collectors.joining(" "));
    assertTrue(told.contains("r(V, I) = −0.36, r(V, φ) = 0.86, r(I, φ) = −0.65"), told);
  }

  /** 5.2.2: ten resistors of 1000 Ω from one calibration with u = 100 mΩ: 1 Ω, not 0.32 Ω. */
  @Test
  void tenResistorsOfOneCalibrationAreNoMoreCertainThanTheCalibration() {
    Sheet sheet = new Sheet();
    List<String> lines = new ArrayList<>(List.of("given R_S = 1000.00 ± 0.10 Ω"));
    for (int i = 0; i < 10; i++) {
      lines.add("R_" + i + " = R_S");
      lines.add("given S_" + i + " = 1000.00 ± 0.10 Ω");
    }
    lines.add("R_ref = R_0 + R_1 + R_2 + R_3 + R_4 + R_5 + R_6 + R_7 + R_8 + R_9");
    lines.add("S_ref = S_0 + S_1 + S_2 + S_3 + S_4 + S_5 + S_6 + S_7 + S_8 + S_9");
    Cells.run(sheet, "5.2.2", lines.toArray(new String[0]));
    assertEquals(1.0, Cells.value(sheet, "R_ref").uncertainty().standard(), 1e-12);
    assertEquals(0.32, Cells.value(sheet, "S_ref").uncertainty().standard(), 0.005);
  }
}
