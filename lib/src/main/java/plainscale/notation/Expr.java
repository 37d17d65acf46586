package plainscale.notation;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.ElementaryFunction;
import plainscale.units.UnitOfMeasure;

/** An expression; it knows its place in the source and nothing of values or pictures. */
public sealed interface Expr {

  /** Where it stands. */
  Span span();

  /** Calls the visitor's method for this kind of expression. */
  <R> R accept(Visitor<R> visitor);

  /**
   * A number as written, with the unit that stood right after it. {@code exact}: a whole number or
   * a number without unit in a formula; it does not limit figures.
   */
  record Literal(Span span, BigDecimal value, @Nullable UnitOfMeasure after, boolean exact)
      implements Expr {
    /** The unit, if one was written. */
    public Optional<UnitOfMeasure> unit() {
      return Optional.ofNullable(after);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.literal(this);
    }
  }

  /** A quantity by its name in one form ({@link Greek#normal}). */
  record Name(Span span, String text) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.name(this);
    }
  }

  /** {@code −x}. */
  record Negation(Span span, Expr operand) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.negation(this);
    }
  }

  /** Two operands; {@code at} is the place of the operator, or of the gap that multiplies. */
  record Binary(Span span, Operator operator, Expr left, Expr right, Span at) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.binary(this);
    }
  }

  /** An elementary function of one argument. */
  record Call(Span span, ElementaryFunction function, Expr argument) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.call(this);
    }
  }

  /** {@code x [m]}: an expression times a unit. */
  record InUnits(Span span, Expr operand, UnitOfMeasure unit) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inUnits(this);
    }
  }

  /** {@code (x in K)}: the same quantity, expressed in a unit of its kind. */
  record Conversion(Span span, Expr operand, UnitOfMeasure unit) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.conversion(this);
    }
  }

  /** The operators of two operands. */
  enum Operator {
    PLUS,
    MINUS,
    TIMES,
    OVER,
    POWER
  }

  /** One method for each kind of expression. */
  interface Visitor<R> {
    R literal(Literal literal);

    R name(Name name);

    R negation(Negation negation);

    R binary(Binary binary);

    R call(Call call);

    R inUnits(InUnits inUnits);

    R conversion(Conversion conversion);
  }
}
