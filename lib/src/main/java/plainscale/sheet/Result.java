package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.magnitude.Ratio;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/**
 * What a statement shows. Renderers read nothing else; a new kind of result is a new record and a
 * method in each.
 */
public sealed interface Result {

  /** Calls the visitor's method for this kind of result. */
  <R> R accept(Visitor<R> visitor);

  /** A quantity: a given as written, a definition with its formula, or a value to show. */
  record Valued(Role role, Label label, Quantity quantity, Shown shown, @Nullable Shown otherwise)
      implements Result {
    /** The same with an SI prefix, where that reads better. */
    public Optional<Shown> prefixed() {
      return Optional.ofNullable(otherwise);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.valued(this);
    }
  }

  /** A number written out: full digits and words. */
  record Written(Label label, Shown shown, Format.Style style) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.written(this);
    }
  }

  /**
   * Two numbers set against each other, in the same unit, and their ratio (the larger over the
   * smaller).
   */
  record Contrasted(String title, Side first, Side second, Shown times, Ratio ratio)
      implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.contrasted(this);
    }
  }

  /** A text with live values. */
  record Narrated(List<Piece> pieces) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.narrated(this);
    }
  }

  /** A remark of the sheet about what it did. */
  record Noted(String remark) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.noted(this);
    }
  }

  /** What is wrong. */
  record Mistaken(Problem problem) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.mistaken(this);
    }
  }

  /** What a quantity is in its sheet. */
  enum Role {
    GIVEN,
    DEFINED,
    SHOWN,
    /** The value of an expression that stands alone on its line. */
    VALUE
  }

  /**
   * What stands left of a value: a name, a formula, a description in words; each may be missing.
   */
  record Label(Optional<String> name, Optional<Expr> formula, String description) {}

  /** One side of a contrast. */
  record Side(Label label, Shown shown) {}

  /** A piece of a narrated text. */
  sealed interface Piece {}

  /** Words as they stand. */
  record Words(String text) implements Piece {}

  /** A live value in the form asked for. */
  record Live(Shown shown, Format.Style style) implements Piece {}

  /** One method for each kind of result. */
  interface Visitor<R> {
    R valued(Valued valued);

    R written(Written written);

    R contrasted(Contrasted contrasted);

    R narrated(Narrated narrated);

    R noted(Noted noted);

    R mistaken(Mistaken mistaken);
  }
}
