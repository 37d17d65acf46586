package plainscale.picture.force;

import java.util.Optional;

/** A force that is but a dot at the scale of the picture, {@code 10^power} times as large. */
record Enlarged(Force force, int power) {
  /** A shorter arrow cannot be told from the dot. */
  private static final double SHORTEST = 0.25;

  private static final double MOST_BOXES = 7;

  /** Empty if the force can be seen, or is zero. */
  static Optional<Enlarged> of(Force force, Scale scale) {
    double boxes = scale.boxes(force.newtons());
    if (boxes == 0 || boxes >= SHORTEST) {
      return Optional.empty();
    }
    int power = (int) Math.floor(Math.log10(MOST_BOXES / boxes));
    return Optional.of(new Enlarged(larger(force, power), power));
  }

  private static Force larger(Force force, int power) {
    double factor = Math.pow(10, power);
    return new Force(
        force.label(), force.across() * factor, force.up() * factor, force.size(), force.hint());
  }
}
