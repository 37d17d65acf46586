package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Problem;

/**
 * Two charged balls on threads from one hook, d apart: on each tan of its angle is push over
 * weight, and the push is the same on both, whatever their charges are. So tan(α) m_1 = tan(β) m_2.
 */
class CasesTest {
  private final Sheet sheet = new Sheet();

  @BeforeEach
  void twoBalls() {
    run(
        sheet,
        "givens",
        "given m_1 = 2.70 g",
        "given m_2 = 2.70 g",
        "given q_1 = 67.0 nC",
        "given q_2 = 67.0 nC",
        "given d = 14.0 cm");
    run(
        sheet,
        "angles",
        "F = k_e q_1 q_2/d^2",
        "relation left: F = T_1 sin(α)",
        "relation upright: m_1 g_n = T_1 cos(α)",
        "solve left, upright for α with answer",
        "β = atan(F/(m_2 g_n))",
        "r = (m_1 tan(α))/(m_2 tan(β))");
    run(
        sheet,
        "forces",
        "forces on \"left ball\": weight m_1 g_n down by Earth, push F left by \"right ball\",",
        "  thread F/sin(α) along 90° − α by hook",
        "forces on \"right ball\": weight m_2 g_n down by Earth, push F right by \"left ball\",",
        "  thread F/sin(β) along 90° + β by hook");
  }

  private CaseTable table(String line) {
    return ((Result.SideBySide) run(sheet, "cell", line).results().get(0)).table();
  }

  private static List<String> row(CaseTable table, String name) {
    return values(table.rows(), name);
  }

  private static List<String> values(List<CaseTable.Row> rows, String name) {
    return find(rows, name).values().stream()
        .map(v -> v.map(s -> s.value().toPlainString()).orElse("–"))
        .toList();
  }

  private static CaseTable.Row find(List<CaseTable.Row> rows, String name) {
    return rows.stream()
        .filter(r -> r.label().name().equals(Optional.of(name)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void unequalChargesPushEquallyAndEqualMassesHangAtEqualAngles() {
    CaseTable table =
        table(
            "compare \"as measured\" with \"unequal charges\": q_1 = 3*q_1"
                + " with \"unequal masses\": m_2 = 2*m_2 show F, α, β, r");
    assertEquals(List.of("as measured", "unequal charges", "unequal masses"), table.cases());
    // 8.98755E+9 × (67.0E-9)²/0.140² N = 2.0584E-3 N; atan(2.0584E-3/(2.70E-3 × 9.80665)) = 4.445°
    assertEquals(List.of("2.06", "6.18", "2.06"), row(table, "F"));
    assertEquals(List.of("4.445", "13.13", "4.445"), row(table, "α"));
    assertEquals(List.of("4.445", "13.13", "2.226"), row(table, "β"));
    assertEquals(CaseTable.Why.CHANGED, find(table.rows(), "q_1").why());
    assertEquals(CaseTable.Why.DIFFERS, find(table.rows(), "F").why());
    assertEquals(CaseTable.Why.CANCELS, find(table.rows(), "r").why()); // tan α m_1 = tan β m_2
  }

  @Test
  void everyForceStandsInEveryCase() {
    CaseTable table = table("compare \"a\" with \"b\": q_1 = 3*q_1 with \"c\": m_2 = 2*m_2 show d");
    assertEquals(6, table.forces().size());
    assertEquals(List.of("26.5", "26.5", "26.5"), values(table.forces(), "weight"));
    assertEquals(CaseTable.Why.NOT_CONTAINED, find(table.forces(), "weight").why());
    assertEquals(CaseTable.Why.DIFFERS, table.forces().get(3).why()); // the other weight
  }

  @Test
  void thePushIsAPairInEveryCaseAndTheWeightsAreNone() {
    CaseTable table = table("compare \"a\" with \"b\": q_1 = 3*q_1 with \"c\": m_2 = 2*m_2 show d");
    CaseTable.Tie push = table.ties().get(0);
    assertTrue(push.found().stream().allMatch(f -> f.kind() == Finding.Kind.PAIR));
    CaseTable.Tie weights = table.ties().get(1);
    assertEquals(Finding.Kind.ALIKE, weights.found().get(0).kind());
    assertEquals(List.of(true, true, false), weights.equal());
  }

  @Test
  void aFormulaThatGivesEachBallItsOwnPushIsFoundOut() {
    run(
        sheet,
        "forces",
        "forces on a: push k_e q_1^2/d^2 left by b",
        "forces on b: push k_e q_2^2/d^2 right by a");
    CaseTable table = table("compare \"equal\" with \"unequal\": q_1 = 3*q_1 show F");
    assertEquals(
        List.of(Finding.Kind.PAIR, Finding.Kind.UNEQUAL),
        table.ties().get(0).found().stream().map(Finding::kind).toList());
  }

  @Test
  void aCaseCanSayARelationOtherwise() {
    CaseTable table = table("compare \"a\" with \"b\": left: 2*F = T_1 sin(α) show α, β");
    assertEquals("2*F = T_1 sin(α)", table.relations().get(0).equation().text());
    // atan(2 × 2.0584E-3/26.478E-3) = 8.837°
    assertEquals(List.of("4.445", "8.838"), row(table, "α"));
    assertEquals(CaseTable.Why.NOT_CONTAINED, find(table.rows(), "β").why());
  }

  @Test
  void whatIfCanSayARelationOtherwise() {
    Result.Compared compared =
        (Result.Compared)
            run(sheet, "cell", "what if left: 2*F = T_1 sin(α), m_1 = 2*m_1 show α")
                .results()
                .get(0);
    assertEquals("left", compared.relations().get(0).name());
    assertEquals("F = T_1 sin(α)", compared.relations().get(0).before().text());
    // twice the push on twice the weight
    assertEquals(Result.Row.Why.CANCELS, compared.rows().get(1).why());
    assertEquals("8.838", number(run(sheet, "c", "what if left: 2*F = T_1 sin(α) show α")));
  }

  private static String number(Run run) {
    Result.Compared compared = (Result.Compared) run.results().get(0);
    return compared.rows().get(0).after().value().toPlainString();
  }

  @Test
  void withoutShowAllThatIsComputedIsShown() {
    CaseTable table = table("compare \"a\" with \"b\": d = 2*d");
    assertEquals(
        List.of("d", "F", "α", "β", "r"),
        table.rows().stream().map(r -> r.label().name().orElseThrow()).toList());
  }

  @Test
  void aCaseWithoutAValueSaysWhy() {
    run(sheet, "x", "x = sqrt(1 - d/(0.200 [m]))");
    CaseTable table = table("compare \"a\" with \"far\": d = 2*d show x in %");
    assertEquals(List.of("54.8", "–"), row(table, "x"));
    assertTrue(
        table.notes().get(0).startsWith("In “far”, x has no value: "), table.notes()::toString);
  }

  @Test
  void aChangedGivenUpdatesTheTable() {
    run(sheet, "table", "compare \"a\" with \"b\": d = 2*d show F");
    run(sheet, "all", "what if d = 2*d");
    List<String> updated = updated(run(sheet, "more", "given z = 2", "F_2 = z F"));
    assertEquals(List.of("all"), updated);
    run(sheet, "again", "compare \"a\" with \"b\": d = 2*d show F");
    assertTrue(
        updated(
                run(
                    sheet,
                    "givens",
                    "given m_1 = 2.70 g",
                    "given m_2 = 2.90 g",
                    "given q_1 = 67.0 nC",
                    "given q_2 = 67.0 nC",
                    "given d = 14.0 cm"))
            .containsAll(List.of("table", "all", "again"))); // the forces lean on m_2
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "compare \"a\"                            | ~~    | Here the line ends; “with” and another case belong here, as in: compare \"as it is\" with \"twice the mass\": m = 2*m. |",
        "compare a with b                         | a     | Here there is “a”; the name of a case belongs here, in quotation marks, as in: compare \"as it is\" with \"twice the mass\": m = 2*m. |",
        "compare \"a\" with \"a\": d = 2*d        | \"a\" | Two cases have the same name. | \"a, once more\"",
        "compare \"a\" with \"b\": x_9 = 2        | x_9   | I do not know “x_9” in this sheet. | define it first: given x_9 = …, or x_9 = …",
        "compare \"a\" with \"b\": d              | ~~    | Here the line ends; “=” and the other value belong here. |",
        "compare \"a\" with \"b\": d = 2 g        | 2 g   | “d” is a length; it cannot become a mass. |",
        "compare \"a\" with \"b\": d = 2*d, d = 1 m | d   | “d” is changed twice. | delete one of the two",
        "compare \"a\" with \"b\": left = 3       | left  | “left” is a relation; another form of it is written with a colon. | left: … = …",
        "compare \"a\" with \"b\": d: 3 = 4       | d     | “d” is a quantity; another value of it is written with =. | d = …",
        "compare \"a\" with \"b\": lft: F = d     | lft   | I know no relation “lft” in this sheet. | left",
        "what if left: F show α                   | show  | Here there is “show”; a relation says that two sides are equal: “=” belongs here. |",
        "what if d = 2*d, d = 3*d                 | d     | “d” is changed twice. | delete one of the two"
      })
  void whatIsWrongIsTold(String cell, String place, String sentence, String repair) {
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
    List<String> repairs = repair == null ? List.of() : List.of(repair);
    assertEquals(repairs, problem.repairs().stream().limit(repairs.size()).toList());
  }
}
