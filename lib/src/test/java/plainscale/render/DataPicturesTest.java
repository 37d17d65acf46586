package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.data.DataFolder;
import plainscale.picture.Scene;
import plainscale.picture.Shape;
import plainscale.sheet.DataResult;
import plainscale.sheet.Result;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/** Plots of class data, and what is told to those who do not see them. */
class DataPicturesTest {
  private final Sheet sheet =
      new Sheet(new DataFolder(Path.of("src/test/resources/plainscale/sheet/data")));

  private Result result(String line) {
    sheet.run("data", "data \"class.csv\"\ndata \"anscombe.csv\"\nR_x = 50 [Ω]\ngiven i = 20 mA");
    Run run = sheet.run("cell", line);
    assertEquals(List.of(), run.mistakes());
    return run.results().get(run.results().size() - 1);
  }

  private Scene scene(String line) {
    Optional<Scene> scene = ((DataResult) result(line)).acceptData(new DataPictures());
    return scene.orElseThrow();
  }

  private static List<String> texts(Scene scene) {
    return scene.texts().map(text -> plainscale.picture.Symbol.spoken(text.content())).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "histogram x against 14.2 cm \"Distances\"",
        "histogram y_4",
        "fit line U against I as a, b with weights both \"A title\"",
        "fit line y_2 against x_1",
        "fit proportional U against I with weights y",
        "fit power U against I",
        "fit exponential U against I",
        "plot U against I",
        "plot U against I with log x",
        "plot U against I with log y",
        "plot U against I with log both",
        "plot T against x",
        "plot y_1 against x_1",
        "plot R_x i in mV against i from 1 mA to 200 mA",
        "plot R_x i^2 against i from 1 mA to 200 mA with log both \"Power\"",
        "plot R_x i against i from 10 mA to 200 mA with points U against I"
      })
  void plotsAreReadable(String line) {
    plainscale.picture.Scenes.assertReadable(scene(line));
  }

  @Test
  void axesAreQuantitiesOverTheirUnits() {
    List<String> texts = texts(scene("plot U against I"));
    assertTrue(texts.contains("U/V") && texts.contains("I/mA"), texts::toString);
    List<String> fit = texts(scene("fit line U against I"));
    assertTrue(fit.contains("residuals of U/V"), fit::toString);
  }

  @Test
  void numbersOfAnAxisAreThoseOfTheReadersLanguage() {
    sheet.run("locale", "locale de");
    assertTrue(texts(scene("fit line U against I")).contains("0,1"));
  }

  @Test
  void aFitHasABandACurveAndItsPoints() {
    Scene scene = scene("fit line U against I");
    List<Shape> shapes = scene.shapes();
    assertTrue(shapes.stream().anyMatch(Shape.Polygon.class::isInstance));
    assertTrue(shapes.stream().anyMatch(Shape.Curve.class::isInstance));
    int points =
        shapes.stream()
            .filter(Shape.Discs.class::isInstance)
            .mapToInt(shape -> ((Shape.Discs) shape).centres().size())
            .sum();
    assertEquals(18, points); // nine points, and their residuals
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fit line U against I as a, b|9 points, I from 20 mA to 200 mA; lowest 1.03 V at 20 mA, highest 9.94 V at 200 mA.",
        "fit line U against I as a, b|U rises with I nearly throughout (rank correlation 1.0).",
        "fit line U against I as a, b|(20 ± 1, 1.03 ± 0.03)",
        "fit line U against I as a, b|The fit is U = a I + b with a = (0.049 82 ± 0.000 33) V/mA and b = (0.02 ± 0.04) V.",
        "fit line y_2 against x_1|from one x_1 to the next the sign changes 2 times.",
        "plot U against I with log both|Both axes are logarithmic; there a power law is a straight line.",
        "plot R_x i in V against i from 0 mA to 200 mA|The curve goes through (0, 0) (25, 1.25)",
        "histogram x against 14.2 cm|13.5 to 14: 1; 14 to 14.5: 6;",
        "histogram x against 14.2 cm|A line stands at the mean, (14.51 ± 0.27) cm. A dashed line stands at the reference value, 14.2 cm."
      })
  void theAlternativeTellsWhatThePictureShows(String line, String told) {
    String alternative = scene(line).alternative().replace('\u202f', ' ');
    assertTrue(alternative.contains(told), alternative);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "statistics x|row 7 (16.9 cm)",
        "statistics x|No value is left out for that; that needs a reason in the experiment.",
        "statistics x against 14.2 cm|9 of 10 lie within two standard deviations",
        "statistics U|Row 6 is left out, for want of a value.",
        "statistics U|Each value weighted by its own uncertainty",
        "data \"class.csv\"|Row 7 (line 9), column T: This looks like a formula of a spreadsheet",
        "data \"hostile.csv\"|Heading, column a_b: I do not know the unit “furlong”",
        "fit line U against I|9 points. Row 6 is left out, for want of a value.",
        "fit line U against I|All points count alike",
        "fit line U against I with weights y|weighted by the uncertainties (1/u²) of U,",
        "fit line U against I with weights both|U and I (York's method)",
        "fit line U against I with weights y|χ² = ",
        "fit power U against I|Power law: U = a (I/(1 mA))^p",
        "fit exponential U against I|Exponential: U = a exp(b I)",
        "fit line y_3 against x_1|twice the residual standard deviation: row 3."
      })
  void sentences(String line, String told) {
    String text =
        Renderers.text(List.of(result(line)))
            .lines()
            .collect(Collectors.joining("\n"))
            .replace('\u202f', ' ');
    assertTrue(text.contains(told), text);
  }
}
