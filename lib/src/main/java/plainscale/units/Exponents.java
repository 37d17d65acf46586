package plainscale.units;

import java.util.List;
import java.util.Map;
import javax.measure.Dimension;
import org.apache.commons.math3.fraction.Fraction;

/** The exponents of a kind in the SI base units kg, m, A, K, mol, cd, s, and back. */
public final class Exponents {
  /** How many base units there are. */
  public static final int BASES = 7;

  private static final List<Kind> KINDS =
      BaseUnits.BASE.stream().map(base -> Kind.of(base.getKey())).toList();

  private Exponents() {}

  /** The exponents of a kind; an angle has none. */
  public static double[] of(Kind kind) {
    Map<? extends Dimension, Integer> found = kind.dimension().getBaseDimensions();
    double[] exponents = new double[BASES];
    for (int i = 0; i < BASES; i++) {
      Dimension base = BaseUnits.BASE.get(i).getKey();
      exponents[i] =
          found == null ? (kind.dimension().equals(base) ? 1 : 0) : found.getOrDefault(base, 0);
    }
    return exponents;
  }

  /** The kind with these exponents. */
  public static Kind kind(List<Fraction> exponents) {
    Kind kind = Kind.NUMBER;
    for (int i = 0; i < BASES; i++) {
      Fraction exponent = exponents.get(i);
      if (!exponent.equals(Fraction.ZERO)) {
        kind = kind.times(KINDS.get(i).power(exponent.getNumerator(), exponent.getDenominator()));
      }
    }
    return kind;
  }
}
