package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.remarks;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;
import static plainscale.sheet.Cells.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.laws.Law;
import plainscale.notation.Printer;
import plainscale.notation.Problem;

/** Laws of the table as relations of a sheet. */
class UsedLawsTest {
  private final Sheet sheet = new Sheet();

  private <R extends LawResult> R last(Class<R> kind, String... lines) {
    List<Result> results = run(sheet, "cell", lines).results();
    return assertInstanceOf(kind, results.get(results.size() - 1));
  }

  @Test
  void aLawIsShownWithTheSheetsNames() {
    LawResult.Used used = last(LawResult.Used.class, "use coulomb with F = F_e, q1 = q, q_2 = q");
    assertEquals("F_e = k_e q^2/r^2", used.equation().text());
    assertEquals("coulomb", used.name());
    List<String> rows =
        used.rows().stream()
            .map(r -> Printer.print(r.here()) + " " + r.symbol() + " " + r.unit().text())
            .toList();
    assertEquals(List.of("F_e F N", "q q_1 C", "q q_2 C", "r r m", "k_e k_e N·m²/C²"), rows);
  }

  @Test
  void itIsSolvedWithOtherRelations() {
    run(
        sheet,
        "cell",
        "given m = 5.0 g",
        "given s = 0.500 m",
        "given θ = 5.0°",
        "use coulomb as push with F = F_e, q_1 = q, q_2 = q, r = 2*s sin(θ)",
        "relation level: F_e = m g_n tan(θ)",
        "solve push, level for q in nC");
    assertEquals(6.02e-8, value(sheet, "q").value().doubleValue(), 0.005e-8);
  }

  @Test
  void namesThatTheSheetDoesNotKnowAreUnknowns() {
    run(sheet, "law", "use spring_period with T = T_s");
    run(sheet, "given", "given T_s = 0.80 s", "given k = 12.0 N/m");
    run(sheet, "solve", "solve spring_period for m");
    assertEquals(0.1945, value(sheet, "m").value().doubleValue(), 0.0005);
  }

  @Test
  void aChangedGivenBringsUpToDateWhatTheLawGives() {
    run(sheet, "a", "given l = 1.00 m");
    run(sheet, "b", "use pendulum");
    run(sheet, "c", "solve pendulum for T");
    Run again = run(sheet, "a", "given l = 4.00 m");
    assertEquals(List.of("c"), updated(again));
    assertEquals(4.01, value(sheet, "T").value().doubleValue(), 0.01);
  }

  @Test
  void aConstantOfTheLawMayBeReplaced() {
    run(
        sheet,
        "cell",
        "given l = 75.000 cm",
        "given T = 1.7357 s",
        "use pendulum with g_n = g",
        "solve pendulum for g");
    assertEquals(9.8281, value(sheet, "g").value().doubleValue(), 0.0001);
  }

  @Test
  void anAngleOfALawIsAnAngle() {
    run(sheet, "cell", "given s = 31.0 cm", "given r = 24.0 cm", "use arc_length");
    run(sheet, "solve", "solve arc_length for θ in °");
    assertEquals("74.0", Cells.value(sheet, "θ").shown().value().toPlainString());
  }

  @Test
  void phasesOfADegreeFormulaAreComputed() {
    run(
        sheet,
        "cell",
        "given x_m = 4.0 cm",
        "given t = 0.325 s",
        "given T = 1.30 ± 0.01 s",
        "use shm_position",
        "solve shm_position for x");
    assertEquals(0, value(sheet, "x").value().doubleValue(), 1e-15);
    assertTrue(value(sheet, "x").uncertainty().standard() > 0.0004);
  }

  @Test
  void aRelationOfALawCanBeChangedInAWhatIf() {
    run(sheet, "a", "given l = 1.00 m", "use pendulum", "solve pendulum for T");
    run(sheet, "b", "what if pendulum: T = sqrt(l/g_n) show T");
    run(sheet, "c", "say \"As {pendulum} says.\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "use coulmb | I know no law “coulmb”. | coulmb | use coulomb",
        "use force | I know no law “force”. | force | words to search by: use \"force\"",
        "use coulomb with x = y | The law “coulomb” has no symbol “x”: it says F = k_e q_1 q_2/r^2. | x | one of its symbols: F, q_1, q_2, r, k_e",
        "use coulomb with F = a, F = b | “F” stands here twice. | F | delete one of the two",
        "use coulomb with q1 = a, q_1 = b | “q_1” stands here twice. | q_1 | delete one of the two",
        "use coulomb with F | Here the line ends; “=” and what stands for F here belong here. | |",
        "use force between charges | The name of a law is one word; words to search for stand in quotation marks. | force between charges | use \"force between charges\"",
        "use | Here the line ends; the name of a law belongs here, or words to search for in quotation marks, as in: use coulomb with F = F_e, q_1 = q. | |",
        "use \"\" | Between the quotation marks stand words to search for. | \"\" | use \"force between charges\"",
        "use \"xyzzy\" | I know no law about “xyzzy”. | \"xyzzy\" | a word of physics, as in: use \"force between charges\"",
        "use coulomb as show | “show” is a word of the notation. | show | show_1",
        "use coulomb with r = t | In the law “coulomb”, r is a length; “t” is a time here. | t | name what is meant: use coulomb with r = …",
        "use coulomb with r = 2*t | In the law “coulomb”, r is a length; “2*t” is a time here. | 2*t | name what is meant: use coulomb with r = …",
        "use coulomb with q_1 = x, r = x | In the law “coulomb”, q_1 is an electric charge; “x” cannot be that here. | x | name what is meant: use coulomb with q_1 = …",
        "use velocity_time | In the law “velocity_time”, v is a speed; “v” is a time here. | velocity_time | name what is meant: use velocity_time with v = …",
        "use photon_energy | In the law “photon_energy”, h is the Planck constant; “h” is a length here. | photon_energy | name what is meant: use photon_energy with h = …",
        "use weight | “weight” is a quantity of this sheet; the relation needs another name. | weight | use weight as weight_1",
      })
  void whatIsWrongIsToldAtItsPlace(String line, String sentence, String place, String repair) {
    run(sheet, "sheet", "given t = 2.0 s", "given v = 3.0 s", "weight = 2", "h = 2 [m]");
    Problem problem = onlyProblem(sheet.run("cell", line));
    assertEquals(sentence, problem.sentence());
    assertEquals(place == null ? "" : place, marked(problem));
    String repairs = String.join("\n", problem.repairs());
    assertTrue(repair == null ? repairs.isEmpty() : repairs.contains(repair), repairs);
  }

  @Test
  void aLawUsedTwiceInACellIsToldWithAName() {
    Problem problem = onlyProblem(sheet.run("cell", "use ohm\nuse ohm with I = I_2"));
    assertEquals("“ohm” is defined twice in this cell; line 1 counts.", problem.sentence());
    assertEquals(List.of("use ohm as ohm_2 …"), problem.repairs());
    run(sheet, "cell", "use ohm", "use ohm as ohm_2 with I = I_2, U = U_2");
    assertTrue(sheet.entry("ohm_2").isPresent());
  }

  @Test
  void aLawUsedInAnotherCellIsToldToo() {
    run(sheet, "a", "use ohm");
    Run again = run(sheet, "b", "use ohm with I = I_2");
    assertEquals(
        List.of(
            "“ohm” was used in another cell; from now on this use counts. To keep both, name one of them: use ohm as ohm_2 …"),
        remarks(again.results()));
    assertEquals(List.of("a"), updated(again));
  }

  @Test
  void aMistakeInAUseLeavesTheGoodLines() {
    Run cell = sheet.run("cell", "given m = 2.0 g\nuse coulmb\nw = m g_n");
    assertEquals(1, cell.mistakes().size());
    assertTrue(sheet.value("w").isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"force between charges", "pendulum", "how long does it swing", "lens"})
  void aSearchListsLawsAndDefinesNothing(String words) {
    LawResult.Found found = last(LawResult.Found.class, "use \"" + words + "\"");
    assertTrue(!found.laws().isEmpty() && found.laws().size() <= 6);
    found.laws().stream().map(Law::name).forEach(n -> assertTrue(sheet.entry(n).isEmpty(), n));
  }
}
