package plainscale.laws;

import java.math.BigDecimal;
import java.util.Map;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Span;

/**
 * A law's expression with others in the place of its symbols. All that comes from the law gets one
 * place, and two equal factors side by side become a square, so that equal charges give q².
 */
final class Replacing implements Expr.Visitor<Expr> {
  private final Map<String, Expr> by;
  private final Span place;

  Replacing(Map<String, Expr> by, Span place) {
    this.by = Map.copyOf(by);
    this.place = place;
  }

  @Override
  public Expr literal(Expr.Literal literal) {
    return new Expr.Literal(place, literal.value(), literal.after(), literal.exact());
  }

  @Override
  public Expr name(Expr.Name name) {
    Expr other = by.get(name.text());
    return other != null ? other : new Expr.Name(place, name.text());
  }

  @Override
  public Expr negation(Expr.Negation negation) {
    return new Expr.Negation(place, negation.operand().accept(this));
  }

  @Override
  public Expr binary(Expr.Binary binary) {
    Expr left = binary.left().accept(this);
    Expr right = binary.right().accept(this);
    return binary.operator() == Expr.Operator.TIMES
        ? product(left, right)
        : new Expr.Binary(place, binary.operator(), left, right, place);
  }

  private Expr product(Expr left, Expr right) {
    if (right instanceof Expr.Literal) {
      return times(left, right);
    }
    if (isSame(left, right)) {
      return square(left);
    }
    boolean last =
        left instanceof Expr.Binary before
            && before.operator() == Expr.Operator.TIMES
            && isSame(before.right(), right);
    return last ? times(((Expr.Binary) left).left(), square(right)) : times(left, right);
  }

  private static boolean isSame(Expr one, Expr other) {
    return Printer.print(one).equals(Printer.print(other));
  }

  private Expr times(Expr left, Expr right) {
    return new Expr.Binary(place, Expr.Operator.TIMES, left, right, place);
  }

  private Expr square(Expr base) {
    Expr two = new Expr.Literal(place, BigDecimal.valueOf(2), null, true);
    return new Expr.Binary(place, Expr.Operator.POWER, base, two, place);
  }

  @Override
  public Expr call(Expr.Call call) {
    return new Expr.Call(place, call.function(), call.argument().accept(this));
  }

  @Override
  public Expr inUnits(Expr.InUnits inUnits) {
    return new Expr.InUnits(place, inUnits.operand().accept(this), inUnits.unit());
  }

  @Override
  public Expr conversion(Expr.Conversion conversion) {
    return new Expr.Conversion(place, conversion.operand().accept(this), conversion.unit());
  }
}
