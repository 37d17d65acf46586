package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.jspecify.annotations.Nullable;

/**
 * What a map shows: a frame, the equipotentials in it, field lines or arrows, where the field is
 * zero, and potentials along the middle of the frame from left to right.
 */
public record Chart(
    Nature nature,
    Configuration configuration,
    Frame frame,
    Levels levels,
    List<Contour> contours,
    @Nullable FieldLines drawn,
    @Nullable Arrows grid,
    List<Vector2D> nulls,
    List<Reading> readings) {
  private static final int COLUMNS = 160;
  private static final int FEWEST = 40;
  private static final int LEVELS = 12;
  private static final int READINGS = 7;
  private static final double LINES = 16;
  private static final double MOST_LINES = 110;

  public Chart {
    contours = List.copyOf(contours);
    nulls = List.copyOf(nulls);
    readings = List.copyOf(readings);
  }

  /** The field lines, if they are drawn. */
  public Optional<FieldLines> lines() {
    return Optional.ofNullable(drawn);
  }

  /** The arrows, if they are drawn. */
  public Optional<Arrows> arrows() {
    return Optional.ofNullable(grid);
  }

  /** The potential at a place; infinite on a charge. */
  public record Reading(double x, double y, double potential) {}

  /** What is drawn besides equipotentials. */
  public enum Content {
    LINES,
    ARROWS,
    /** Equipotentials only. */
    NOTHING
  }

  /** A map of a frame. */
  public static Chart of(
      Nature nature, Configuration configuration, Frame frame, Content content, Effort effort) {
    PotentialGrid grid = grid(configuration, frame, COLUMNS, effort);
    Levels levels = Levels.suited(grid, LEVELS);
    FieldLines lines = content == Content.LINES ? lines(configuration, frame, effort) : null;
    Arrows arrows = content == Content.ARROWS ? Arrows.of(configuration, frame, effort) : null;
    return new Chart(
        nature,
        configuration,
        frame,
        levels,
        Contouring.of(grid, levels, effort),
        lines,
        arrows,
        Nulls.of(configuration, frame, effort),
        readings(configuration, frame));
  }

  /** A grid of nearly square cells with that many columns. */
  public static PotentialGrid grid(
      Configuration configuration, Frame frame, int columns, Effort effort) {
    double rows = columns * frame.height() / frame.width();
    int within = (int) Math.max(FEWEST, Math.min(2.0 * columns, Math.rint(rows)));
    return PotentialGrid.of(configuration, frame, columns, within, effort);
  }

  /** Sixteen lines for the largest charge; fewer where that makes too many. */
  private static FieldLines lines(Configuration configuration, Frame frame, Effort effort) {
    double largest = 0;
    double sum = 0;
    for (Source source : configuration.sources()) {
      for (Footprint print : source.footprints(frame)) {
        largest = Math.max(largest, Math.abs(print.amount()));
        sum += Math.abs(print.amount());
      }
    }
    double perUnit = largest == 0 ? 1 : Math.min(LINES / largest, MOST_LINES / sum);
    return LineMap.of(configuration, frame, perUnit, Spread.EQUAL_ANGLES, effort);
  }

  private static List<Reading> readings(Configuration configuration, Frame frame) {
    List<Reading> readings = new ArrayList<>();
    double y = (frame.bottom() + frame.top()) / 2;
    for (int i = 0; i < READINGS; i++) {
      double x = frame.left() + frame.width() * i / (READINGS - 1);
      readings.add(new Reading(x, y, configuration.at(new Vector3D(x, y, 0)).potential()));
    }
    return readings;
  }
}
