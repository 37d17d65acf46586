package plainscale.algebra;

import java.util.OptionalDouble;

/** Which names have a value, and that value in coherent SI units where it is at hand. */
public interface Known {

  /** Whether an answer may contain the name. */
  boolean isKnown(String name);

  /** The value of a known name, to choose between roots; empty if it is not at hand. */
  OptionalDouble value(String name);
}
