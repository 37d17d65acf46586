package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plainscale.quantity.ElementaryFunction;

/** The functions by their names in a cell. */
public final class Functions {
  private Functions() {}

  /** The function of that name. */
  public static Optional<ElementaryFunction> find(String name) {
    return ElementaryFunction.named(name);
  }

  /** All names. */
  public static List<String> names() {
    return Arrays.stream(ElementaryFunction.values()).map(ElementaryFunction::text).toList();
  }
}
