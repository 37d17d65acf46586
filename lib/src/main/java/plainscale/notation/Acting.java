package plainscale.notation;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A force as it is written: {@code push k_e q^2/d^2 left by "right ball"}: what it is called, its
 * size, where it points, and what exerts it.
 */
public record Acting(String label, Expr size, Pointing pointing, @Nullable String by) {

  /** What exerts the force, if that was said. */
  public Optional<String> agent() {
    return Optional.ofNullable(by);
  }

  /** Where a force points. */
  public sealed interface Pointing {}

  /** Where a word says. */
  public record Towards(Direction direction) implements Pointing {}

  /** At an angle from “right”, anticlockwise. */
  public record Along(Expr angle) implements Pointing {}
}
