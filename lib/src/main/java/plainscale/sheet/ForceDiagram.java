package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Direction;
import plainscale.notation.Expr;
import plainscale.quantity.Quantity;

/**
 * The forces on one body and their sum, all in one unit. Components are “across”, to the right, and
 * “up”; angles are measured anticlockwise from “right”. {@code missing}: what would balance them
 * was asked for.
 */
public record ForceDiagram(String body, List<Force> forces, Net net, boolean missing) {

  /** Keeps its own copy of the forces. */
  public ForceDiagram {
    forces = List.copyOf(forces);
  }

  /** The force that would balance the others, if it was asked for and they do not balance. */
  public Optional<Net> balancing() {
    return missing && net.balance() == Balance.NONE
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
      @Nullable String by) {
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

  /**
   * The sum of forces: its components, its size, its direction (none if nothing is left), and
   * whether it counts as zero.
   */
  public record Net(
      Quantity across, Quantity up, Quantity size, @Nullable Quantity direction, Balance balance) {
    /** Where it points, anticlockwise from “right”, from −180° to 180°. */
    public Optional<Quantity> angle() {
      return Optional.ofNullable(direction);
    }

    /** The force of the same size that points the other way. */
    Net opposite() {
      Quantity back = direction == null ? null : Resultant.reversed(direction);
      return new Net(across.negate(), up.negate(), size, back, balance);
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
