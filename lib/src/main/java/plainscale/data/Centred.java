package plainscale.data;

import java.math.BigDecimal;

/**
 * Decimals as doubles between −1 and 1: {@code value = centre + scale × double}. The differences
 * from the centre are taken in decimals, so a large common part costs no digits, and squares of
 * very large or small numbers stay in the range of doubles.
 */
record Centred(BigDecimal centre, double scale, Numbers values) {

  static Centred of(Numbers values) {
    return from(values, Sample.mean(values));
  }

  static Centred from(Numbers values, BigDecimal centre) {
    double scale = Statistics.largest(Sample.differences(values, centre));
    return new Centred(centre, scale == 0 ? 1 : scale, values);
  }

  /** Whether all values are the centre. */
  boolean isOneValue() {
    return Statistics.largest(scaled()) == 0;
  }

  /** The doubles. */
  double[] scaled() {
    double[] scaled = Sample.differences(values, centre);
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] /= scale;
    }
    return scaled;
  }
}
