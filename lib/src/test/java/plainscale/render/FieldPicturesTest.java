package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.picture.Scene;
import plainscale.picture.Scenes;
import plainscale.picture.SvgWriter;
import plainscale.sheet.FieldResult;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/** The pictures of fields are readable, small, and said in words. */
class FieldPicturesTest {
  private static final String FIELDS =
      """
      given q = 3.0 nC
      field pair: charge q at (-7 cm, 0 cm), charge -q at (7 cm, 0 cm)
      field same: charge q at (-3 cm, 1 cm), charge q at (5 cm, 1 cm)
      field one: charge q at (0 cm, 0 cm)
      field none: charge q at (1 cm, 0 cm), charge -q at (1 cm, 0 cm)
      field things: ring q radius 2 cm at (-4 cm, 0 cm), plates 3 [nC/m^2] gap 4 cm at (4 cm, 0 cm), line -q from (-1 cm, 3 cm) to (1 cm, 3 cm)
      field round: shell q radius 2 cm at (-4 cm, 0 cm), disc -q radius 1 cm at (4 cm, 0 cm) flat, ring q radius 1 cm at (0 cm, 4 cm) flat, sphere q radius 5 mm at (0 cm, 0 cm), disc q radius 1 cm at (0 cm, -4 cm)
      field plate: plates 3 [nC/m^2] gap 4 cm at (0 cm, 0 cm)
      field tiny: charge e at (0 pm, 0 pm), charge -e at (52.9 pm, 0 pm)
      field earth: sphere 5.97e24 kg radius 6371 km at (0 km, 0 km)
      field two: mass 5.97e24 kg at (0 km, 0 km), mass 7.35e22 kg at (384400 km, 0 km)
      field ten: charge q at (1 cm, 2 cm), charge -q at (-5 cm, 4 cm), charge q at (6 cm, -3 cm), charge -q at (3 cm, 5 cm), charge q at (-7 cm, -4 cm), charge -q at (0 cm, -5 cm), charge q at (8 cm, 3 cm), charge -q at (-2 cm, 0 cm), charge q at (-3 cm, -2 cm), charge -q at (4 cm, 0 cm)
      """;

  private static final List<String> LINES =
      List.of("map %s", "map %s with vectors", "relief %s", "map %s \"A title of some length\"");

  private static final List<String> MORE =
      List.of(
          "map pair from (-10 cm, -1 cm) to (20 cm, 1 cm)",
          "map pair from (-1 cm, -30 cm) to (1 cm, 30 cm)",
          "map pair from (100 cm, 100 cm) to (101 cm, 101 cm)",
          "relief pair from (-10 cm, -2 cm) to (20 cm, 2 cm)",
          "relief pair from (-2 cm, -8 cm) to (2 cm, 8 cm)",
          "section pair from (-12 cm, 1 cm) to (12 cm, 1 cm)",
          "section pair from (-12 cm, 0 cm) to (12 cm, 0 cm)",
          "section plate from (-6 cm, 0 cm) to (6 cm, 0 cm) \"through the plates\"",
          "section none from (0 cm, 0 cm) to (1 cm, 1 cm)",
          "section earth from (0 km, 0 km) to (20000 km, 0 km)",
          "release charge -1 nC mass 1.0 mg at (0 cm, 6 cm) in pair",
          "release charge -1 nC mass 1.0 mg at (0 cm, 6 cm) moving (3 m/s, 0 m/s) in same",
          "release charge 1 nC mass 1.0 mg at (0 cm, 6 cm) in none",
          "release charge -e mass m_e at (30 pm, 30 pm) in tiny",
          "release mass 1 kg at (10000 km, 0 km) moving (0 km/s, 6.2 km/s) in earth",
          "release mass 1 kg at (10000 km, 0 km) in earth");

  private static Sheet sheet() {
    Sheet sheet = new Sheet();
    assertEquals(List.of(), sheet.run("fields", FIELDS).mistakes());
    return sheet;
  }

  private static Scene scene(Sheet sheet, String line) {
    List<Result> results = sheet.run("cell", line).results();
    FieldResult result = (FieldResult) results.get(results.size() - 1);
    return result.accept(new FieldText()).scene().orElseThrow();
  }

  /** A picture and the line that asks for it. */
  record Drawn(String line, Scene scene) {
    @Override
    public String toString() {
      return line.replace('"', '\'');
    }
  }

  static Stream<Drawn> pictures() {
    Sheet sheet = sheet();
    List<String> fields =
        List.of("pair", "same", "one", "none", "things", "round", "plate", "tiny", "two", "ten");
    return Stream.concat(
            fields.stream().flatMap(field -> LINES.stream().map(line -> line.formatted(field))),
            MORE.stream())
        .map(line -> new Drawn(line, scene(sheet, line)));
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void everyPictureIsReadableAndSaidInWords(Drawn drawn) {
    Scenes.assertReadable(drawn.scene());
    String words = drawn.scene().alternative();
    assertTrue(words.endsWith("."), words);
    assertFalse(words.contains("NaN") || words.contains("null") || words.contains("--"), words);
    assertTrue(words.contains("ource") || drawn.line().startsWith("section"), words);
  }

  @Test
  void theWordsOfAMapTellAllThatIsOnIt() {
    String words = scene(sheet(), "map same").alternative();
    for (String part :
        List.of(
            "Sources: 1: point charge, 3 nC, at (−3 cm, 1 cm); 2: point charge, 3 nC, at (5 cm, 1 cm).",
            "The frame reaches from x = ",
            "Equipotentials every 0.2 kV from 0.6 kV to 2.8 kV.",
            "16 from source 1 to beyond the frame",
            "The field is zero at (1 cm, 1 cm).",
            "The potential is highest at sources 1, 2, lowest far from all sources.",
            "Potential along y = 1 cm, from the left: x = ",
            "how close they lie is not the strength of the field")) {
      assertTrue(words.contains(part), () -> part + " is missing in: " + words);
    }
  }

  @Test
  void theWordsOfASectionTellWhereTheFieldIsZero() {
    String words = scene(sheet(), "section same from (-2 cm, 1 cm) to (4 cm, 1 cm)").alternative();
    assertTrue(words.contains("is zero at s = 3 cm (potential lowest)"), words);
  }

  @Test
  void theAccountOfAMotionIsATableWithItsTotal() {
    String text =
        Renderers.text(
            sheet()
                .run("cell", "release charge -1 nC mass 1.0 mg at (0 cm, 6 cm) in pair")
                .results());
    assertTrue(text.contains("kinetic/µJ"), text);
    assertTrue(text.contains("One round is shown"), text);
    assertTrue(text.contains("together stay the same within"), text);
  }

  @Test
  void whatBecomesOfABodyIsSaid() {
    Sheet sheet = sheet();
    Map<String, String> said = new TreeMap<>();
    said.put("release mass 1 kg at (10000 km, 0 km) in earth", "it runs into the sphere");
    said.put("release charge 1 nC mass 1 mg at (0 cm, 6 cm) in none", "it stays where it is");
    said.put("release charge 1 nC mass 1 mg at (0 cm, 6 cm) in same", "it leaves the frame");
    said.put(
        "release charge 1 nC mass 1 mg at (0 cm, 6 cm) in same for 1 µs",
        "It was followed for 1.000 µs, as you asked.");
    said.forEach(
        (line, words) -> {
          String text = Renderers.text(sheet.run("cell", line).results());
          assertTrue(text.contains(words), text);
        });
  }

  /** What a notebook has to carry for ten charges. */
  @Test
  void aMapOfTenChargesWithItsReliefIsSmall() {
    Sheet sheet = sheet();
    int bytes = 0;
    for (String line : List.of("map ten", "relief ten")) {
      bytes += SvgWriter.write(scene(sheet, line)).getBytes(StandardCharsets.UTF_8).length;
    }
    assertTrue(bytes < 300_000, bytes + " bytes");
    assertTrue(bytes > 20_000, bytes + " bytes");
  }
}
