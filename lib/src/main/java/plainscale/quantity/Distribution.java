package plainscale.quantity;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * How the possible values of a source lie about its estimate, and so what the number after ± means:
 * the standard uncertainty itself, or the half-width of limits beyond which no value lies (JCGM
 * 100:2008, 4.3.7 and 4.3.9; JCGM 101:2008, 6.4).
 */
public enum Distribution {
  /** The usual one; ± is the standard uncertainty. */
  NORMAL(1, RandomGenerator::nextGaussian),
  /** Every value between the limits is as likely as any other; u = a/√3. */
  RECTANGULAR(Math.sqrt(3), random -> 2 * random.nextDouble() - 1),
  /** Values near the middle are likelier than those at the limits; u = a/√6. */
  TRIANGULAR(Math.sqrt(6), random -> random.nextDouble() + random.nextDouble() - 1);

  private final double reach;
  private final ToDoubleFunction<RandomGenerator> drawing;

  Distribution(double reach, ToDoubleFunction<RandomGenerator> drawing) {
    this.reach = reach;
    this.drawing = drawing;
  }

  /** The standard uncertainty that belongs to a written ±. */
  public double standard(double written) {
    return written / reach;
  }

  /** A value at random, from the distribution of mean 0 and standard deviation 1. */
  public double draw(RandomGenerator random) {
    return reach * drawing.applyAsDouble(random);
  }
}
