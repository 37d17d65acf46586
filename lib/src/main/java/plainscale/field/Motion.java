package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/**
 * Moves a test charge: m a = q E, by Dormand and Prince's method of order 8 with the error of each
 * step held. Energies are not used in the computation, so that they check it.
 */
public final class Motion {
  private static final double ACCURACY = 1e-12;
  private static final double LEAST_STEP = 1e-14;
  private static final double LONGEST_STEP = 0.02;
  private static final int MOST_EVALUATIONS = 400_000;

  private final Configuration configuration;
  private final TestCharge charge;
  private final Course course;
  private final Effort effort;

  private Motion(Configuration configuration, TestCharge charge, Course course, Effort effort) {
    this.configuration = configuration;
    this.charge = charge;
    this.course = course;
    this.effort = effort;
  }

  /** The motion from its start until it ends as the course says. */
  public static Trajectory of(
      Configuration configuration, TestCharge charge, Course course, Effort effort) {
    if (configuration.at(charge.place()) instanceof FieldValue.Singular singular) {
      throw new IllegalArgumentException(
          "A motion cannot start where the field is not defined; here it starts on: "
              + singular.on().name()
              + ".");
    }
    Motion motion = new Motion(configuration, charge, course, effort);
    new Watch(motion).checkStart();
    return motion.trajectory();
  }

  private Trajectory trajectory() {
    Samples samples = new Samples();
    Watch watch = new Watch(this);
    DormandPrince853Integrator integrator = integrator();
    integrator.addStepHandler(samples);
    watch.addTo(integrator, course.duration());
    double[] state = state(charge.place(), charge.velocity());
    CourseEnd end;
    try {
      integrator.integrate(new Law(), 0, state, course.duration(), state);
      end = watch.end();
    } catch (MathIllegalArgumentException | MathIllegalStateException notFollowed) {
      end = new CourseEnd.NotFollowed();
    }
    return new Trajectory(samples.moments, watch.passages(samples.moments), end);
  }

  private DormandPrince853Integrator integrator() {
    double duration = course.duration();
    double length = course.frame().diagonal();
    double speed = charge.velocity().getNorm() + length / duration;
    double[] absolute = new double[6];
    double[] relative = new double[6];
    for (int i = 0; i < absolute.length; i++) {
      absolute[i] = ACCURACY * (i < 3 ? length : speed);
      relative[i] = ACCURACY;
    }
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(
            LEAST_STEP * duration, LONGEST_STEP * duration, absolute, relative);
    integrator.setMaxEvaluations(MOST_EVALUATIONS);
    return integrator;
  }

  Configuration configuration() {
    return configuration;
  }

  TestCharge charge() {
    return charge;
  }

  Course course() {
    return course;
  }

  static double[] state(Vector3D place, Vector3D velocity) {
    return new double[] {
      place.getX(), place.getY(), place.getZ(), velocity.getX(), velocity.getY(), velocity.getZ()
    };
  }

  static Vector3D place(double[] state) {
    return new Vector3D(state[0], state[1], state[2]);
  }

  static Vector3D velocity(double[] state) {
    return new Vector3D(state[3], state[4], state[5]);
  }

  /** The force on the charge, N. */
  Vector3D force(Vector3D place) {
    effort.spend(1, configuration);
    return configuration.field(place).scalarMultiply(charge.charge());
  }

  Moment moment(double time, double[] state) {
    effort.spend(1, configuration);
    Vector3D place = place(state);
    Vector3D velocity = velocity(state);
    double kinetic = charge.mass() * velocity.getNormSq() / 2;
    double potential = charge.charge() * configuration.potential(place);
    return new Moment(time, place, velocity, kinetic, potential);
  }

  /** Newton's second law. */
  private final class Law implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 6;
    }

    @Override
    public void computeDerivatives(double time, double[] state, double[] slope) {
      Vector3D force = force(place(state));
      System.arraycopy(state, 3, slope, 0, 3);
      slope[3] = force.getX() / charge.mass();
      slope[4] = force.getY() / charge.mass();
      slope[5] = force.getZ() / charge.mass();
    }
  }

  /** Keeps the end of every step and, of long ones, as many places between as were asked for. */
  private final class Samples implements StepHandler {
    private final List<Moment> moments = new ArrayList<>();

    @Override
    public void init(double time, double[] state, double end) {
      moments.add(moment(time, state));
    }

    @Override
    public void handleStep(StepInterpolator step, boolean isLast) {
      double start = step.getPreviousTime();
      double length = step.getCurrentTime() - start;
      double piece = course.duration() / course.samples();
      int pieces = (int) Math.max(1, Math.ceil(length / piece));
      for (int i = 1; i <= pieces; i++) {
        double time = start + length * i / pieces;
        step.setInterpolatedTime(time);
        moments.add(moment(time, step.getInterpolatedState()));
      }
    }
  }
}
