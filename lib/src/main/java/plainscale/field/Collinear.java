package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Whether a field is round about a line: points and spheres with their centres on it. */
final class Collinear {
  private static final double OFF = 1e-9;

  private Collinear() {}

  /** Refuses sources that are not. */
  static void check(List<Source> sources) {
    List<Vector3D> centres = sources.stream().map(Collinear::centre).toList();
    if (centres.size() < 3) {
      return;
    }
    Vector3D first = centres.get(0);
    // Sources at one place were added, but spheres of two sizes may share a centre.
    Vector3D along =
        centres.stream()
            .map(centre -> centre.subtract(first))
            .filter(step -> step.getNorm() > 0)
            .findFirst()
            .orElse(Vector3D.PLUS_I)
            .normalize();
    for (Vector3D centre : centres) {
      Vector3D step = centre.subtract(first);
      if (step.crossProduct(along).getNorm() > OFF * step.getNorm()) {
        throw refused("these are not on one line");
      }
    }
  }

  private static Vector3D centre(Source source) {
    if (source instanceof PointCharge point) {
      return point.place();
    }
    if (source instanceof SolidSphere sphere) {
      return sphere.centre();
    }
    if (source instanceof SphericalShell shell) {
      return shell.centre();
    }
    throw refused("there is a " + source.name());
  }

  private static IllegalArgumentException refused(String reason) {
    return new IllegalArgumentException(
        "Lines of equal flux need point charges or spheres on one line; "
            + reason
            + ". Spread the lines at equal angles.");
  }
}
