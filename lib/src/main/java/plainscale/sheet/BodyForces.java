package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Direction;
import plainscale.notation.Expr;
import plainscale.notation.ForcesEdition;
import plainscale.quantity.Quantity;

/**
 * The forces on one body and their sum, all in one unit. Components are “across”, to the right, and
 * “up”; angles are measured anticlockwise from “right”. On a slope there are components along it,
 * upwards, and away from it too.
 */
public record BodyForces(
    String body, @Nullable Quantity slope, List<Force> forces, Net net, ForcesEdition edition) {

  /** Keeps its own copy of the forces. */
  public BodyForces {
    forces = List.copyOf(forces);
  }

  /** The angle of the slope on which the body stands, if that was said. */
  public Optional<Quantity> onSlope() {
    return Optional.ofNullable(slope);
  }

  /** The force that would balance the others, if it was asked for and they do not balance. */
  public Optional<Net> balancing() {
    return edition == ForcesEdition.MISSING && net.balance() == Balance.NONE
        ? Optional.of(net.opposite())
        : Optional.empty();
  }

  /**
   * A force: what it is called, its formula, its size as the formula gives it (below zero it points
   * against {@code angle}), the direction as written, its components, and what exerts it.
   */
  public record Force(
      String label,
      Expr formula,
      Quantity size,
      Quantity angle,
      @Nullable Direction towards,
      Quantity across,
      Quantity up,
      @Nullable OnSlope slope,
      @Nullable String by) {
    /** Its components on a slope, if the body stands on one. */
    public Optional<OnSlope> onSlope() {
      return Optional.ofNullable(slope);
    }

    /** The direction, if it has a word. */
    public Optional<Direction> direction() {
      return Optional.ofNullable(towards);
    }

    /** What exerts it, if that was said. */
    public Optional<String> agent() {
      return Optional.ofNullable(by);
    }

    /** Whether its size is below zero, so that it points the other way. */
    public boolean reversed() {
      return size.value().signum() < 0;
    }
  }

  /** Components uphill and away from a slope. */
  public record OnSlope(Quantity uphill, Quantity away) {}

  /**
   * The sum of forces: its components, its size, its direction (none if nothing is left), and
   * whether it counts as zero.
   */
  public record Net(
      Quantity across,
      Quantity up,
      @Nullable OnSlope slope,
      Quantity size,
      @Nullable Quantity direction,
      Balance balance) {
    /** Its components on a slope, if the body stands on one. */
    public Optional<OnSlope> onSlope() {
      return Optional.ofNullable(slope);
    }

    /** Where it points, anticlockwise from “right”, from −180° to 180°. */
    public Optional<Quantity> angle() {
      return Optional.ofNullable(direction);
    }

    /** The force of the same size that points the other way. */
    Net opposite() {
      Quantity back = direction == null ? null : Resultant.reversed(direction);
      OnSlope turned =
          slope == null ? null : new OnSlope(slope.uphill.negate(), slope.away.negate());
      return new Net(across.negate(), up.negate(), turned, size, back, balance);
    }
  }

  /** Whether forces add up to zero, and in which sense. */
  public enum Balance {
    /** Nothing is left. */
    EXACT,
    /** Each component is zero within twice its standard uncertainty (JCGM 100:2008, 6.2.1). */
    UNCERTAINTY,
    /** Each component is zero to the figures that were written. */
    FIGURES,
    /** Something is left. */
    NONE
  }
}
