package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.notation.Direction;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.ForceDiagram;
import plainscale.sheet.Result;

/** The forces on a body as a table and sentences, the same in every medium. */
final class ForcesText {
  private static final List<String> HEAD =
      List.of("force", "size", "direction", "across (+ right)", "up (+)", "by");

  /** Figures of a direction in a sentence. */
  private static final int FIGURES = 2;

  private static final double RIGHT_ANGLE = 90;

  /** Below this many degrees a direction is the word itself. */
  private static final double STRAIGHT = 1e-6;

  private final ForceDiagram diagram;
  private final Writing writing;

  ForcesText(Result.Forces forces) {
    this.diagram = forces.diagram();
    this.writing = forces.writing();
  }

  String head() {
    return "Forces on " + Bodies.the(diagram.body());
  }

  List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>(List.of(HEAD));
    diagram.forces().forEach(force -> rows.add(row(force)));
    if (diagram.forces().size() > 1) {
      ForceDiagram.Net net = diagram.net();
      rows.add(List.of("all together", "", "", number(net.across()), number(net.up()), ""));
    }
    return rows;
  }

  private List<String> row(ForceDiagram.Force force) {
    return List.of(
        force.label(),
        number(force.size()),
        direction(force, writing) + (force.reversed() ? " (against it)" : ""),
        number(force.across()),
        number(force.up()),
        force.agent().orElse("–"));
  }

  private String number(Quantity quantity) {
    return ValueText.number(quantity.shown(), writing);
  }

  /** “down”, “along 85.5°”. */
  static String direction(ForceDiagram.Force force, Writing writing) {
    return force
        .direction()
        .map(Direction::word)
        .orElseGet(() -> "along " + ValueText.number(force.angle().shown(), writing));
  }

  /** Whether they balance, what would make them, and what points against its word. */
  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    lines.add(verdict());
    if (diagram.missing()) {
      lines.add(
          diagram
              .balancing()
              .map(net -> "Missing for a balance is a force of %s.".formatted(placed(net)))
              .orElse("No force is missing."));
    }
    diagram.forces().stream()
        .filter(ForceDiagram.Force::reversed)
        .forEach(force -> lines.add(reversed(force)));
    return lines;
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

  private String placed(ForceDiagram.Net net) {
    return number(net.size()) + ", " + net.angle().map(a -> words(a, writing)).orElse("nowhere");
  }

  private String reversed(ForceDiagram.Force force) {
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
