package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One source of a field as it is written: {@code ring Q radius R at (0 cm, 0 cm) across}.
 *
 * @param size the radius, or the gap of plates; none for a charge, a mass and a line
 * @param to where a line ends; none for all others
 * @param flat whether a ring or a disc lies in the plane of the drawing
 */
public record FieldItem(
    Span span,
    Shape shape,
    Expr amount,
    @Nullable Expr size,
    Place at,
    @Nullable Place to,
    boolean flat) {

  /** The radius or the gap, if it has one. */
  public Optional<Expr> extent() {
    return Optional.ofNullable(size);
  }

  /** Where a line ends. */
  public Optional<Place> end() {
    return Optional.ofNullable(to);
  }

  /** What a source is; its word begins it. */
  public enum Shape {
    /** A point charge. */
    CHARGE("charge q at (0 cm, 0 cm)", ""),
    /** A point mass. */
    MASS("mass M at (0 m, 0 m)", ""),
    /** A straight line, evenly charged. */
    LINE("line Q from (0 cm, 0 cm) to (0 cm, 4 cm)", ""),
    /** A thin ring. */
    RING("ring Q radius R at (0 cm, 0 cm) across", "radius"),
    /** A thin disc. */
    DISC("disc Q radius R at (0 cm, 0 cm) across", "radius"),
    /** A sphere, evenly charged throughout. */
    SPHERE("sphere Q radius R at (0 cm, 0 cm)", "radius"),
    /** A thin spherical shell. */
    SHELL("shell Q radius R at (0 cm, 0 cm)", "radius"),
    /** Two large upright plates with opposite charges per area. */
    PLATES("plates σ gap g at (0 cm, 0 cm)", "gap");

    private final String example;
    private final String extent;

    Shape(String example, String extent) {
      this.example = example;
      this.extent = extent;
    }

    /** The word of the notation. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** How it is written. */
    public String example() {
      return example;
    }

    /** The word before its size; empty if it has none. */
    public String extent() {
      return extent;
    }

    /** Whether it has an axis that can be turned. */
    boolean turns() {
      return this == RING || this == DISC;
    }

    static Optional<Shape> of(String word) {
      return Arrays.stream(values()).filter(shape -> shape.word().equals(word)).findFirst();
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Shape::word).toList();
    }
  }
}
