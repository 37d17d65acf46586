package plainscale.field;

/**
 * How far a motion is followed.
 *
 * @param frame it ends where it leaves this
 * @param duration it ends after this time, s
 * @param hitDistance it ends this close to a charge, m
 * @param throughMatter whether it may pass through spheres, as through a tunnel
 * @param samples into how many pieces the duration is cut at least
 */
public record Course(
    Frame frame, double duration, double hitDistance, boolean throughMatter, int samples) {
  /** The most samples that may be asked for. */
  public static final int MOST_SAMPLES = 20_000;

  public Course {
    Checks.positive(duration, "The duration of a motion");
    Checks.positive(hitDistance, "The distance of a hit");
    if (samples < 1 || samples > MOST_SAMPLES) {
      throw new IllegalArgumentException(
          "A motion takes from 1 to " + MOST_SAMPLES + " samples, not " + samples + ".");
    }
  }

  boolean stopsAt(Source source) {
    return !throughMatter || !(source instanceof SolidSphere || source instanceof SphericalShell);
  }
}
