package plainscale.quantity;

import org.jspecify.annotations.Nullable;

/**
 * One origin of uncertainty, such as one measurement or one constant. Two sources are equal only if
 * they are the same object, or the same under another name: that is what makes {@code x − x} exact.
 *
 * <p>{@code standard} is the standard uncertainty in the coherent SI unit of the source's own
 * quantity (JCGM 100:2008, 2.3.1).
 */
public final class Source {
  private final Object identity;
  private final String name;
  private final double standard;
  private final Distribution distribution;

  /** A new source with the normal distribution, equal to no other. */
  public Source(String name, double standard) {
    this(name, standard, Distribution.NORMAL);
  }

  /** A new source, equal to no other. */
  public Source(String name, double standard, Distribution distribution) {
    this(new Object(), name, standard, distribution);
  }

  private Source(Object identity, String name, double standard, Distribution distribution) {
    this.identity = identity;
    this.name = name;
    this.standard = standard;
    this.distribution = distribution;
  }

  /** The same source under another name; it is equal to this one. */
  public Source called(String other) {
    return new Source(identity, other, standard, distribution);
  }

  /** The name of the measured quantity. */
  public String name() {
    return name;
  }

  /** The standard uncertainty of the measured quantity. */
  public double standard() {
    return standard;
  }

  /** How its possible values lie about the estimate. */
  public Distribution distribution() {
    return distribution;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Source source && source.identity == identity;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(identity);
  }

  @Override
  public String toString() {
    return name;
  }
}
