package plainscale.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Draws up the field lines of a configuration. Every charge where the field comes out starts its
 * number of lines. Where it goes in, a charge whose number is not reached by arrivals starts the
 * missing ones against the field, from the directions in which none arrived; they come from outside
 * the frame. One that would lead back to a charge that has its number is left out, and the tally
 * tells.
 */
public final class LineMap {
  /** The most lines. */
  public static final int MOST_LINES = 2000;

  private static final double BESIDE = 0.004;
  private static final double SHARE_OF_GAP = 0.2;
  private static final double LEAST_BESIDE = 1e-4;

  /** Lines stop a little closer to a charge than they start, so that none stops at once. */
  private static final double CLOSER = 0.9;

  private static final int HEADING_PROBES = 16;
  private static final double NO_HEADING = 1e-9;

  private final Configuration configuration;
  private final double linesPerUnit;
  private final Spread spread;
  private final List<Footprint> cuts;
  private final List<Footprint> starts = new ArrayList<>();
  private final LineTracer tracer;
  private final List<FieldLine> lines = new ArrayList<>();

  private LineMap(
      Configuration configuration, Frame frame, double linesPerUnit, Spread spread, Effort effort) {
    this.configuration = configuration;
    this.linesPerUnit = linesPerUnit;
    this.spread = spread;
    this.cuts =
        configuration.sources().stream().flatMap(s -> s.footprints(frame).stream()).toList();
    List<Footprint> ends = new ArrayList<>();
    for (Footprint cut : cuts) {
      double beside = beside(cut, frame);
      starts.add(cut.grown(beside));
      ends.add(cut.grown(CLOSER * beside));
    }
    this.tracer = new LineTracer(configuration, frame, ends, effort);
  }

  /**
   * The field lines inside a frame.
   *
   * @param linesPerUnit lines for each C (or kg); a charge that comes to less than half a line gets
   *     none
   */
  public static FieldLines of(
      Configuration configuration, Frame frame, double linesPerUnit, Spread spread, Effort effort) {
    Checks.positive(linesPerUnit, "The number of lines per unit of charge");
    if (spread == Spread.EQUAL_FLUX) {
      Collinear.check(configuration.sources());
    }
    LineMap map = new LineMap(configuration, frame, linesPerUnit, spread, effort);
    map.checkNumber();
    map.drawOut();
    map.drawIn();
    return new FieldLines(linesPerUnit, spread, map.lines, map.tallies(), map.remarks(frame));
  }

  private double beside(Footprint cut, Frame frame) {
    double gap = frame.diagonal();
    for (Footprint other : cuts) {
      // A charge has no gap to itself, nor to one around it (a point in a shell).
      double apart = cut.gap(other);
      gap = apart <= 0 ? gap : Math.min(gap, apart);
    }
    double beside = Math.min(BESIDE * frame.diagonal(), SHARE_OF_GAP * gap);
    return Math.max(LEAST_BESIDE * frame.diagonal(), beside);
  }

  private double due(Footprint cut) {
    return linesPerUnit * Math.abs(cut.amount());
  }

  private void checkNumber() {
    double sum = cuts.stream().mapToDouble(this::due).sum();
    if (sum > MOST_LINES) {
      throw new IllegalArgumentException(
          "That makes " + Math.round(sum) + " field lines; the most is " + MOST_LINES + ".");
    }
  }

  private boolean isOutward(int index) {
    return configuration.constant() * cuts.get(index).amount() > 0;
  }

  private void drawOut() {
    for (int i = 0; i < cuts.size(); i++) {
      if (isOutward(i)) {
        for (Vector2D seed : seeds(i)) {
          lines.add(tracer.trace(seed, i, 1));
        }
      }
    }
  }

  private void drawIn() {
    for (int i = 0; i < cuts.size(); i++) {
      if (!isOutward(i)) {
        for (Vector2D seed : unused(i)) {
          addIfNotBegun(tracer.trace(seed, i, -1));
        }
      }
    }
  }

  private void addIfNotBegun(FieldLine line) {
    if (!(line.start() instanceof LineEnd.AtCharge)) {
      lines.add(line);
    }
  }

  private List<Vector2D> seeds(int index) {
    Footprint start = starts.get(index);
    double heading = heading(start, isOutward(index) ? 1 : -1);
    int number = (int) Math.round(due(start));
    return spread.shares(number).stream().map(share -> start.rim(share, heading)).toList();
  }

  /** The seeds of an inward charge beside which no line has arrived. */
  private List<Vector2D> unused(int index) {
    List<Vector2D> seeds = new ArrayList<>(seeds(index));
    LineEnd here = new LineEnd.AtCharge(index);
    for (FieldLine line : lines) {
      if (line.end().equals(here) && !seeds.isEmpty()) {
        Vector2D last = line.points().get(line.points().size() - 1);
        seeds.remove(
            Collections.min(
                seeds, Comparator.comparingDouble(seed -> cuts.get(index).apart(seed, last))));
      }
    }
    return seeds;
  }

  /**
   * The direction in which the other charges push a line at this one: the mean of the field around
   * it, since its own part of that is zero. Starting there keeps the symmetry of the charges.
   */
  private double heading(Footprint start, int sense) {
    Vector3D sum = Vector3D.ZERO;
    double strength = 0;
    for (int i = 0; i < HEADING_PROBES; i++) {
      Vector2D probe = start.rim((double) i / HEADING_PROBES, 0);
      Vector3D field = configuration.field(new Vector3D(probe.getX(), probe.getY(), 0));
      sum = sum.add(sense, field);
      strength += field.getNorm();
    }
    boolean none = Math.hypot(sum.getX(), sum.getY()) <= NO_HEADING * strength;
    return none ? 0 : Math.atan2(sum.getY(), sum.getX());
  }

  private List<String> remarks(Frame frame) {
    List<String> remarks = new ArrayList<>();
    for (Source source : configuration.sources()) {
      if (source.footprints(frame).isEmpty()) {
        remarks.add("No line starts at one " + source.name() + ": it is not cut by this plane.");
      }
    }
    if (tracer.hasLeftThePlane()) {
      remarks.add("The field points out of this plane in places; there the lines are projections.");
    }
    return remarks;
  }

  private List<FieldLines.Tally> tallies() {
    List<FieldLines.Tally> tallies = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      LineEnd here = new LineEnd.AtCharge(i);
      int number = 0;
      for (FieldLine line : lines) {
        number += line.start().equals(here) || line.end().equals(here) ? 1 : 0;
      }
      tallies.add(new FieldLines.Tally(cuts.get(i), due(cuts.get(i)), number));
    }
    return tallies;
  }
}
