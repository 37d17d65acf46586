package plainscale.notation;

import java.util.List;

/** A statement that guards against nonsense and harm: what to expect, and what to beware of. */
public sealed interface GuardStatement extends Statement {

  /** Calls the visitor's method for this kind of statement. */
  <R> R acceptGuard(Visitor<R> visitor);

  @Override
  default <R> R accept(Statement.Visitor<R> visitor) {
    return visitor.guard(this);
  }

  /**
   * {@code expect q between 1 nC and 100 nC "rubbed by hand"}: between what a value should lie, and
   * why.
   */
  record Expected(Span span, Expr value, Range range, String why) implements GuardStatement {
    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.expected(this);
    }
  }

  /** {@code caution electrostatic_generator, latex}: the cautions of some hazards. */
  record Caution(Span span, List<Option> hazards) implements GuardStatement {
    /** Keeps its own copy of the hazards. */
    public Caution {
      hazards = List.copyOf(hazards);
    }

    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.caution(this);
    }
  }

  /** Where a value should lie. */
  sealed interface Range {
    /** The expressions in it, in the order in which they are written. */
    List<Expr> limits();
  }

  /** {@code between 1 nC and 100 nC}. */
  record Between(Expr low, Expr high) implements Range {
    @Override
    public List<Expr> limits() {
      return List.of(low, high);
    }
  }

  /** {@code below 1 µC}. */
  record Below(Expr limit) implements Range {
    @Override
    public List<Expr> limits() {
      return List.of(limit);
    }
  }

  /** {@code above 1 nC}. */
  record Above(Expr limit) implements Range {
    @Override
    public List<Expr> limits() {
      return List.of(limit);
    }
  }

  /** {@code about 50 nC within 20 %}; within a share of it, or within an amount of its kind. */
  record About(Expr middle, Expr within) implements Range {
    @Override
    public List<Expr> limits() {
      return List.of(middle, within);
    }
  }

  /** One method for each kind of statement. */
  interface Visitor<R> {
    R expected(Expected expected);

    R caution(Caution caution);
  }
}
