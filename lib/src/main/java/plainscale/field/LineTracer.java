package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/**
 * Follows one field line: an integration along the unit vector of the field, by arc length, with
 * Dormand and Prince's method, until it reaches a charge, leaves the frame, comes to a null point
 * or gets too long.
 */
final class LineTracer {
  private static final double LONGEST = 6;
  private static final double STEPS_IN_DIAGONAL = 50;
  private static final double ACCURACY = 1e-8;
  private static final double LEAST_STEP = 1e-12;
  private static final double FIRST_STEP = 0.1;
  private static final double OUT_OF_PLANE = 1e-6;
  private static final int MOST_EVALUATIONS = 20_000;

  /** The field at a null point, as a share of all charge over the square of the diagonal. */
  private static final double NEAR_NULL = 1e-3;

  private final Configuration configuration;
  private final Frame frame;
  private final List<Footprint> footprints;
  private final double weakest;
  private final Effort effort;
  private double steepest;

  LineTracer(Configuration configuration, Frame frame, List<Footprint> footprints, Effort effort) {
    this.configuration = configuration;
    this.frame = frame;
    this.footprints = footprints;
    this.effort = effort;
    double charge = footprints.stream().mapToDouble(print -> Math.abs(print.amount())).sum();
    double square = frame.diagonal() * frame.diagonal();
    this.weakest = NEAR_NULL * Math.abs(configuration.constant()) * charge / square;
  }

  /**
   * The line from a place beside a charge.
   *
   * @param from the index of that charge's footprint
   * @param sense 1 along the field, −1 against it
   */
  FieldLine trace(Vector2D start, int from, int sense) {
    Path path = new Path(start);
    Stops stops = new Stops(this, start);
    DormandPrince54Integrator integrator = integrator();
    integrator.addStepHandler(path);
    stops.addTo(integrator, frame.diagonal());
    double[] place = {start.getX(), start.getY()};
    LineEnd end;
    try {
      double reached =
          integrator.integrate(new Along(sense), 0, place, LONGEST * frame.diagonal(), place);
      end = stops.end(reached < LONGEST * frame.diagonal());
    } catch (MathIllegalArgumentException | MathIllegalStateException notFollowed) {
      end = LineEnd.Elsewhere.NOT_FOLLOWED;
    }
    FieldLine line = new FieldLine(path.points, new LineEnd.AtCharge(from), end);
    return sense > 0 ? line : line.reversed();
  }

  private DormandPrince54Integrator integrator() {
    double diagonal = frame.diagonal();
    double longest = diagonal / STEPS_IN_DIAGONAL;
    DormandPrince54Integrator integrator =
        new DormandPrince54Integrator(
            LEAST_STEP * diagonal, longest, ACCURACY * diagonal, ACCURACY);
    integrator.setInitialStepSize(FIRST_STEP * longest);
    integrator.setMaxEvaluations(MOST_EVALUATIONS);
    return integrator;
  }

  List<Footprint> footprints() {
    return footprints;
  }

  Frame frame() {
    return frame;
  }

  /** The field's strength in the plane, above zero away from null points. */
  double aboveNull(double x, double y) {
    Vector3D field = field(x, y);
    return Math.hypot(field.getX(), field.getY()) / weakest - 1;
  }

  /** Whether the field somewhere pointed out of the plane, so that lines are only projections. */
  boolean hasLeftThePlane() {
    return steepest > OUT_OF_PLANE;
  }

  private Vector3D field(double x, double y) {
    effort.spend(1, configuration);
    return configuration.field(new Vector3D(x, y, 0));
  }

  /** The unit vector of the field as a differential equation. */
  private final class Along implements FirstOrderDifferentialEquations {
    private final int sense;

    Along(int sense) {
      this.sense = sense;
    }

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public void computeDerivatives(double s, double[] place, double[] slope) {
      Vector3D field = field(place[0], place[1]);
      double strength = Math.hypot(field.getX(), field.getY());
      steepest = Math.max(steepest, Math.abs(field.getZ()) / strength);
      slope[0] = strength == 0 ? 0 : sense * field.getX() / strength;
      slope[1] = strength == 0 ? 0 : sense * field.getY() / strength;
    }
  }

  /** The end and the middle of every step. */
  private static final class Path implements StepHandler {
    private final List<Vector2D> points = new ArrayList<>();

    Path(Vector2D start) {
      points.add(start);
    }

    @Override
    public void init(double s, double[] place, double end) {}

    @Override
    public void handleStep(StepInterpolator step, boolean isLast) {
      double start = step.getPreviousTime();
      double end = step.getCurrentTime();
      add(step, (start + end) / 2);
      add(step, end);
    }

    private void add(StepInterpolator step, double s) {
      step.setInterpolatedTime(s);
      double[] place = step.getInterpolatedState();
      points.add(new Vector2D(place[0], place[1]));
    }
  }
}
