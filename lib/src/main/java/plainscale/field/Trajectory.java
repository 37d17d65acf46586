package plainscale.field;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The motion of a test charge: samples in order of time, remarkable moments, why it ended, and
 * whether its energy adds up.
 */
public record Trajectory(List<Moment> samples, List<Passage> passages, CourseEnd end) {
  /** The greatest deviation of the total energy that counts as closing. */
  public static final double CLOSING = 1e-6;

  public Trajectory {
    samples = List.copyOf(samples);
    passages = List.copyOf(passages);
  }

  /** The moments of one kind. */
  public List<Moment> passages(Passage.Kind kind) {
    return passages.stream().filter(p -> p.kind() == kind).map(Passage::moment).toList();
  }

  /** The time after which place and velocity of the start come again, s, if they did. */
  public OptionalDouble period() {
    return passages(Passage.Kind.RETURN).stream().mapToDouble(Moment::time).min();
  }

  /**
   * The largest deviation of the total energy from that at the start, as a share of the larger of
   * the total at the start and the greatest kinetic energy.
   */
  public double largestDeviation() {
    double start = samples.get(0).total();
    double off = samples.stream().mapToDouble(m -> Math.abs(m.total() - start)).max().orElse(0);
    double kinetic = samples.stream().mapToDouble(Moment::kinetic).max().orElse(0);
    double scale = Math.max(Math.abs(start), kinetic);
    return off == 0 ? 0 : off / scale;
  }

  /** Whether kinetic and potential energy add up to the same total throughout. */
  public boolean isEnergyKept() {
    return largestDeviation() <= CLOSING;
  }
}
