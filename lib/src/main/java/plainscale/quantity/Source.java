package plainscale.quantity;

/**
 * One origin of uncertainty, such as one measurement or one constant. Two sources are the same only
 * if they are the same object: that is what makes {@code x − x} exact.
 *
 * <p>{@code standard} is the standard uncertainty in the coherent SI unit of the source's own
 * quantity (JCGM 100:2008, 2.3.1).
 */
public final class Source {
  private final String name;
  private final double standard;
  private final Distribution distribution;

  /** A new source with the normal distribution, equal to no other. */
  public Source(String name, double standard) {
    this(name, standard, Distribution.NORMAL);
  }

  /** A new source, equal to no other. */
  public Source(String name, double standard, Distribution distribution) {
    this.name = name;
    this.standard = standard;
    this.distribution = distribution;
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
  public String toString() {
    return name;
  }
}
