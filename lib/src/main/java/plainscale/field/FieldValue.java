package plainscale.field;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What a configuration's potential and field are at a place: numbers, or why there are none. */
public sealed interface FieldValue {
  /** The potential, in V or J/kg; infinite on a point, line or ring of charge. */
  double potential();

  /** One sentence on the place; empty where there is nothing to say. */
  String remark();

  /** A place where both are defined; field in V/m or N/kg. */
  record Defined(double potential, Vector3D field) implements FieldValue {
    @Override
    public String remark() {
      return "";
    }
  }

  /** On a charged surface: the field jumps there; {@code meanField} is the mean of both sides. */
  record OnSurface(double potential, Vector3D meanField, Source surface) implements FieldValue {
    @Override
    public String remark() {
      return "This place is on: "
          + surface.name()
          + ". The field jumps there from one side to the other; its value is the mean of both.";
    }
  }

  /**
   * On a charge or the rim of a disc: the field is infinite and has no direction. The potential is
   * infinite on a charge, finite on a rim, and not a number where infinite ones of both signs meet.
   */
  record Singular(double potential, Source on) implements FieldValue {
    @Override
    public String remark() {
      return "This place is on: " + on.name() + ". The field is not defined there, " + infinity();
    }

    private String infinity() {
      if (Double.isNaN(potential)) {
        return "nor is the potential.";
      }
      return Double.isInfinite(potential)
          ? "and the potential is infinite."
          : "but the potential is.";
    }
  }
}
