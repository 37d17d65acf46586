package plainscale.algebra;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.units.UnitOfMeasure;

/** Expressions to their normal form. */
final class NormalForm implements Expr.Visitor<Sum> {
  private static final NormalForm ONLY = new NormalForm();
  private static final int HIGHEST = 60;

  private NormalForm() {}

  static Sum of(Expr expr) {
    return expr.accept(ONLY);
  }

  @Override
  public Sum literal(Expr.Literal literal) {
    boolean nothing = literal.value().signum() == 0;
    if (literal.unit().isPresent() && !(nothing && !literal.unit().get().isScale())) {
      return constant(literal, literal.value().signum() > 0);
    }
    return Sum.of(Term.number(Rationals.of(literal.value())));
  }

  private static Sum constant(Expr written, boolean positive) {
    return Sum.of(Term.of(Atom.Constant.of(written, positive)));
  }

  @Override
  public Sum name(Expr.Name name) {
    return Sum.symbol(name.text());
  }

  @Override
  public Sum negation(Expr.Negation negation) {
    return of(negation.operand()).negate();
  }

  @Override
  public Sum binary(Expr.Binary binary) {
    Sum left = of(binary.left());
    Sum right = of(binary.right());
    return switch (binary.operator()) {
      case PLUS -> left.plus(right);
      case MINUS -> left.minus(right);
      case TIMES -> left.times(right);
      case OVER -> left.over(right);
      case POWER -> power(left, right);
    };
  }

  static Sum power(Sum base, Sum exponent) {
    Optional<BigFraction> number = exponent.number();
    if (number.isPresent() && Math.abs(number.get().doubleValue()) <= HIGHEST) {
      return base.power(number.get());
    }
    return Sum.of(Term.of(new Atom.Exponential(base, exponent)));
  }

  @Override
  public Sum call(Expr.Call call) {
    return Application.of(call.function(), of(call.argument()));
  }

  /** The unit is a factor like any other; a reading on a scale stays in one piece. */
  @Override
  public Sum inUnits(Expr.InUnits inUnits) {
    UnitOfMeasure unit = inUnits.unit();
    if (unit.isScale()) {
      return constant(inUnits, false);
    }
    Span nowhere = new Span(0, 0);
    Expr one = new Expr.Literal(nowhere, BigDecimal.ONE, null, true);
    return of(inUnits.operand()).times(constant(new Expr.InUnits(nowhere, one, unit), true));
  }

  @Override
  public Sum conversion(Expr.Conversion conversion) {
    return of(conversion.operand());
  }
}
