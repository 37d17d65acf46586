package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The frame for a drawing where none was asked for: all sources with room around them, four wide to
 * three high, with a round width. A lone point has no size of its own; it gets 10 cm to each side.
 */
public final class Surroundings {
  private static final double ROOM = 0.6;

  /** Of a group that fills its own frame. */
  private static final double ROOM_OF_MANY = 0.35;

  private static final int MANY = 3;
  private static final double FLATTEST = 0.75;
  private static final double ALONE = 0.1;
  private static final double POINT = 1e-9;

  private final List<Vector3D> corners = new ArrayList<>();

  private Surroundings() {}

  /** The frame around all sources. */
  public static Frame of(Configuration configuration) {
    Surroundings around = new Surroundings();
    configuration.sources().forEach(around::add);
    return around.frame();
  }

  /** The frame in which a body can go once around all sources from where it starts. */
  public static Frame of(Configuration configuration, Vector3D start) {
    Surroundings around = new Surroundings();
    configuration.sources().forEach(around::add);
    Vector3D middle = around.corners.isEmpty() ? start : around.middle();
    around.square(middle, Math.hypot(start.getX() - middle.getX(), start.getY() - middle.getY()));
    return around.frame();
  }

  private void add(Source source) {
    if (source instanceof PointCharge point) {
      corners.add(point.place());
    } else if (source instanceof LineCharge line) {
      corners.add(line.start());
      corners.add(line.end());
    } else if (source instanceof RingCharge ring) {
      turned(ring.centre(), ring.axis(), ring.radius());
    } else if (source instanceof DiscCharge disc) {
      turned(disc.centre(), disc.axis(), disc.radius());
    } else if (source instanceof SolidSphere sphere) {
      square(sphere.centre(), sphere.radius());
    } else if (source instanceof SphericalShell shell) {
      square(shell.centre(), shell.radius());
    } else if (source instanceof ChargedSheet sheet) {
      corners.add(sheet.through());
    } else {
      corners.add(((InfiniteLine) source).through());
    }
  }

  private void turned(Vector3D centre, Vector3D axis, double radius) {
    if (Axial.isUpright(axis)) {
      corners.addAll(Axial.diameter(centre, axis, radius));
    } else {
      square(centre, radius);
    }
  }

  private void square(Vector3D centre, double half) {
    corners.add(centre.add(new Vector3D(half, half, 0)));
    corners.add(centre.subtract(new Vector3D(half, half, 0)));
  }

  private double least(boolean x) {
    return corners.stream().mapToDouble(c -> x ? c.getX() : c.getY()).min().orElse(0);
  }

  private double greatest(boolean x) {
    return corners.stream().mapToDouble(c -> x ? c.getX() : c.getY()).max().orElse(0);
  }

  private Vector3D middle() {
    double x = (least(true) + greatest(true)) / 2;
    return new Vector3D(x, (least(false) + greatest(false)) / 2, 0);
  }

  private Frame frame() {
    double wide = greatest(true) - least(true);
    double high = greatest(false) - least(false);
    Vector3D middle = middle();
    double size = Math.max(wide, high);
    boolean point = size <= POINT * Math.hypot(middle.getX(), middle.getY());
    double share = corners.size() >= 2 * MANY ? ROOM_OF_MANY : ROOM;
    double room = size == 0 || point ? ALONE : share * size;
    double half = round(Math.max(wide / 2 + room, (high / 2 + room) / FLATTEST));
    return new Frame(
        middle.getX() - half,
        middle.getY() - FLATTEST * half,
        middle.getX() + half,
        middle.getY() + FLATTEST * half);
  }

  /** Up to two figures of which the last is even. */
  private static double round(double length) {
    double step = Math.pow(10, Math.floor(Math.log10(length)) - 1) * 2;
    return step * Math.ceil(length / step - POINT);
  }
}
