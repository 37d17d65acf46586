package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.Writing;
import plainscale.notation.Direction;
import plainscale.notation.ForcesEdition;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.BodyForces;
import plainscale.sheet.Result;

/** The forces on a body as a table and sentences, the same in every medium. */
final class ForcesText {
  private static final List<String> HEAD =
      List.of("force", "size", "direction", "across (+ right)", "up (+)", "by");

  private static final List<String> SLOPE =
      List.of("force", "size", "direction", "uphill (+)", "away (+)", "by");

  /** Figures of a direction in a sentence. */
  private static final int FIGURES = 2;

  private static final double RIGHT_ANGLE = 90;

  /** Below this many degrees a direction is the word itself. */
  private static final double STRAIGHT = 1e-6;

  private final BodyForces diagram;
  private final Writing writing;

  ForcesText(Result.Forces forces) {
    this.diagram = forces.diagram();
    this.writing = forces.writing();
  }

  String head() {
    return "Forces on " + Bodies.the(diagram.body());
  }

  /** Nothing where sizes are left for students to find. */
  List<List<List<String>>> tables() {
    if (!diagram.edition().isOpen()) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>(List.of(diagram.onSlope().isEmpty() ? HEAD : SLOPE));
    diagram.forces().forEach(force -> rows.add(row(force)));
    if (diagram.forces().size() > 1) {
      BodyForces.Net net = diagram.net();
      String first = number(net.onSlope().map(BodyForces.OnSlope::uphill).orElse(net.across()));
      String second = number(net.onSlope().map(BodyForces.OnSlope::away).orElse(net.up()));
      rows.add(List.of("all together", "", "", first, second, ""));
    }
    return List.of(rows);
  }

  private List<String> row(BodyForces.Force force) {
    return List.of(
        force.label(),
        number(force.size()),
        direction(force, writing) + (force.reversed() ? " (against it)" : ""),
        number(force.onSlope().map(BodyForces.OnSlope::uphill).orElse(force.across())),
        number(force.onSlope().map(BodyForces.OnSlope::away).orElse(force.up())),
        force.agent().orElse("–"));
  }

  private String number(Quantity quantity) {
    return ValueText.number(quantity.shown(), writing);
  }

  /** “down”, “along 85.5°”. */
  static String direction(BodyForces.Force force, Writing writing) {
    return force
        .direction()
        .map(Direction::word)
        .orElseGet(() -> "along " + ValueText.number(force.angle().shown(), writing));
  }

  /** Whether they balance, what would make them, and what points against its word. */
  List<String> sentences() {
    if (!diagram.edition().isOpen()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add(verdict());
    if (diagram.edition() == ForcesEdition.MISSING) {
      lines.add(
          diagram
              .balancing()
              .map(net -> "Missing for a balance is a force of %s.".formatted(placed(net)))
              .orElse("No force is missing."));
    }
    diagram.forces().stream()
        .filter(BodyForces.Force::reversed)
        .forEach(force -> lines.add(reversed(force)));
    lines.addAll(twice());
    return lines;
  }

  /** What the forces on a body add up to, in one sentence. */
  static String verdict(BodyForces forces, Writing writing) {
    return new ForcesText(new Result.Forces(forces, writing)).verdict();
  }

  private String verdict() {
    boolean alone = diagram.forces().size() == 1;
    return switch (diagram.net().balance()) {
      case EXACT -> (alone ? "It is zero" : "They balance") + ": nothing is left.";
      case UNCERTAINTY ->
          "%s: what is left is zero within its expanded uncertainty (k = 2)."
              .formatted(alone ? "It may be zero" : "They balance");
      case FIGURES ->
          "%s: what is left is zero to the figures that were written."
              .formatted(alone ? "It may be zero" : "They balance");
      case NONE ->
          "%s: what is left is %s."
              .formatted(
                  alone ? "One force alone does not balance" : "They do not balance",
                  placed(diagram.net()));
    };
  }

  private String placed(BodyForces.Net net) {
    String towards =
        net.onSlope()
            .flatMap(ForcesText::alongSlope)
            .or(() -> net.angle().map(a -> words(a, writing)))
            .orElse("nowhere");
    return number(net.size()) + ", " + towards;
  }

  /** “downhill”, if that or another word for slopes is where it points. */
  private static Optional<String> alongSlope(BodyForces.OnSlope slope) {
    double uphill = slope.uphill().value().doubleValue();
    double away = slope.away().value().doubleValue();
    double tilt = Math.toDegrees(Math.atan2(Math.abs(away), Math.abs(uphill)));
    if (tilt < STRAIGHT) {
      return Optional.of(uphill > 0 ? "uphill" : "downhill");
    }
    return RIGHT_ANGLE - tilt < STRAIGHT
        ? Optional.of(away > 0 ? "away from the slope" : "into the slope")
        : Optional.empty();
  }

  /** A force that stands there twice, which may be a slip. */
  private List<String> twice() {
    List<BodyForces.Force> forces = diagram.forces();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < forces.size(); i++) {
      BodyForces.Force force = forces.get(i);
      if (forces.subList(0, i).stream().anyMatch(before -> isSame(before, force))) {
        lines.add("“%s” stands here twice, and both count.".formatted(force.label()));
      }
    }
    return lines;
  }

  private static boolean isSame(BodyForces.Force one, BodyForces.Force other) {
    return one.label().equalsIgnoreCase(other.label())
        && one.agent().equals(other.agent())
        && one.size().value().compareTo(other.size().value()) == 0
        && one.angle().value().compareTo(other.angle().value()) == 0;
  }

  private String reversed(BodyForces.Force force) {
    String meant =
        force
            .direction()
            .map(word -> "points " + word.opposite().word() + ", not " + word.word())
            .orElse("points against its angle");
    return "The size of “%s” is below zero, so it %s.".formatted(force.label(), meant);
  }

  /** A direction from −180° to 180° in words: “left”, “12° above right”. */
  static String words(Quantity angle, Writing writing) {
    double degrees = Math.toDegrees(angle.value().doubleValue());
    boolean left = Math.abs(degrees) > RIGHT_ANGLE;
    double slope = left ? 2 * RIGHT_ANGLE - Math.abs(degrees) : Math.abs(degrees);
    String upright = degrees > 0 ? "up" : "down";
    String level = left ? "left" : "right";
    if (slope < STRAIGHT) {
      return level;
    }
    if (RIGHT_ANGLE - slope < STRAIGHT) {
      return upright;
    }
    return "%s %s %s"
        .formatted(slope(angle, slope, writing), degrees > 0 ? "above" : "below", level);
  }

  private static String slope(Quantity angle, double slope, Writing writing) {
    Shown whole = new Shown(BigDecimal.valueOf(slope), null, angle.displayUnit());
    Shown rounded = slope < 1 ? whole.toFigures(1) : whole.toFigures(FIGURES);
    return ValueText.number(rounded, writing);
  }
}
