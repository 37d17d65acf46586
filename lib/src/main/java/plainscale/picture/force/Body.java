package plainscale.picture.force;

import java.util.List;

/**
 * A body, the forces on it, and one sentence on what they add up to. {@code slope} turns the
 * components by an angle in radians, anticlockwise: along a slope and square to it.
 */
public record Body(String name, List<Force> forces, String verdict, double slope) {
  /** Keeps its own copy of the forces. */
  public Body {
    forces = List.copyOf(forces);
  }

  /** A body whose components are level and upright. */
  public Body(String name, List<Force> forces, String verdict) {
    this(name, forces, verdict, 0);
  }

  /** What the forces that are there add up to, to the right, in newtons. */
  double across() {
    return forces.stream().filter(f -> !f.hint()).mapToDouble(Force::across).sum();
  }

  /** What they add up to upwards. */
  double up() {
    return forces.stream().filter(f -> !f.hint()).mapToDouble(Force::up).sum();
  }
}
