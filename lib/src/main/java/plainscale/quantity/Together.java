package plainscale.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import plainscale.units.UnitOfMeasure;

/**
 * Quantities that were read at the same moments, reading by reading: the means keep the correlation
 * of the readings (JCGM 100:2008, 5.2.3). Their correlation matrix is decomposed along its axes
 * into sources that are independent of one another, so that all that is computed from the means
 * goes by derivatives by source as everywhere.
 */
public final class Together {
  /** An axis along which the readings do not vary but for the dust of binary arithmetic. */
  private static final double FLAT = 1e-13;

  private Together() {}

  /** The readings of one quantity in a unit. */
  public record Series(String name, Readings readings, UnitOfMeasure unit) {}

  /** The means, in the order of the series, each of which has the same number of readings. */
  public static List<Quantity> of(List<Series> series) {
    List<Series> varying = series.stream().filter(s -> s.readings().standard() > 0).toList();
    Map<String, Uncertainty> by =
        varying.size() < 2 ? Map.of() : decomposed(varying, sources(varying));
    return series.stream()
        .map(s -> by.containsKey(s.name()) ? mean(s, by.get(s.name())) : alone(s))
        .toList();
  }

  /** All that vary together have one name: their shares cannot be told apart. */
  private static List<Source> sources(List<Series> varying) {
    String name = varying.stream().map(Series::name).collect(Collectors.joining(", "));
    return varying.stream().map(s -> new Source(name, 1)).toList();
  }

  private static Quantity mean(Series series, Uncertainty by) {
    return Quantity.estimated(series.readings().mean(), by, series.unit());
  }

  /** The mean of readings that belong to no others. */
  public static Quantity alone(Series series) {
    Readings readings = series.readings();
    if (readings.standard() == 0) {
      return Quantity.written(readings.values().get(0), series.unit());
    }
    Source source = new Source(series.name(), standard(series));
    return Quantity.estimated(readings.mean(), Uncertainty.of(source), series.unit());
  }

  private static double standard(Series series) {
    return series.readings().standard() * Math.abs(series.unit().factor().doubleValue());
  }

  private static Map<String, Uncertainty> decomposed(List<Series> varying, List<Source> axes) {
    EigenDecomposition correlation = new EigenDecomposition(correlations(varying));
    Map<String, Uncertainty> by = new LinkedHashMap<>();
    for (int i = 0; i < varying.size(); i++) {
      Map<Source, Double> derivatives = new LinkedHashMap<>();
      double standard = standard(varying.get(i));
      for (int axis = 0; axis < axes.size(); axis++) {
        double spread = correlation.getRealEigenvalue(axis);
        if (spread > FLAT) {
          double part = correlation.getEigenvector(axis).getEntry(i) * Math.sqrt(spread);
          derivatives.put(axes.get(axis), standard * part);
        }
      }
      by.put(varying.get(i).name(), Uncertainty.of(derivatives));
    }
    return by;
  }

  private static RealMatrix correlations(List<Series> varying) {
    double[][] columns =
        varying.stream().map(s -> s.readings().deviations()).toArray(double[][]::new);
    RealMatrix readings = MatrixUtils.createRealMatrix(columns).transpose();
    RealMatrix correlations = new PearsonsCorrelation().computeCorrelationMatrix(readings);
    IntStream.range(0, columns.length).forEach(i -> correlations.setEntry(i, i, 1));
    return correlations;
  }
}
