package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;
import static plainscale.api.Plainscale.at;
import static plainscale.api.Plainscale.caution;
import static plainscale.api.Plainscale.columns;
import static plainscale.api.Plainscale.contrast;
import static plainscale.api.Plainscale.data;
import static plainscale.api.Plainscale.dots;
import static plainscale.api.Plainscale.expand;
import static plainscale.api.Plainscale.field;
import static plainscale.api.Plainscale.forces;
import static plainscale.api.Plainscale.given;
import static plainscale.api.Plainscale.law;
import static plainscale.api.Plainscale.laws;
import static plainscale.api.Plainscale.named;
import static plainscale.api.Plainscale.near;
import static plainscale.api.Plainscale.quantity;
import static plainscale.api.Plainscale.relation;
import static plainscale.api.Plainscale.ruler;
import static plainscale.api.Plainscale.show;
import static plainscale.api.Plainscale.situation;
import static plainscale.api.Plainscale.squares;
import static plainscale.api.Plainscale.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import plainscale.data.DataTable;
import plainscale.notation.DataStatement.Curve;
import plainscale.notation.FieldItem.Shape;
import plainscale.notation.Statement.Telling;
import plainscale.render.Renderers;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/** What the façade gives is what the notation shows for the same thing. */
class NotationTest {
  private static final String CSV =
      "group,I (mA),U (V),u(U) (V)\na,20,1.03,0.02\nb,40,1.98,0.02\nc,60,3.05,0.02\nd,80,3.94,0.03\n";

  private static final DataTable CLASS = table("class.csv", CSV);

  private final List<DynamicTest> cases = new ArrayList<>();

  /** All lines but the last are defined first; the last one's results are compared. */
  private static String notation(String cell) {
    List<String> lines = cell.strip().lines().toList();
    Sheet sheet = new Sheet();
    sheet.hand(CLASS);
    for (int i = 0; i < lines.size() - 1; i++) {
      sheet.run("line " + i, lines.get(i));
    }
    return Renderers.text(
        sheet.run("last", lines.get(lines.size() - 1)).results().stream()
            .filter(result -> !(result instanceof Result.Noted)) // of names that were hidden
            .toList());
  }

  private void same(String cell, Supplier<Displayed> facade) {
    String name = cell.strip().lines().reduce((a, b) -> b).orElseThrow();
    cases.add(dynamicTest(name, () -> assertEquals(notation(cell), facade.get().text())));
  }

  @TestFactory
  Stream<DynamicTest> magnitudes() {
    same("4.19e11", () -> show(quantity("4.19e11")));
    same("6.71e-8 [C] in nC", () -> show(quantity("6.71e-8 C")).in("nC"));
    same("8.7e12 in digits", () -> show(quantity("8.7e12")).inDigits());
    same("8.7e12 in words indian", () -> show(quantity("8.7e12")).inWords("indian"));
    same("8.7e12 in full words de", () -> show(quantity("8.7e12")).inFullWords("de"));
    same("8.68e12 roughly", () -> show(quantity("8.68e12")).roughly());
    same("3.4e-5 in parts", () -> show(quantity("3.4e-5")).inParts());
    same("8.68e12 in orders", () -> show(quantity("8.68e12")).inOrders());
    same("8.68e12 to 2 figures", () -> show(quantity("8.68e12")).figures(2));
    same("contrast 4.19e11 with 8.13e23", () -> contrast(quantity("4.19e11"), quantity("8.13e23")));
    same(
        "contrast 4.19e11 with 8.13e23 by sharing \"Two\"",
        () -> contrast(quantity("4.19e11"), quantity("8.13e23")).by("sharing").titled("Two"));
    same(
        """
        a = 4.19e11 "moved"
        b = 8.13e23 "there"
        contrast a with b
        """,
        () ->
            contrast(
                named("a", quantity("4.19e11"), "moved"),
                named("b", quantity("8.13e23"), "there")));
    same("near 3.2 [kg]", () -> near(quantity("3.2 kg")));
    same("expand 4.7e13", () -> expand(quantity("4.7e13")));
    same("expand 5.3e-7 with boxes", () -> situation().expandWithBoxes("5.3e-7"));
    same("ruler 0.14 [m] with 3.84e8 [m]", () -> ruler(quantity("0.14 m"), quantity("3.84e8 m")));
    same(
        "squares 1 with 4.7e13 \"One in many\"",
        () -> squares(quantity("1"), quantity("4.7e13")).titled("One in many"));
    same("dots 28 with 1.2e3", () -> dots(quantity("28"), quantity("1.2e3")));
    return cases.stream();
  }

  private static final String BALLS =
      """
      given m = 2.70 ± 0.05 g "mass of one ball"
      given s = 0.900(2) m "thread"
      given d = 14.0 ± 0.5 cm
      relation level: k_e q^2/d^2 = T sin(θ) "electric push = sideways pull"
      relation upright: m g_n = T cos(θ)
      relation shape: sin(θ) = d/(2*s)
      """;

  private static Situation balls() {
    return given("m", quantity("2.70 ± 0.05 g"), "mass of one ball")
        .given("s", quantity("0.900(2) m"), "thread")
        .given("d", "14.0 ± 0.5 cm")
        .relation("level", "k_e q^2/d^2 = T sin(θ)", "electric push = sideways pull")
        .relation("upright", "m g_n = T cos(θ)")
        .relation("shape", "sin(θ) = d/(2*s)");
  }

  private static final String SOLVED = BALLS + "solve level, upright, shape for q in nC\n";

  private static Situation solved() {
    return balls().solveFor("q").in("nC").situation();
  }

  @TestFactory
  Stream<DynamicTest> derivations() {
    same(SOLVED, () -> balls().solveFor("q").in("nC"));
    same(
        BALLS + "solve level, upright, shape for q with small θ with answer \"charge\"",
        () -> balls().solveFor("q").small("θ").telling(Telling.ANSWER).described("charge"));
    same(
        """
        given h_b = 15.0 m
        given v_b = 20.0 m/s
        relation height: h_b = v_b t_b - 1/2 g_n t_b^2
        solve height for t_b with t_b > 2 s
        """,
        () ->
            relation("height", "h_b = v_b t_b - 1/2 g_n t_b^2")
                .solveFor("t_b")
                .with("h_b", "15.0 m")
                .with("v_b", quantity("20.0 m/s"))
                .where("t_b > 2 s"));
    same(SOLVED + "what if d = 2*d show q, m", () -> solved().whatIf("d", "2*d").show("q", "m"));
    same(SOLVED + "what if q = 3*q show d", () -> solved().whatIf("q", "3*q").show("d"));
    same(
        SOLVED + "what if shape: sin(θ) = d/s show q",
        () -> WhatIf.of(solved()).andRelation("shape", "sin(θ) = d/s").show("q"));
    same(
        SOLVED + "compare \"now\" with \"far\": d = 2*d show q in nC",
        () -> solved().compare("now").with("far", "d = 2*d").show("q in nC"));
    same(
        SOLVED + "vary d from 8 cm to 24 cm by 8 cm show q in nC",
        () -> solved().vary("d", quantity("8 cm"), quantity("24 cm"), quantity("8 cm"), "q in nC"));
    same(SOLVED + "depends q on m", () -> solved().depends("q", "m"));
    same(SOLVED + "limit d to 0 cm show q", () -> solved().limit("d", "0 cm", "q"));
    same(SOLVED + "budget q", () -> solved().budget("q"));
    same(SOLVED + "budget q with 2000 trials seed 7", () -> solved().budget("q", 2000, 7));
    same(
        SOLVED + "say \"From {shape} comes {q in words}, in {steps of q} steps.\"",
        () -> solved().say("From {shape} comes {q in words}, in {steps of q} steps."));
    same(
        SOLVED + "expect q between 1 nC and 50 nC \"rubbed\"",
        () -> solved().expect("q").because("rubbed").between(quantity("1 nC"), quantity("50 nC")));
    same(
        SOLVED + "expect d about 15 cm within 10 %",
        () -> solved().expect("d").about("15 cm", "10 %"));
    return cases.stream();
  }

  @TestFactory
  Stream<DynamicTest> lawsAndCautions() {
    same("use pendulum", () -> law("pendulum"));
    same(
        "use coulomb as push with F = F_e, q_1 = q, q_2 = q \"of two balls\"",
        () ->
            law("coulomb")
                .as("push")
                .with("F", "F_e")
                .with("q_1", "q")
                .with("q_2", "q")
                .described("of two balls"));
    same("use \"how long does it swing\"", () -> laws("how long does it swing"));
    same(
        """
        given s = 0.750(2) m
        use pendulum as swing with T = T_s, l = s
        solve swing for T_s
        """,
        () ->
            law("pendulum")
                .with("T", "T_s")
                .with("l", "s")
                .as("swing")
                .solveFor("T_s")
                .with("s", quantity("0.750(2) m")));
    same(
        """
        constants textbook
        k_e*(1.60e-19 [C])^2/(0.530e-10 [m])^2
        """,
        () -> situation().textbookConstants().showValue("k_e*(1.60e-19 [C])^2/(0.530e-10 [m])^2"));
    same("caution latex", () -> caution("latex"));
    same(
        """
        caution electrostatic_generator
        W = 0.75 [J] "energy stored on the dome"
        """,
        () ->
            new Of(
                situation()
                    .withHazards("electrostatic_generator")
                    .define("W", "0.75 [J]", "energy stored on the dome")
                    .results("W")));
    same(
        """
        locale en-IN
        show 1.658e21 in words
        """,
        () -> situation().locale("en-IN").show("1.658e21").inWords());
    return cases.stream();
  }

  /** Some results by themselves. */
  private record Of(List<Result> results) implements Displayed {}

  private static final String PAIR =
      """
      forces on left: weight (2.70 [g]) g_n down by "Earth", push 2.06 [mN] left by "right"
      forces on right: weight (2.70 [g]) g_n down by "Earth", push 2.06 [mN] right by "left"
      """;

  private static ForcesOn left() {
    return forces("left")
        .weight(quantity("2.70 g"))
        .force("push", quantity("2.06 mN"))
        .left()
        .by("right");
  }

  private static ForcesOn right() {
    return left().and("right").weight("2.70 [g]").force("push", "2.06 [mN]").right().by("left");
  }

  @TestFactory
  Stream<DynamicTest> forcesOnBodies() {
    same(PAIR.lines().findFirst().orElseThrow(), NotationTest::left);
    same(PAIR, NotationTest::right);
    same(PAIR + "pairs", () -> right().pairs());
    same(
        "forces on book: support 4.7 [N] up by \"table\", pull 5 [N] along 210° with missing",
        () ->
            forces("book")
                .force("support", quantity("4.7 N"))
                .up()
                .by("table")
                .force("pull", "5 [N]")
                .along("210°")
                .withMissing());
    same(
        "forces on crate slope 25.0 [°]: support 22.2 [N] away by plank with directions",
        () ->
            forces("crate")
                .onSlope(quantity("25.0°"))
                .force("support", quantity("22.2 N"))
                .away()
                .by("plank")
                .withDirections());
    same(
        """
        forces on left: push 3.1 [N] left by "right"
        forces on right mirrors left
        """,
        () ->
            new Of(
                forces("left")
                    .force("push", quantity("3.1 N"))
                    .left()
                    .by("right")
                    .mirroredBy("right")
                    .results("forces on \"right\"")));
    return cases.stream();
  }

  private static final String DIPOLE =
      """
      given d = 14.0 cm
      field pair: charge 3.00 [nC] at (-d/2, 0 cm), charge -3.00 [nC] at (d/2, 0 cm) "two"
      """;

  private static FieldOf dipole() {
    return given("d", quantity("14.0 cm"))
        .field("pair")
        .charge(quantity("3.00 nC"), at("-d/2", "0 cm"))
        .charge(quantity("-3.00 nC"), at("d/2", "0 cm"))
        .described("two");
  }

  @TestFactory
  Stream<DynamicTest> fields() {
    same(DIPOLE, NotationTest::dipole);
    same(
        DIPOLE + "potential of pair at (0 cm, 5.00 cm)",
        () -> dipole().potential(at(quantity("0 cm"), quantity("5.00 cm"))));
    same(DIPOLE + "map pair", () -> dipole().map());
    same(
        DIPOLE + "map pair from (-8 cm, -6 cm) to (8 cm, 6 cm) with vectors",
        () -> dipole().arrows(at("-8 cm", "-6 cm"), at("8 cm", "6 cm")));
    same(DIPOLE + "relief pair", () -> dipole().relief());
    same(
        DIPOLE + "section pair from (-12 cm, 2 cm) to (12 cm, 2 cm)",
        () -> dipole().section(at("-12 cm", "2 cm"), at("12 cm", "2 cm")));
    same(
        DIPOLE
            + "release charge 1.0 nC mass 1.0 mg at (0 cm, 6 cm) moving (0.5 m/s, 0 m/s)"
            + " in pair for 0.1 s",
        () ->
            dipole()
                .release(quantity("1.0 mg"), at("0 cm", "6 cm"))
                .charged(quantity("1.0 nC"))
                .moving(at("0.5 m/s", "0 m/s"))
                .during(quantity("0.1 s")));
    same(
        "field coil: ring 2.0 [nC] radius 3.0 [cm] at (0 cm, 0 cm) flat,"
            + " line 1.0 [nC] from (1 cm, 0 cm) to (1 cm, 2 cm)",
        () ->
            field("coil")
                .flat(Shape.RING, quantity("2.0 nC"), quantity("3.0 cm"), at("0 cm", "0 cm"))
                .line(quantity("1.0 nC"), at("1 cm", "0 cm"), at("1 cm", "2 cm")));
    return cases.stream();
  }

  private static final String READ = "data \"class.csv\"\n";

  @TestFactory
  Stream<DynamicTest> classData() {
    same(READ, () -> data(CLASS));
    same(READ + "statistics U against 2.5 V", () -> data(CLASS).statistics("U", quantity("2.5 V")));
    same(READ + "histogram U \"Voltages\"", () -> data(CLASS).histogram("U").titled("Voltages"));
    same(
        READ + "fit line U against I as R_1, U_0 with weights y",
        () -> data(CLASS).fitLine("U", "I").as("R_1", "U_0").weightedByY());
    same(READ + "fit power U against I", () -> data(CLASS).fit(Curve.POWER, "U", "I"));
    same(READ + "plot U against I with log both", () -> data(CLASS).plot("U", "I").logBoth());
    same(
        READ
            + """
            given i = 100 mA
            V = 50 [Ω]*i
            plot V against i from 0 mA to 200 mA with points U against I "both"
            """,
        () ->
            data(CLASS)
                .given("i", "100 mA")
                .define("V", "50 [Ω]*i")
                .plot("V", "i")
                .along(quantity("0 mA"), quantity("200 mA"))
                .points("U", "I")
                .titled("both"));
    same(READ, () -> data(fromLists()));
    return cases.stream();
  }

  private static DataTable fromLists() {
    return columns("class.csv")
        .words("group", List.of("a", "b", "c", "d"))
        .numbers("I", "mA", List.of(20, 40, 60, 80))
        .quantities(
            "U",
            "V",
            Stream.of("1.03 ± 0.02 V", "1.98 ± 0.02 V", "3.05 ± 0.02 V", "3.94 ± 0.03 V")
                .map(Plainscale::quantity)
                .collect(Collectors.toList()))
        .table();
  }

  @TestFactory
  Stream<DynamicTest> uncertainty() {
    String together = "given U = 5.007, 4.994, 5.005 V\ngiven I = 19.663, 19.639, 19.640 mA\n";
    cases.add(
        dynamicTest(
            "together",
            () -> {
              Sheet sheet = new Sheet();
              sheet.run("1", together + "together U, I\nZ = U/I");
              Situation readings =
                  situation()
                      .together("U = 5.007, 4.994, 5.005 V", "I = 19.663, 19.639, 19.640 mA")
                      .define("Z", "U/I");
              assertEquals(
                  Renderers.text(sheet.run("2", "budget Z").results()),
                  readings.budget("Z").text());
            }));
    same(
        """
        given t = 1.21, 1.25, 1.19, 1.22, 1.23 s "five runs"
        given y = 7.35 ± 0.05 m rectangular
        g = 2*y/t^2
        budget g
        """,
        () ->
            given("t", "1.21, 1.25, 1.19, 1.22, 1.23 s", "five runs")
                .given("y", "7.35 ± 0.05 m rectangular")
                .define("g", "2*y/t^2")
                .budget("g"));
    return cases.stream();
  }
}
