package plainscale.sheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Decimals;
import plainscale.quantity.Distribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Uncertainty;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Adds forces by their components and judges whether anything is left. */
final class Resultant {
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");
  private static final UnitOfMeasure RADIAN = UnitParser.parse("rad");

  /** k of the expanded uncertainty: about 95 % (JCGM 100:2008, 6.3.3). */
  private static final double COVERAGE = 2;

  /** What is this much smaller than the forces is what functions leave in their last digits. */
  private static final double DUST = 1e-12;

  private Resultant() {}

  /** The sum of some forces, at least one. */
  static BodyForces.Net of(List<BodyForces.Force> forces) {
    Component across = Component.of(forces, BodyForces.Force::across);
    Component up = Component.of(forces, BodyForces.Force::up);
    double x = number(across.sum());
    double y = number(up.sum());
    double size = Math.hypot(x, y);
    BodyForces.Balance balance =
        Stream.of(across.balance(), up.balance()).max(Enum::compareTo).orElseThrow();
    BodyForces.OnSlope slope = onSlope(forces);
    return size == 0
        ? new BodyForces.Net(across.sum(), up.sum(), slope, larger(across, up), null, balance)
        : new BodyForces.Net(
            across.sum(),
            up.sum(),
            slope,
            projected(across, x / size, up, y / size),
            direction(across.sum(), up.sum()),
            balance);
  }

  private static BodyForces.@Nullable OnSlope onSlope(List<BodyForces.Force> forces) {
    if (forces.stream().anyMatch(force -> force.onSlope().isEmpty())) {
      return null;
    }
    return new BodyForces.OnSlope(
        Component.of(forces, f -> f.onSlope().orElseThrow().uphill()).sum(),
        Component.of(forces, f -> f.onSlope().orElseThrow().away()).sum());
  }

  private static Quantity larger(Component across, Component up) {
    boolean upright = up.sum().uncertainty().standard() > across.sum().uncertainty().standard();
    return upright ? up.sum() : across.sum();
  }

  /**
   * The size as the sum of the components' projections on the direction: its first-order change is
   * that of the root of the sum of the squares, and the figures are those of a sum.
   */
  private static Quantity projected(Component across, double cosine, Component up, double sine) {
    Quantity horizontal = across.sum().times(factor(cosine));
    Quantity upright = up.sum().times(factor(sine));
    return cosine == 0 ? upright : sine == 0 ? horizontal : horizontal.plus(upright);
  }

  private static Quantity factor(double value) {
    return Quantity.number(Decimals.from(value));
  }

  private static Quantity direction(Quantity across, Quantity up) {
    double x = number(across);
    double y = number(up);
    double squared = x * x + y * y;
    Uncertainty by =
        Uncertainty.combine(-y / squared, across.uncertainty(), x / squared, up.uncertainty());
    return angle(Math.atan2(y, x), by);
  }

  private static Quantity angle(double radians, Uncertainty by) {
    return Quantity.estimated(Decimals.from(radians), by, RADIAN).in(DEGREE);
  }

  /** The opposite direction, from −180° to 180°. */
  static Quantity reversed(Quantity direction) {
    double there = number(direction);
    return angle(there > 0 ? there - Math.PI : there + Math.PI, direction.uncertainty());
  }

  private static double number(Quantity quantity) {
    return quantity.value().doubleValue();
  }

  /** Whether the sum of some quantities counts as zero. */
  static boolean isZero(Quantity... terms) {
    return Component.of(List.of(terms), terms[0]).balance() != BodyForces.Balance.NONE;
  }

  /** The components in one direction: their sum, and whether it is zero. */
  private record Component(Quantity sum, BodyForces.Balance balance) {

    static Component of(List<BodyForces.Force> forces, Function<BodyForces.Force, Quantity> part) {
      Quantity largest = null;
      for (BodyForces.Force force : forces) {
        largest = larger(largest, force.size());
      }
      return of(forces.stream().map(part).toList(), largest == null ? zero() : largest);
    }

    private static Quantity zero() {
      return Quantity.number(BigDecimal.ZERO);
    }

    private static Quantity larger(@Nullable Quantity one, Quantity other) {
      boolean first = one != null && Math.abs(number(one)) >= Math.abs(number(other));
      return one != null && first ? one : other;
    }

    /** The sum, without the dust that is left of terms as large as {@code scale}. */
    static Component of(List<Quantity> terms, Quantity scale) {
      Quantity sum = terms.stream().reduce(Quantity::plus).orElseThrow();
      double dust = DUST * Math.abs(number(scale));
      double left = Math.abs(number(sum));
      double doubt = sum.uncertainty().standard();
      if (left <= dust && doubt <= dust) {
        Quantity nothing = Quantity.exact(BigDecimal.ZERO, sum.displayUnit());
        return new Component(nothing, BodyForces.Balance.EXACT);
      }
      return new Component(sum, judged(left, doubt, rounding(terms)));
    }

    private static BodyForces.Balance judged(double left, double doubt, double rounding) {
      if (left <= COVERAGE * doubt) {
        return BodyForces.Balance.UNCERTAINTY;
      }
      return left <= COVERAGE * Math.hypot(doubt, rounding)
          ? BodyForces.Balance.FIGURES
          : BodyForces.Balance.NONE;
    }

    /**
     * What the rounding of written figures adds: each may be wrong by half of its last digit,
     * anywhere within these limits (JCGM 100:2008, 4.3.7 and F.2.2.1).
     */
    private static double rounding(List<Quantity> terms) {
      double standard = 0;
      for (Quantity term : terms) {
        double half = term.figures().exact() ? 0 : term.figures().step() / 2;
        standard = Math.hypot(standard, Distribution.RECTANGULAR.standard(half));
      }
      return standard;
    }
  }
}
