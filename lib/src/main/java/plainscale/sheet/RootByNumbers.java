package plainscale.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.Numerically;
import plainscale.algebra.UnknownKinds;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;

/** The root of an equation that has no closed form, with its unit and its uncertainty. */
final class RootByNumbers {
  private static final Span NOWHERE = new Span(0, 0);
  private static final double STEP = 1e-6;

  private final Wave wave;
  private final Equation equation;
  private final String unknown;

  RootByNumbers(Wave wave, Equation equation, String unknown) {
    this.wave = wave;
    this.equation = equation;
    this.unknown = unknown;
  }

  /** The root that is taken, all that were found, and the quantity. */
  record Found(Numerically.Root root, Numerically.Roots all, Quantity quantity) {}

  /** A positive root if there is one, of several the smallest. */
  Optional<Found> found(Known known) {
    Numerically.Roots roots = Numerically.solve(equation, unknown, known);
    List<Numerically.Root> positive =
        roots.roots().stream().filter(root -> root.value() > 0).toList();
    List<Numerically.Root> candidates = positive.isEmpty() ? roots.roots() : positive;
    return candidates.stream()
        .findFirst()
        .map(root -> new Found(root, roots, quantity(root.value())));
  }

  private Kind kind() {
    UnknownKinds.Found found =
        UnknownKinds.of(
            List.of(equation), name -> name.equals(unknown) ? Optional.empty() : wave.kind(name));
    Kind kind = found.kinds().getOrDefault(unknown, Kind.NUMBER);
    return kind.isNumber() && isAngle() ? Kind.ANGLE : kind;
  }

  private boolean isAngle() {
    try {
      difference(Quantity.solved(1, Kind.ANGLE));
      return true;
    } catch (ProblemException aPlainNumber) {
      return false;
    }
  }

  /**
   * A small change dp of a measured quantity moves the root by −(∂F/∂p)/(∂F/∂x) dp, where F is the
   * difference of the two sides (implicit differentiation; JCGM 100:2008, 5.1.3).
   */
  private Quantity quantity(double root) {
    Kind kind = kind();
    double step = STEP * Math.abs(root);
    double above = value(root + step, kind);
    double below = value(root - step, kind);
    double slope = (above - below) / (2 * step);
    Quantity exact = Quantity.solved(root, kind).keeping(wave.inputs(List.of(equation)));
    return slope == 0 || Double.isNaN(slope)
        ? exact
        : exact.because(difference(exact).uncertainty().times(-1 / slope));
  }

  private double value(double x, Kind kind) {
    return difference(Quantity.solved(x, kind)).value().doubleValue();
  }

  private Quantity difference(Quantity x) {
    Expr difference =
        new Expr.Binary(NOWHERE, Expr.Operator.MINUS, equation.left(), equation.right(), NOWHERE);
    return wave.with(Map.of(unknown, x)).evaluate(difference, "");
  }
}
