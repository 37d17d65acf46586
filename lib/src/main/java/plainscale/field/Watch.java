package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.events.EventHandler;
import org.jspecify.annotations.Nullable;

/** What is looked out for during a motion: what ends it, and remarkable moments. */
final class Watch {
  private static final double CHECKS = 500;
  private static final double TIME_ACCURACY = 1e-14;
  private static final int MOST_ROUNDS = 200;
  private static final int MOST_PASSAGES = 2_000;

  /** Speeds that differ by less do not have a least and a greatest: a circle. */
  private static final double EVEN = 1e-6;

  private static final double SAME_STATE = 1e-5;
  private static final double SAME_TIME = 1e-8;

  private final Motion motion;
  private final List<Passage> passages = new ArrayList<>();
  private CourseEnd end = new CourseEnd.TimeUp();

  Watch(Motion motion) {
    this.motion = motion;
  }

  /** Refuses a start where the motion would be over. */
  void checkStart() {
    double[] state = Motion.state(motion.charge().place(), motion.charge().velocity());
    if (margin(state) < 0) {
      throw new IllegalArgumentException("A motion must start inside the frame.");
    }
    if (clearance(state) <= 0) {
      throw new IllegalArgumentException(
          "A motion must start farther from every charge than the distance of a hit, "
              + motion.course().hitDistance()
              + " m.");
    }
  }

  void addTo(AbstractIntegrator integrator, double duration) {
    for (EventHandler handler : handlers()) {
      integrator.addEventHandler(handler, duration / CHECKS, TIME_ACCURACY * duration, MOST_ROUNDS);
    }
  }

  private List<EventHandler> handlers() {
    List<EventHandler> handlers = new ArrayList<>();
    handlers.add(new Ends(this::margin, place -> new CourseEnd.LeftFrame()));
    handlers.add(new Passes(this::power, Passage.Kind.SLOWEST, Passage.Kind.FASTEST));
    if (!motion.configuration().sources().isEmpty()) {
      handlers.add(new Ends(this::clearance, place -> new CourseEnd.RanInto(nearest(place))));
      handlers.add(new Passes(this::receding, Passage.Kind.CLOSEST, null));
    }
    if (motion.charge().velocity().getNorm() > 0) {
      handlers.add(new Passes(this::ahead, Passage.Kind.RETURN, null));
    }
    return handlers;
  }

  CourseEnd end() {
    return end;
  }

  /** The remarkable moments in order of time; the samples tell how the speed varies. */
  List<Passage> passages(List<Moment> samples) {
    double greatest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Moment moment : samples) {
      greatest = Math.max(greatest, moment.velocity().getNorm());
      least = Math.min(least, moment.velocity().getNorm());
    }
    boolean even = greatest - least <= EVEN * greatest;
    return passages.stream().filter(p -> !even || p.kind() == Passage.Kind.RETURN).toList();
  }

  private double margin(double[] state) {
    double inPlane = motion.course().frame().margin(state[0], state[1]);
    return Math.min(inPlane, diagonal() - Math.abs(state[2])) / diagonal();
  }

  /** The field against or along the velocity: between the two the speed is least. */
  private double power(double[] state) {
    return cosine(motion.force(Motion.place(state)), Motion.velocity(state));
  }

  /** Of a size that does not hang on units, since small values pass for zero in the search. */
  private static double cosine(Vector3D one, Vector3D other) {
    double norms = one.getNorm() * other.getNorm();
    return norms == 0 ? 0 : one.dotProduct(other) / norms;
  }

  private double clearance(double[] state) {
    double least = Double.POSITIVE_INFINITY;
    for (Source source : motion.configuration().sources()) {
      if (motion.course().stopsAt(source)) {
        least = Math.min(least, Configuration.distance(source, Motion.place(state)));
      }
    }
    return Double.isInfinite(least) ? 1 : (least - motion.course().hitDistance()) / diagonal();
  }

  /** The source that is run into; the nearest of those that stop a body. */
  private Source nearest(Vector3D place) {
    List<Source> stopping =
        motion.configuration().sources().stream().filter(motion.course()::stopsAt).toList();
    return Configuration.of(1, stopping).nearest(place);
  }

  private double receding(double[] state) {
    Vector3D place = Motion.place(state);
    Vector3D nearest = motion.configuration().nearest(place).nearest(place);
    return cosine(place.subtract(nearest), Motion.velocity(state));
  }

  private double ahead(double[] state) {
    Vector3D way = Motion.place(state).subtract(motion.charge().place());
    return way.dotProduct(motion.charge().velocity().normalize()) / diagonal();
  }

  private double diagonal() {
    return motion.course().frame().diagonal();
  }

  private boolean isRepeated(Passage.Kind kind, double time) {
    double near = SAME_TIME * motion.course().duration();
    return passages.stream().anyMatch(p -> p.kind() == kind && time - p.moment().time() < near);
  }

  private void add(Passage.Kind kind, double time, double[] state) {
    if (passages.size() >= MOST_PASSAGES || isRepeated(kind, time)) {
      return;
    }
    Moment moment = motion.moment(time, state);
    if (kind != Passage.Kind.RETURN || isStart(moment)) {
      passages.add(new Passage(kind, moment));
    }
    if (kind == Passage.Kind.SLOWEST && motion.charge().velocity().getNorm() == 0) {
      addReturnFromRest(moment);
    }
  }

  private void addReturnFromRest(Moment moment) {
    if (isStart(moment)) {
      passages.add(new Passage(Passage.Kind.RETURN, moment));
    }
  }

  private boolean isStart(Moment moment) {
    Vector3D start = motion.charge().place();
    double length = diagonal();
    double speed =
        Math.max(motion.charge().velocity().getNorm(), length / motion.course().duration());
    return moment.time() > 0
        && Vector3D.distance(start, moment.place()) <= SAME_STATE * length
        && Vector3D.distance(motion.charge().velocity(), moment.velocity()) <= SAME_STATE * speed;
  }

  /** A function of the state whose zeros are events. */
  private interface Measure {
    double of(double[] state);
  }

  /** What happens at a place. */
  private interface Ending {
    CourseEnd at(Vector3D place);
  }

  /** An event handler by a measure. */
  private abstract static class Event implements EventHandler {
    private final Measure measure;

    Event(Measure measure) {
      this.measure = measure;
    }

    @Override
    public void init(double time, double[] state, double last) {}

    @Override
    public double g(double time, double[] state) {
      return measure.of(state);
    }

    @Override
    public void resetState(double time, double[] state) {}
  }

  private final class Ends extends Event {
    private final Ending ending;

    Ends(Measure measure, Ending ending) {
      super(measure);
      this.ending = ending;
    }

    @Override
    public Action eventOccurred(double time, double[] state, boolean increasing) {
      if (increasing) {
        return Action.CONTINUE;
      }
      end = ending.at(Motion.place(state));
      return Action.STOP;
    }
  }

  private final class Passes extends Event {
    private final Passage.Kind rising;
    private final Passage.@Nullable Kind falling;

    Passes(Measure measure, Passage.Kind rising, Passage.@Nullable Kind falling) {
      super(measure);
      this.rising = rising;
      this.falling = falling;
    }

    @Override
    public Action eventOccurred(double time, double[] state, boolean increasing) {
      Passage.Kind kind = increasing ? rising : falling;
      if (kind != null) {
        add(kind, time, state);
      }
      return Action.CONTINUE;
    }
  }
}
