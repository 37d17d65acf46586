package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.marked;
import static plainscale.sheet.Cells.onlyProblem;
import static plainscale.sheet.Cells.remarks;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.updated;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.notation.Direction;
import plainscale.notation.Problem;
import plainscale.quantity.Quantity;

/** Forces on a body: components, sum, balance. */
class ForcesTest {
  private final Sheet sheet = new Sheet();

  private BodyForces diagram(String... lines) {
    List<Result> results = run(sheet, "cell", lines).results();
    return ((Result.Forces) results.get(results.size() - 1)).diagram();
  }

  private static double newtons(Quantity force) {
    return force.value().doubleValue();
  }

  private static double degrees(Quantity angle) {
    return Math.toDegrees(angle.value().doubleValue());
  }

  /**
   * A tightrope walker of 70.0 kg on a wire that sags by 5.0° on either side: College Physics 2e,
   * example 4.6 (m42075 #fs-id986136), which prints w = 686 N and T = 3900 N; 3935 N unrounded.
   */
  private void walker() {
    run(
        sheet,
        "walker",
        "constants textbook",
        "given m = 70.0 kg",
        "given θ = 5.0°",
        "w = m g_n",
        "T = w/(2*sin(θ))");
  }

  @Test
  void theWalkerStands() {
    walker();
    BodyForces forces =
        diagram(
            "forces on walker: weight w down, wire_1 T along θ, wire_2 T along 180° − θ with"
                + " missing");
    assertEquals(BodyForces.Balance.EXACT, forces.net().balance());
    assertEquals(3935, newtons(forces.forces().get(1).size()), 1);
    assertEquals(343, newtons(forces.forces().get(1).up()), 0.1);
    assertEquals(-3920.5, newtons(forces.forces().get(2).across()), 0.1); // 343 N/tan 5.0°
    assertEquals(Optional.empty(), forces.balancing());
  }

  @Test
  void thePrintedTensionBalancesToItsFigures() {
    walker();
    BodyForces forces =
        diagram(
            "forces on walker: weight w down, wire_1 3.9e3 [N] along θ, wire_2 3.9e3 [N] along"
                + " 180° − θ");
    assertEquals(BodyForces.Balance.FIGURES, forces.net().balance());
  }

  @Test
  void theTensionWithTheCosineForTheSineDoesNotBalance() {
    walker();
    BodyForces forces =
        diagram(
            "T_2 = w/(2*cos(θ))",
            "forces on walker: weight w down, wire_1 T_2 along θ, wire_2 T_2 along 180° − θ with"
                + " missing");
    // 686 N − 2 × 344.3 N × sin 5.0° = 626.0 N
    assertEquals(BodyForces.Balance.NONE, forces.net().balance());
    assertEquals(626.0, newtons(forces.net().size()), 0.1);
    assertEquals(-90, degrees(forces.net().angle().orElseThrow()), 1e-9);
    assertEquals(90, degrees(forces.balancing().orElseThrow().angle().orElseThrow()), 1e-9);
  }

  /**
   * A ladder of 400.0 N leans at 53° on a wall without friction: University Physics 1, example 12.5
   * (m58341), which prints 150.7 N for the wall and for the friction at the floor.
   */
  @Test
  void theLadderLacksTheForceOfTheFloor() {
    run(sheet, "ladder", "given w = 400.0 N", "F = w/(2*tan(53.0°))");
    BodyForces forces =
        diagram("forces on ladder: weight w down by Earth, wall F left by wall with missing");
    assertEquals(150.7, newtons(forces.forces().get(1).size()), 0.05);
    BodyForces.Net floor = forces.balancing().orElseThrow();
    assertEquals(400.0, newtons(floor.up()), 1e-9);
    assertEquals(150.7, newtons(floor.across()), 0.05);
    // √(400.0² + 150.71²) = 427.45; atan(400.0/150.71) = 69.36°
    assertEquals(427.45, newtons(floor.size()), 0.05);
    assertEquals(69.36, degrees(floor.angle().orElseThrow()), 0.01);
    BodyForces complete =
        diagram(
            "forces on ladder: weight w down by Earth, wall F left by wall, support 400.0 [N] up"
                + " by floor, friction 150.7 [N] right by floor");
    assertEquals(BodyForces.Balance.FIGURES, complete.net().balance());
  }

  @Test
  void sizeAndDirectionOfTheSumHaveTheirUncertainties() {
    run(sheet, "g", "given F_x = 3.0 ± 0.1 N", "given F_y = 4.0 ± 0.2 N");
    BodyForces.Net net = diagram("forces on ring: a F_x right, b F_y up").net();
    assertEquals(5, newtons(net.size()), 1e-12);
    // √((0.6 × 0.1)² + (0.8 × 0.2)²)
    assertEquals(0.170880, net.size().uncertainty().standard(), 1e-6);
    Quantity angle = net.angle().orElseThrow();
    assertEquals(53.130102, degrees(angle), 1e-6);
    // √((4/25 × 0.1)² + (3/25 × 0.2)²) rad
    assertEquals(0.0288444, angle.uncertainty().standard(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({
    "5.00 ± 0.03 N, 4.95 ± 0.02 N, UNCERTAINTY", // 0.05 within 2 × 0.036
    "5.00 ± 0.03 N, 4.90 ± 0.02 N, NONE",
    "5.00 N, 5.00 N, EXACT",
    "5.00 N, 5.01 N, NONE",
    "5.00 N, 5.0 N, EXACT",
    "5.0 N, 4.9 N, NONE",
    "0.0 N, 0.0 N, EXACT",
    "5.0 N, 4.98 N, FIGURES"
  })
  void balanceIsJudgedByWhatIsKnown(String down, String up, BodyForces.Balance balance) {
    run(sheet, "g", "given a_1 = " + down, "given b_1 = " + up);
    assertEquals(balance, diagram("forces on book: a a_1 down, b b_1 up").net().balance());
  }

  @Test
  void theSameMeasurementInSizeAndDirectionIsKnownToBe() {
    run(
        sheet,
        "g",
        "given w = 26.5 ± 0.5 mN",
        "given α = 4.4 ± 0.4 °",
        "F = w tan(α)",
        "T = w/cos(α)");
    BodyForces forces =
        diagram("forces on ball: weight w down, push F left, thread T along 90° − α");
    assertEquals(BodyForces.Balance.EXACT, forces.net().balance());
    // the thread's pull to the side is F, with its uncertainty: w α's (1 + tan²), F's own share of
    // w
    Quantity across = forces.forces().get(2).across();
    Quantity push = forces.forces().get(1).size();
    assertEquals(push.uncertainty().standard(), across.uncertainty().standard(), 1e-12);
  }

  @Test
  void aSizeBelowZeroPointsTheOtherWay() {
    BodyForces.Force force =
        diagram("forces on ball: push 3 [N] − 5 [N] right by wind").forces().get(0);
    assertTrue(force.reversed());
    assertEquals(-2, newtons(force.across()), 1e-12);
    assertEquals(Optional.of(Direction.RIGHT), force.direction());
    assertEquals(Optional.of("wind"), force.agent());
  }

  @Test
  void allForcesHaveTheUnitInWhichTheLargestReadsBest() {
    run(sheet, "g", "given m = 2.70 g", "w = m g_n");
    BodyForces forces = diagram("forces on ball: weight w down, push w/1000 left");
    assertEquals("mN", forces.forces().get(1).size().displayUnit().text());
    assertEquals("mN", forces.net().up().displayUnit().text());
  }

  @Test
  void theNewestDeclarationCountsAndEarlierCellsFollow() {
    run(sheet, "g", "given F = 3.0 N");
    run(sheet, "a", "forces on \"left ball\": push F left by \"right ball\"");
    run(sheet, "p", "pairs");
    assertEquals(List.of("a", "p"), updated(run(sheet, "g", "given F = 4.0 N")));
    Run again = run(sheet, "b", "forces on \"left ball\": push 2*F left by hand");
    assertEquals(
        List.of(
            "“forces on left ball” was defined in another cell; from now on this definition"
                + " counts."),
        remarks(again.results()));
    assertEquals(List.of("a", "p"), updated(again));
    assertEquals(
        List.of("p"), updated(run(sheet, "c", "forces on hand: push 2*F right by \"left ball\"")));
  }

  @Test
  void twiceInOneCellIsTold() {
    Problem problem =
        onlyProblem(sheet.run("cell", "forces on a: x 1 [N] up\nforces on a: y 1 [N] up"));
    assertEquals("“forces on a” is defined twice in this cell; line 1 counts.", problem.sentence());
  }

  @Test
  void aBodyIsNoName() {
    run(sheet, "a", "forces on ball: push 3 [N] left");
    assertTrue(sheet.names().all().stream().noneMatch(name -> name.contains("ball")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "forces ball: push F left              | ball | Here there is “ball”; “on” and the body belong here, as in: forces on \"ball\": weight m g_n down by \"Earth\". |",
        "forces on: push F left                | :    | Here there is “:”; the name of the body belongs here, as in: forces on \"ball\": weight m g_n down by \"Earth\". |",
        "forces on \" \": push F left          | \" \" | Here there is “\" \"”; the name of the body belongs here, as in: forces on \"ball\": weight m g_n down by \"Earth\". |",
        "forces on left ball: push F left      | left ball | A name of several words stands in quotation marks. | \"left ball\"",
        "forces on ball push F left            | push | After the body comes a colon. | on \"ball\": …",
        "forces on ball:                       | ~~   | Here the line ends; what the force is called belongs here, as in: forces on \"ball\": weight m g_n down by \"Earth\". |",
        "forces on ball: push F                | ~~   | After the size of a force comes its direction: up, down, left, right, or along an angle. | … down",
        "forces on ball: push F, pull F up     | F,   | After the size of a force comes its direction: up, down, left, right, or along an angle. | … down",
        "forces on ball: push F lft            | lft  | I know no direction “lft”. | left",
        "forces on ball: push F upwards by air | upwards | I know no direction “upwards”. | up",
        "forces on ball: push F west           | west | I know no direction “west”. | left",
        "forces on ball: F up                  | F up | Between what the force is called and its direction stands its size. | pull F up",
        "forces on ball: push F along          | ~~   | Here the line ends; an angle from “right” belongs here, as in: along 30°. |",
        "forces on ball: push F along 30       | 30   | “along” takes an angle, and this is a plain number. | along 30°",
        "forces on ball: push F along 2*15     | 2*15 | “along” takes an angle, and this is a plain number. | along (2*15) [°]",
        "forces on ball: push F along m        | m    | “along” takes an angle, and this is a mass. | along 30°",
        "forces on ball: weight m down         | m    | “weight” needs a force as its size; m is a mass. | weight m g_n",
        "forces on ball: push s up             | s    | “push” needs a force as its size; s is a length. | forces of this sheet: F",
        "forces on ball: push 3 up             | 3    | “push” needs a force as its size; 3 is a plain number. | push 3 [N]",
        "forces on ball: push F up by          | ~~   | Here the line ends; what exerts the force belongs here, as in: by \"Earth\". |",
        "forces on ball: push F up by the wind | the wind | A name of several words stands in quotation marks. | \"the wind\"",
        "forces on ball: push F up by Ball    | Ball | A body exerts no force on itself; after “by” stands what pulls or pushes it. | by \"Earth\"",
        "forces on ball: push F up by \"air\" pull F up | pull | Between two forces stands a comma. | , pull",
        "forces on ball: push F up pull F up  | pull | Between two forces stands a comma. | , pull",
        "forces on ball: push F up with force  | force | Here there is “force”; one of these words belongs here: missing, directions, dot. |",
        "forces on ball: push x_9 up           | x_9  | I do not know “x_9” in this sheet. | define it first: given x_9 = …, or x_9 = …"
      })
  void whatIsWrongIsTold(String cell, String place, String sentence, String repair) {
    run(sheet, "g", "given F = 3.0 N", "given m = 2.70 g", "given s = 1.0 m");
    Problem problem = onlyProblem(sheet.run("cell", cell));
    assertEquals(sentence, problem.sentence());
    assertEquals(place, marked(problem));
    List<String> repairs = repair == null ? List.of() : List.of(repair);
    assertEquals(repairs, problem.repairs().stream().limit(repairs.size()).toList());
  }

  @Test
  void aQuantityOfADirectionsNameIsTold() {
    run(sheet, "g", "given left = 3.0 N");
    Problem problem = onlyProblem(sheet.run("cell", "forces on ball: push left left"));
    assertEquals(
        "Between what the force is called and its direction stands its size.", problem.sentence());
    Problem other = onlyProblem(sheet.run("cell", "forces on ball: push 2*3.0 [N] left"));
    assertEquals(
        "“left” is a direction in this line, and also a quantity of this sheet.", other.sentence());
    assertEquals("left", marked(other));
  }

  @Test
  void aMirrorImageHasLeftAndRightExchangedAndFollowsItsOriginal() {
    String original =
        "forces on \"left one\": push P_m left by \"right one\","
            + " pull 2*P_m along 90° - α_m by hook";
    run(sheet, "g", "given P_m = 3.0 N", "given α_m = 20.0°");
    BodyForces left = first(run(sheet, "left", original));
    BodyForces right = first(run(sheet, "right", "forces on \"right one\" mirrors \"left one\""));
    for (int i = 0; i < 2; i++) {
      double across = left.forces().get(i).across().value().doubleValue();
      assertEquals(-across, right.forces().get(i).across().value().doubleValue(), 1e-12);
      double up = left.forces().get(i).up().value().doubleValue();
      assertEquals(up, right.forces().get(i).up().value().doubleValue(), 1e-12);
    }
    assertEquals("left one", right.forces().get(0).agent().orElseThrow());
    Run changed = run(sheet, "g", "given P_m = 4.0 N", "given α_m = 20.0°");
    assertTrue(updated(changed).contains("right"), changed::toString);
  }

  private static BodyForces first(Run run) {
    return ((Result.Forces) run.results().get(0)).diagram();
  }

  @Test
  void whatCannotBeMirroredIsTold() {
    run(sheet, "a", "forces on cart: push 3 [N] left by wagon");
    run(sheet, "b", "forces on wagon mirrors cart");
    assertEquals(
        "“wagon” is a mirror image itself.",
        onlyProblem(sheet.run("c", "forces on third mirrors wagon")).sentence());
    assertEquals(
        "This sheet declares no forces on “train”.",
        onlyProblem(sheet.run("d", "forces on fourth mirrors train")).sentence());
    assertEquals(
        "A body is no mirror image of itself.",
        onlyProblem(sheet.run("e", "forces on fifth mirrors fifth")).sentence());
  }
}
