package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.ABS;
import static plainscale.quantity.ElementaryFunction.ACOS;
import static plainscale.quantity.ElementaryFunction.ASIN;
import static plainscale.quantity.ElementaryFunction.ATAN;
import static plainscale.quantity.ElementaryFunction.CBRT;
import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.COSH;
import static plainscale.quantity.ElementaryFunction.EXP;
import static plainscale.quantity.ElementaryFunction.LN;
import static plainscale.quantity.ElementaryFunction.LOG10;
import static plainscale.quantity.ElementaryFunction.SIN;
import static plainscale.quantity.ElementaryFunction.SINH;
import static plainscale.quantity.ElementaryFunction.SQRT;
import static plainscale.quantity.ElementaryFunction.TAN;
import static plainscale.quantity.ElementaryFunction.TANH;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** A function of a sum, simplified where that is certain for every value. */
final class Application {
  /** f(g(x)) = x for every x at which g has a value. */
  private static final Map<ElementaryFunction, ElementaryFunction> UNDOES =
      Map.of(SIN, ASIN, COS, ACOS, TAN, ATAN, LN, EXP, EXP, LN);

  private static final Map<ElementaryFunction, Integer> AT_ZERO =
      Map.of(SIN, 0, TAN, 0, COS, 1, EXP, 1, ASIN, 0, ATAN, 0, SINH, 0, TANH, 0, COSH, 1);

  private Application() {}

  static Sum of(ElementaryFunction function, Sum argument) {
    if (function == SQRT) {
      return argument.power(BigFraction.ONE_HALF);
    }
    if (function == CBRT) {
      return argument.power(BigFraction.ONE_THIRD);
    }
    if (function == ABS) {
      return size(argument);
    }
    return simpler(function, argument)
        .orElseGet(() -> Sum.of(Term.of(new Atom.Applied(function, argument))));
  }

  private static Optional<Sum> simpler(ElementaryFunction function, Sum argument) {
    Integer atZero = AT_ZERO.get(function);
    if (argument.isZero() && atZero != null) {
      return Optional.of(Sum.number(atZero));
    }
    if (argument.equals(Sum.ONE) && (function == LN || function == LOG10)) {
      return Optional.of(Sum.ZERO);
    }
    return inner(argument)
        .filter(inner -> inner.function() == UNDOES.get(function))
        .map(Atom.Applied::argument);
  }

  /** The function, if the sum is nothing else. */
  private static Optional<Atom.Applied> inner(Sum sum) {
    if (!sum.isSingle() || sum.asTerm().factors().size() != 1) {
      return Optional.empty();
    }
    Atom atom = sum.asTerm().factors().firstKey();
    boolean alone = sum.equals(Sum.of(Term.of(atom)));
    return alone && atom instanceof Atom.Applied applied ? Optional.of(applied) : Optional.empty();
  }

  /** |a b| = |a| |b|, and what cannot be negative needs no bars. */
  private static Sum size(Sum argument) {
    if (!argument.isSingle() && !argument.isZero()) {
      return bars(argument.asTerm());
    }
    return argument.isZero() ? argument : bars(argument.asTerm());
  }

  private static Sum bars(Term term) {
    Term size = Term.number(term.coefficient().abs());
    for (var factor : term.factors().entrySet()) {
      Term power = Term.of(factor.getKey(), factor.getValue());
      boolean even =
          Rationals.isWhole(factor.getValue())
              && Rationals.isEven(factor.getValue().getNumerator());
      boolean root = !Rationals.isWhole(factor.getValue());
      Sum base = Sum.of(Term.of(factor.getKey()));
      size =
          size.times(
              even || root || factor.getKey().positive()
                  ? power
                  : Term.of(new Atom.Applied(ABS, base), factor.getValue()));
    }
    return Sum.of(size);
  }
}
