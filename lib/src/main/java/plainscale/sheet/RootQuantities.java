package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import plainscale.algebra.Equation;
import plainscale.algebra.NumericSystem;
import plainscale.algebra.UnknownKinds;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.Uncertainty;
import plainscale.units.Kind;

/**
 * Roots that were found by numbers as quantities: their kinds follow from the units of the
 * equations, their uncertainties by implicit differentiation, their figures from the inputs.
 */
record RootQuantities(Wave wave, List<Equation> equations, List<String> unknowns) {
  private static final Span NOWHERE = new Span(0, 0);
  private static final double STEP = 1e-6;

  /** The quantities of roots in SI units; exact where the equations do not say how they move. */
  Map<String, Quantity> of(Map<String, Double> roots) {
    Map<String, Kind> kinds = kinds();
    Map<String, Quantity> exact = new HashMap<>();
    roots.forEach(
        (name, root) ->
            exact.put(
                name,
                Quantity.solved(root, kinds.getOrDefault(name, Kind.NUMBER))
                    .keeping(wave.inputs(equations))));
    RealMatrix slopes = slopes(exact);
    // Slopes in SI units may be tiny; what counts is that none is zero or without a value.
    LUDecomposition decomposition = new LUDecomposition(slopes, Double.MIN_NORMAL);
    if (!Double.isFinite(slopes.getNorm()) || !decomposition.getSolver().isNonSingular()) {
      return exact;
    }
    RealMatrix inverse = decomposition.getSolver().getInverse();
    List<Uncertainty> doubts = differences(exact).stream().map(Quantity::uncertainty).toList();
    Map<String, Quantity> found = new HashMap<>();
    for (int i = 0; i < unknowns.size(); i++) {
      found.put(
          unknowns.get(i),
          Objects.requireNonNull(exact.get(unknowns.get(i)))
              .because(doubt(inverse.getRow(i), doubts)));
    }
    return found;
  }

  /** dx = −J⁻¹ dF: implicit differentiation of several equations (JCGM 100:2008, 5.1.3). */
  private static Uncertainty doubt(double[] row, List<Uncertainty> doubts) {
    Uncertainty sum = Uncertainty.NONE;
    for (int j = 0; j < row.length; j++) {
      sum = Uncertainty.combine(1, sum, -row[j], doubts.get(j));
    }
    return sum;
  }

  private Map<String, Kind> kinds() {
    Map<String, Kind> kinds =
        new HashMap<>(
            UnknownKinds.of(
                    equations,
                    name -> unknowns.contains(name) ? Optional.empty() : wave.kind(name),
                    name -> unknowns.contains(name) ? OptionalDouble.empty() : wave.number(name))
                .kinds());
    kinds.replaceAll(
        (name, kind) ->
            kind.isNumber() && NumericSystem.isAngle(equations, name) ? Kind.ANGLE : kind);
    return kinds;
  }

  private RealMatrix slopes(Map<String, Quantity> at) {
    RealMatrix slopes = new Array2DRowRealMatrix(unknowns.size(), unknowns.size());
    for (int i = 0; i < unknowns.size(); i++) {
      String name = unknowns.get(i);
      double root = Objects.requireNonNull(at.get(name)).value().doubleValue();
      double step = STEP * Math.abs(root);
      List<Quantity> above = differences(moved(at, name, root + step));
      List<Quantity> below = differences(moved(at, name, root - step));
      for (int row = 0; row < unknowns.size(); row++) {
        double change = above.get(row).value().doubleValue() - below.get(row).value().doubleValue();
        slopes.setEntry(row, i, change / (2 * step));
      }
    }
    return slopes;
  }

  private static Map<String, Quantity> moved(Map<String, Quantity> at, String name, double value) {
    Map<String, Quantity> moved = new HashMap<>(at);
    moved.put(name, Quantity.solved(value, Objects.requireNonNull(at.get(name)).kind()));
    return moved;
  }

  private List<Quantity> differences(Map<String, Quantity> at) {
    Wave other = wave.with(at);
    List<Quantity> differences = new ArrayList<>();
    for (Equation equation : equations) {
      Expr difference =
          new Expr.Binary(NOWHERE, Expr.Operator.MINUS, equation.left(), equation.right(), NOWHERE);
      differences.add(other.number(difference, ""));
    }
    return differences;
  }
}
