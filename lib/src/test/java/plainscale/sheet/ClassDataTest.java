package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;
import static plainscale.sheet.Cells.value;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.algebra.Budget;
import plainscale.data.Agreement;
import plainscale.data.DataFolder;
import plainscale.data.Outliers;
import plainscale.data.Remark;
import plainscale.notation.Problem;

/** Results of a class in the notation. */
class ClassDataTest {
  private static final Path RESOURCES = Path.of("src/test/resources/plainscale/sheet/data");

  @TempDir Path folder = Path.of("");

  private final Sheet shipped = new Sheet(new DataFolder(RESOURCES));

  private Sheet sheet(String csv) throws IOException {
    Files.writeString(folder.resolve("class.csv"), csv);
    return new Sheet(new DataFolder(folder));
  }

  private static <T> T last(Run run, Class<T> kind) {
    assertEquals(List.of(), run.mistakes());
    return kind.cast(run.results().get(run.results().size() - 1));
  }

  private static double number(Sheet sheet, String name) {
    return value(sheet, name).value().doubleValue();
  }

  /** Certified by the National Institute of Standards and Technology. */
  @Test
  void theCertifiedLineOfNist() {
    run(shipped, "a", "data \"norris.csv\"", "fit line y against x as B, A");
    assertEquals(1.00211681802045, number(shipped, "B"), 1e-12);
    assertEquals(-0.262323073774029, number(shipped, "A"), 1e-11);
    assertEquals(0.429796848199937e-3, value(shipped, "B").uncertainty().standard(), 1e-13);
    assertEquals(0.232818234301152, value(shipped, "A").uncertainty().standard(), 1e-11);
    DataResult.Fitted fitted =
        last(shipped.run("b", "fit line y against x"), DataResult.Fitted.class);
    assertEquals(0.999993745883712, fitted.goodness().quality().rSquared().orElseThrow(), 1e-13);
    assertEquals(36, fitted.cloud().count());
    assertEquals("y = m x + b", fitted.formula().text());
  }

  /** Four sets of points that give one line, 3.00 + 0.500 x: Anscombe 1973, page 17. */
  @ParameterizedTest
  @CsvSource({"y_1, x_1", "y_2, x_1", "y_3, x_1", "y_4, x_4"})
  void fourSetsOfAnscombeGiveOneLine(String y, String x) {
    run(shipped, "a", "data \"anscombe.csv\"");
    DataResult.Fitted fitted =
        last(
            shipped.run("b", "fit line %s against %s as slope, b".formatted(y, x)),
            DataResult.Fitted.class);
    assertEquals(0.5, number(shipped, "slope"), 0.0005);
    assertEquals(3.0, number(shipped, "b"), 0.005);
    assertEquals(0.67, fitted.goodness().quality().rSquared().orElseThrow(), 0.005);
  }

  @Test
  void aColumnIsTheMeanOfItsValuesWithItsStandardUncertainty() throws IOException {
    Sheet sheet = sheet("d (cm)\n14.0\n14.2\n14.1\n14.3\n");
    run(sheet, "a", "data \"class.csv\"", "area = d^2", "zero = d - d");
    assertEquals(0.1415, number(sheet, "d"), 1e-15);
    double standard = Math.sqrt(5.0 / 300) / 2 / 100; // deviations 0.15, 0.05 twice: Σ = 0.05 cm²
    assertEquals(standard, value(sheet, "d").uncertainty().standard(), 1e-15);
    assertEquals(2 * 0.1415 * standard, value(sheet, "area").uncertainty().standard(), 1e-15);
    assertEquals(0, value(sheet, "zero").uncertainty().standard());
    assertEquals(
        "column d (cm) of class.csv, mean of 4 values",
        sheet.entry("d").orElseThrow().description());
  }

  @Test
  void theParametersOfAFitKeepTheirCorrelation() throws IOException {
    Sheet sheet = sheet("x,y\n1,2.1\n2,3.9\n3,6.2\n4,7.8\n");
    run(sheet, "a", "data \"class.csv\"", "fit line y against x as m_x, b", "mid = m_x x + b");
    double slope = value(sheet, "m_x").uncertainty().standard();
    double sum = value(sheet, "b").uncertainty().standard();
    assertTrue(value(sheet, "m_x").uncertainty().correlation(value(sheet, "b").uncertainty()) < 0);
    assertTrue(slope > 0 && sum > 0);
    run(sheet, "b", "middle = m_x*2.5 + b");
    double deviation =
        last(sheet.run("c", "fit line y against x"), DataResult.Fitted.class)
            .goodness()
            .quality()
            .deviation()
            .orElseThrow();
    // In the centre of the points the line is as uncertain as a mean: s/√n.
    assertEquals(deviation / 2, value(sheet, "middle").uncertainty().standard(), 1e-12);
  }

  @Test
  void aFileThatChangedIsReadAgainWhenItsCellRunsAgain() throws IOException {
    Sheet sheet = sheet("d (cm)\n14.0\n14.2\n");
    run(sheet, "data", "data \"class.csv\"");
    run(sheet, "use", "twice = 2*d");
    assertEquals(List.of(), updated(run(sheet, "data", "data \"class.csv\"")));
    Files.writeString(folder.resolve("class.csv"), "d (cm)\n15.0\n15.2\n");
    assertEquals(List.of("use"), updated(run(sheet, "data", "data \"class.csv\"")));
    assertEquals(0.302, number(sheet, "twice"), 1e-15);
  }

  @Test
  void columnsAreNamedInOrder() throws IOException {
    Sheet sheet = sheet("who,d (cm),q (nC)\nA,14.0,60\nB,14.2,62\n");
    run(sheet, "a", "data \"class.csv\" as d_c");
    assertTrue(sheet.entry("d_c").isPresent() && sheet.entry("q").isPresent());
    assertTrue(sheet.entry("d").isEmpty());
    assertEquals(
        "“class.csv” has 2 columns of numbers, and here are 3 names.",
        onlyProblem(sheet.run("a", "data \"class.csv\" as a, b_1, c_1")).sentence());
  }

  @Test
  void aNameThatIsTakenIsLeftAsItIs() throws IOException {
    Sheet sheet = sheet("d (cm),in (s)\n14.0,1\n14.2,2\n");
    run(sheet, "given", "given d = 3 m");
    DataResult.Listed listed =
        last(sheet.run("data", "data \"class.csv\""), DataResult.Listed.class);
    assertEquals(3, number(sheet, "d"));
    assertEquals(1, listed.notes().size());
    assertTrue(
        listed.notes().get(0).endsWith("data \"class.csv\" as d_c, in_c"),
        listed.notes()::toString);
    run(sheet, "data", "data \"class.csv\" as d_c, t_c");
    assertEquals(0.141, number(sheet, "d_c"), 1e-15);
  }

  @Test
  void aColumnBesideANumberIsDoubtful() throws IOException {
    Sheet sheet = sheet("d (cm)\n14.0\n14.2\n");
    Problem problem = onlyProblem(sheet.run("a", "data \"class.csv\"\nshow 2 d"));
    assertEquals(
        "“2 d” is doubtful: d is a quantity of this cell and also the unit day.",
        problem.sentence());
  }

  @Test
  void outliersAreNamedByRowAndNotDropped() {
    run(shipped, "a", "data \"class.csv\"");
    DataResult.Described described =
        last(shipped.run("b", "statistics x against 14.2 cm"), DataResult.Described.class);
    assertEquals(10, described.count());
    for (DataResult.Far far : described.far()) {
      assertEquals(List.of(7), far.first().stream().map(DataResult.InRow::row).toList());
    }
    assertEquals(
        List.of(Outliers.Rule.TUKEY, Outliers.Rule.CHAUVENET),
        described.far().stream().map(DataResult.Far::rule).toList());
    DataResult.Beside beside = described.beside().orElseThrow();
    assertEquals(Agreement.Verdict.AGREES, beside.verdict());
    assertEquals(List.of(7), beside.scores().others().stream().map(DataResult.Score::row).toList());
  }

  /** Mean 14.0, s = 0.1 cm, n = 4: u = 0.05 cm; beside 14.2 ± 0.05 cm ζ = −0.2/(0.05 √2). */
  @Test
  void theTeachersValueHasAnUncertaintyToo() throws IOException {
    Sheet sheet = sheet("d (cm)\n13.9\n14.1\n13.9\n14.1\n");
    run(sheet, "a", "data \"class.csv\"", "given d_t = 14.20 ± 0.05 cm");
    DataResult.Described described =
        last(sheet.run("b", "statistics d against d_t"), DataResult.Described.class);
    DataResult.Beside beside = described.beside().orElseThrow();
    double u = Math.sqrt(0.04 / 3 / 4);
    assertEquals(-0.2 / Math.hypot(u, 0.05), beside.zeta().orElseThrow(), 1e-9);
    assertEquals(Agreement.Verdict.DOUBTFUL, beside.verdict());
    assertEquals("d_t", beside.name());
  }

  @Test
  void readingsWithUncertaintiesHaveAWeightedMean() {
    run(shipped, "a", "data \"class.csv\"");
    DataResult.Described described =
        last(shipped.run("b", "statistics U"), DataResult.Described.class);
    assertTrue(described.weighted().isPresent());
    assertEquals(new DataResult.Left(1, List.of(6)), described.left());
  }

  @Test
  void remarksOfTheFileAreKept() throws IOException {
    Files.write(
        folder.resolve("class.csv"),
        new byte[] {'L', (byte) 0xe4, 'n', 'g', 'e', '\n', '1', '\n', '2', '\n'});
    Sheet sheet = new Sheet(new DataFolder(folder));
    DataResult.Listed latin = last(sheet.run("a", "data \"class.csv\""), DataResult.Listed.class);
    assertEquals(1, latin.remarks().count(Remark.Kind.ENCODING));
    assertEquals(1.5, number(sheet, "Länge"));
    DataResult.Listed listed =
        last(shipped.run("b", "data \"class.csv\""), DataResult.Listed.class);
    assertEquals(7, listed.remarks().of(Remark.Kind.FORMULA).get(0).row());
    assertEquals(1, listed.remarks().count(Remark.Kind.UNREADABLE));
    assertEquals(1, listed.remarks().count(Remark.Kind.MISSING));
  }

  @Test
  void withoutAFolderNoFileIsRead() {
    Problem problem = onlyProblem(new Sheet().run("a", "data \"class.csv\""));
    assertEquals("This sheet has no folder, so it reads no files.", problem.sentence());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "data \"clas.csv\"|There is no file “clas.csv” beside the notebook.|\"clas.csv\"",
        "data \"../class.csv\"|“../class.csv” leads out of the notebook's folder.|\"../class.csv\"",
        "data \"/etc/hosts\"|“/etc/hosts” is not a name beside the notebook.|\"/etc/hosts\"",
        "statistics uu|There is no column “uu”.|uu",
        "statistics group|The column “group” holds words, not numbers.|group",
        "statistics one|“one” is one value; here a column of a table is needed.|one",
        "statistics x against 3 s|“x” is in cm and the value beside it in s; they cannot be compared.|3 s",
        "histogram x against 3 s|“x” is in cm and the value beside it in s; they cannot be compared.|3 s",
        "fit power y against I as a, p|“y” is one value; here a column of a table is needed.|y",
        "fit line v against w as k, m|This curve needs 2 points, and here is one.|v against w",
        "fit power s against w|This curve needs values of “s” of one sign, none of them zero; in row 2 stands −2.|s against w",
        "fit exponential s against w|This curve needs values of “s” of one sign, none of them zero; in row 2 stands −2.|s against w",
        "fit line U against s|“U” and “s” stand in different tables; a point needs both in one row.|U against s",
        "fit line s against w with weights y|Row 1 of “s” has no uncertainty to weight it by.|s against w",
        "fit curve U against I|After “fit” stands the curve: line, proportional, power or exponential.|curve",
        "fit line U against I as a|The curve “line” gives 2 values: slope and intercept.|a",
        "plot s against w with log y|A logarithmic axis has no zero and nothing below it; row 2 of “s” does not fit.|s against w",
        "plot one against y from 1 g to 2 s|Here is a value in s where one in g belongs.|2 s",
        "plot U against I from 1 mA to 3 mA|“U” and “I” are columns; their points go from the first"
            + " to the last.|1 mA to 3 mA",
        "plot one against y|“y” is no column of a table, so it needs to be said from where to where it goes.|y",
        "plot one against one from 1 s to 2 s with points U against I|The column “I” is in mA and the curve goes along s.|I",
        "plot one against one from 0 s to 2 s with log x|A logarithmic axis begins above zero.|0 s"
      })
  void badInputIsToldAtItsPlace(String line, String sentence, String place) throws IOException {
    Files.copy(RESOURCES.resolve("class.csv"), folder.resolve("class.csv"));
    Files.writeString(folder.resolve("few.csv"), "w,s,v\n1,1,\n2,-2,3\n3,2,\n");
    Sheet sheet = new Sheet(new DataFolder(folder));
    run(sheet, "a", "data \"class.csv\"", "data \"few.csv\"", "given y = 2 g", "given one = 1 s");
    Problem problem = onlyProblem(sheet.run("b", line));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
  }

  @Test
  void theNearestNamesAreRepairs() throws IOException {
    Sheet sheet = sheet("speed (m/s)\n1\n2\n");
    run(sheet, "a", "data \"class.csv\"");
    assertEquals(List.of("speed"), onlyProblem(sheet.run("b", "statistics sped")).repairs());
    assertEquals(List.of("class.csv"), onlyProblem(sheet.run("b", "data \"clas.csv\"")).repairs());
  }

  @Test
  void aMillionRowsAreReadAndThinned() throws IOException {
    StringBuilder csv = new StringBuilder("x (s),y (m)\n");
    for (int i = 1; i <= 1_000_000; i++) {
      csv.append(i).append(',').append(2 * i + i % 3).append('\n');
    }
    Sheet sheet = sheet(csv.toString());
    run(sheet, "a", "data \"class.csv\"");
    DataResult.Fitted fitted =
        last(sheet.run("b", "fit line y against x as v, b"), DataResult.Fitted.class);
    assertEquals(1_000_000, fitted.cloud().count());
    assertEquals(2500, fitted.cloud().every());
    assertEquals(Cloud.MOST, fitted.cloud().spots().size());
    assertEquals(2, number(sheet, "v"), 1e-9);
  }

  @Test
  void aLongReadingIsStopped() throws IOException {
    StringBuilder csv = new StringBuilder("x\n");
    for (int i = 0; i < 20_000; i++) {
      csv.append(i).append('\n');
    }
    Sheet sheet = sheet(csv.toString());
    Budget stopped = new Budget(1000, Duration.ofSeconds(10), () -> true);
    Problem problem = onlyProblem(sheet.run("a", "data \"class.csv\"", stopped));
    assertEquals("Stopped, as you asked.", problem.sentence());
    assertEquals(Problem.Kind.LIMIT, problem.kind());
  }

  @Test
  void aCurveOfTheSheetStandsBesideThePointsOfTheClass() {
    run(shipped, "a", "data \"class.csv\"", "given i = 50 mA", "V = 50 [Ω]*i");
    DataResult.Plotted plotted =
        last(
            shipped.run("b", "plot V against i from 10 mA to 200 mA with points U against I"),
            DataResult.Plotted.class);
    assertEquals(9, plotted.points().orElseThrow().count());
    DataResult.Step end = plotted.curve().get(plotted.curve().size() - 1);
    assertEquals(200, end.x(), 1e-9);
    assertEquals(10, end.y(), 1e-9);
    assertEquals("V", plotted.up().unit().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "y", "both"})
  void axesAreLogarithmicAsAsked(String axes) {
    run(shipped, "a", "data \"class.csv\"");
    DataResult.Plotted plotted =
        last(shipped.run("b", "plot U against I with log " + axes), DataResult.Plotted.class);
    String told = (plotted.logs().x() ? "x" : "") + (plotted.logs().y() ? "y" : "");
    assertEquals(axes.replace("both", "xy"), told.toLowerCase(Locale.ROOT));
  }

  @Test
  void aWhatIfChangesTheMeanOfAColumnAndNoFit() throws IOException {
    Sheet sheet = sheet("x,y,z\n1,2.1,5\n2,3.9,6\n3,6.2,8\n");
    run(sheet, "a", "data \"class.csv\"", "fit line y against x as k, b", "s = k*2 + b", "w = 2*y");
    Run run = run(sheet, "b", "what if y = 2*y show s, w, k, z");
    Result.Compared compared = last(run, Result.Compared.class);
    assertEquals(
        List.of(
            Result.Row.Why.CHANGED,
            Result.Row.Why.NOT_CONTAINED,
            Result.Row.Why.FOLLOWS,
            Result.Row.Why.NOT_CONTAINED,
            Result.Row.Why.NOT_CONTAINED),
        compared.rows().stream().map(Result.Row::why).toList());
  }
}
