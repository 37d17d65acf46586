package plainscale.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.notation.Expr;
import plainscale.quantity.Quantity;

/**
 * The sheet in one row on the way to a limit, and at places close beside it. How far rounding moves
 * a value is seen from its fourth differences over these places (J. J. Moré and S. M. Wild,
 * Estimating computational noise, preprint ANL/MCS-P1721-0210, 2011, after Hamming): what is smooth
 * has hardly any, what has lost its digits has.
 */
final class NearRow {
  /** Places on either side, and how far apart in parts of the distance. */
  private static final int BESIDE = 3;

  /** Not a round number: round steps fall in with decimal rounding, and its noise is not seen. */
  private static final double APART = Math.PI * 3e-4;

  /** The standard deviation of a fourth difference of independent numbers, √(8 over 4). */
  private static final double FOURTH = Math.sqrt(70);

  private final List<OtherValues> places = new ArrayList<>();

  NearRow(Showing showing, String name, Approach approach, int row) {
    for (int i = -BESIDE; i <= BESIDE; i++) {
      Quantity at = approach.at(row, 1 + APART * i);
      places.add(new OtherValues(showing, Map.of(name, at)));
    }
  }

  NearPoint point(Expr expr) {
    List<Quantity> values = places.stream().flatMap(place -> place.find(expr).stream()).toList();
    Optional<Quantity> here = places.get(BESIDE).find(expr);
    boolean whole = values.size() == places.size();
    return new NearPoint(here, whole ? noise(values) : 1);
  }

  /** Relative; where all have one sign, of the logarithms, which are smooth for powers too. */
  private static double noise(List<Quantity> values) {
    double[] f = values.stream().mapToDouble(NearPoint::value).toArray();
    double here = f[f.length / 2];
    boolean oneSign = Arrays.stream(f).allMatch(value -> value * Math.signum(here) > 0);
    double[] smooth =
        oneSign ? Arrays.stream(f).map(value -> Math.log(Math.abs(value))).toArray() : f;
    double noise = fourthDifference(smooth) / FOURTH;
    return oneSign || noise == 0 ? noise : noise / Math.abs(here);
  }

  private static double fourthDifference(double[] f) {
    double largest = 0;
    for (int i = 0; i + 4 < f.length; i++) {
      double fourth = f[i] - 4 * f[i + 1] + 6 * f[i + 2] - 4 * f[i + 3] + f[i + 4];
      largest = Math.max(largest, Math.abs(fourth));
    }
    return largest;
  }
}
