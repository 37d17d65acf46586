package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Potential and field along a straight line: samples at equal steps from one place to another. */
public record Section(Vector3D from, Vector3D to, List<Sample> samples) {
  /** The most samples. */
  public static final int MOST_SAMPLES = 100_000;

  public Section {
    samples = List.copyOf(samples);
  }

  /**
   * One place of a section.
   *
   * @param s distance from the start, m
   * @param value potential and field there, or why there are none
   * @param along the field's component in the direction of the line, −dV/ds; not a number where the
   *     field is not defined, which {@code value} tells
   */
  public record Sample(double s, FieldValue value, double along) {}

  /** A section with that many samples, both ends among them. */
  public static Section of(
      Configuration configuration, Vector3D from, Vector3D to, int samples, Effort effort) {
    if (samples < 2 || samples > MOST_SAMPLES) {
      throw new IllegalArgumentException(
          "A section takes from 2 to " + MOST_SAMPLES + " samples, not " + samples + ".");
    }
    Vector3D direction = Checks.unit(to.subtract(from), "A section");
    double length = Vector3D.distance(from, to);
    List<Sample> list = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      effort.spend(2, configuration);
      double s = length * i / (samples - 1);
      FieldValue value = configuration.at(from.add(s, direction));
      list.add(new Sample(s, value, along(value, direction)));
    }
    return new Section(from, to, list);
  }

  private static double along(FieldValue value, Vector3D direction) {
    if (value instanceof FieldValue.Defined defined) {
      return defined.field().dotProduct(direction);
    }
    return value instanceof FieldValue.OnSurface surface
        ? surface.meanField().dotProduct(direction)
        : Double.NaN;
  }
}
