package plainscale.notation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/** One statement of a cell. */
public sealed interface Statement {

  /** Where it stands. */
  Span span();

  /** Calls the visitor's method for this kind of statement. */
  <R> R accept(Visitor<R> visitor);

  /** {@code given m = 2.70 ± 0.05 g "mass"}. */
  record Given(Span span, String name, Measurement measurement, String description)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.given(this);
    }
  }

  /** {@code q = d sqrt(…) "charge"}. */
  record Definition(Span span, String name, Expr formula, Format format, String description)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.definition(this);
    }
  }

  /** {@code show q in nC to 2 figures "charge"}; {@code bare}: an expression alone on its line. */
  record Show(Span span, Expr value, Format format, String description, boolean bare)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.show(this);
    }
  }

  /** {@code say "Rubbing moved {n in words} electrons."}. */
  record Say(Span span, List<Part> parts) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.say(this);
    }
  }

  /** {@code contrast a with b "what for"}; the same unit for both if one is asked for. */
  record Contrast(Span span, Expr first, Expr second, Format format, String description)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.contrast(this);
    }
  }

  /** {@code constants textbook} or {@code constants codata}. */
  record Constants(Span span, String set) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.constants(this);
    }
  }

  /** A line that cannot be read; {@code defines} is the name that it seems to define, or empty. */
  record Unreadable(Span span, String defines, Problem problem) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unreadable(this);
    }
  }

  /** A measured value as written; without an uncertainty its digits are its figures. */
  record Measurement(
      BigDecimal value, @Nullable BigDecimal uncertain, UnitOfMeasure unit, boolean count) {
    /** The standard uncertainty in {@link #unit}. */
    public Optional<BigDecimal> uncertainty() {
      return Optional.ofNullable(uncertain);
    }
  }

  /** A piece of a {@code say}. */
  sealed interface Part {}

  /** Words as they stand. */
  record Text(String text) implements Part {}

  /** A live value in braces. */
  record Value(Expr value, Format format) implements Part {}

  /** One method for each kind of statement. */
  interface Visitor<R> {
    R given(Given given);

    R definition(Definition definition);

    R show(Show show);

    R say(Say say);

    R contrast(Contrast contrast);

    R constants(Constants constants);

    R unreadable(Unreadable unreadable);
  }
}
