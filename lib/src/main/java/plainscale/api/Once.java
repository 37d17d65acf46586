package plainscale.api;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is computed when it is first asked for, and kept. */
final class Once<T> {
  private final Supplier<T> computing;
  private @Nullable T value;

  Once(Supplier<T> computing) {
    this.computing = computing;
  }

  synchronized T get() {
    T known = value;
    if (known == null) {
      known = computing.get();
      value = known;
    }
    return known;
  }
}
