package plainscale.notation;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A statement about the field of charges or of masses. */
public sealed interface FieldStatement extends Statement {

  /** Calls the visitor's method for this kind of statement. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(Statement.Visitor<R> visitor) {
    return visitor.field(this);
  }

  /** {@code field pair: charge q at (-d/2, 0 cm), charge -q at (d/2, 0 cm) "two charges"}. */
  record Declared(Span span, String name, List<FieldItem> items, String description)
      implements FieldStatement {
    /** Keeps its own copy of the items. */
    public Declared {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.declared(this);
    }
  }

  /** {@code potential of pair at (0 cm, 3 cm)}: potential and field at a place. */
  record Probe(Span span, Option field, Place at, String description) implements FieldStatement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.probe(this);
    }
  }

  /** {@code map pair from (x, y) to (x, y) with vectors}: a drawing seen from above. */
  record Map(Span span, Option field, @Nullable Corners within, boolean vectors, String description)
      implements FieldStatement {
    /** The part that is to be shown, if that was said. */
    public Optional<Corners> frame() {
      return Optional.ofNullable(within);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.map(this);
    }
  }

  /** {@code relief pair}: the potential as height. */
  record Relief(Span span, Option field, @Nullable Corners within, String description)
      implements FieldStatement {
    /** The part that is to be shown, if that was said. */
    public Optional<Corners> frame() {
      return Optional.ofNullable(within);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.relief(this);
    }
  }

  /** {@code section pair from (x, y) to (x, y)}: potential and field along a straight line. */
  record Section(Span span, Option field, Corners line, String description)
      implements FieldStatement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.section(this);
    }
  }

  /**
   * {@code release charge q mass m at (x, y) moving (v_x, v_y) in pair for t}: how a body moves in
   * a field.
   */
  record Release(Span span, Body body, Option field, @Nullable Expr lasting, String description)
      implements FieldStatement {
    /** How long it is followed, if that was said. */
    public Optional<Expr> duration() {
      return Optional.ofNullable(lasting);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.release(this);
    }
  }

  /** What is released: without a charge, a mass. */
  record Body(@Nullable Expr charged, Expr mass, Place at, @Nullable Place moving) {
    /** Its charge, if it has one. */
    public Optional<Expr> charge() {
      return Optional.ofNullable(charged);
    }

    /** Its velocity at the start; none at rest. */
    public Optional<Place> velocity() {
      return Optional.ofNullable(moving);
    }
  }

  /** From one place to another: opposite corners, or the ends of a line. */
  record Corners(Span span, Place from, Place to) {}

  /** One method for each kind of statement about fields. */
  interface Visitor<R> {
    R declared(Declared declared);

    R probe(Probe probe);

    R map(Map map);

    R relief(Relief relief);

    R section(Section section);

    R release(Release release);
  }
}
