package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plainscale.field.Chart;
import plainscale.field.Levels;
import plainscale.field.Nature;
import plainscale.field.TestCharge;
import plainscale.field.Trajectory;
import plainscale.magnitude.Writing;
import plainscale.notation.FieldItem;
import plainscale.notation.FieldStatement;
import plainscale.notation.Place;
import plainscale.quantity.Shown;

/** What a statement about a field shows. */
public sealed interface FieldResult extends Result {

  /** Calls the visitor's method for this kind of result. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(Result.Visitor<R> visitor) {
    return visitor.field(this);
  }

  /**
   * The sources of a field by its name, with their values and as they were written, and what
   * happened to some of them.
   */
  record Declared(
      String name,
      Nature nature,
      List<Row> rows,
      List<FieldItem> written,
      List<String> remarks,
      String description,
      Writing writing)
      implements FieldResult {
    /** Keeps its own copies of the lists. */
    public Declared {
      rows = List.copyOf(rows);
      written = List.copyOf(written);
      remarks = List.copyOf(remarks);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.declared(this);
    }
  }

  /** One source: what it is, how much, its radius or gap, where it is, where it ends. */
  record Row(
      FieldItem.Shape shape,
      Shown amount,
      @Nullable Shown size,
      Spot at,
      @Nullable Spot to,
      boolean flat) {
    /** Its radius or gap, if it has one. */
    public Optional<Shown> extent() {
      return Optional.ofNullable(size);
    }

    /** Where it ends, if it is a line. */
    public Optional<Spot> end() {
      return Optional.ofNullable(to);
    }
  }

  /** A place by its coordinates. */
  record Spot(Shown x, Shown y) {}

  /**
   * Potential and field at a place, which is there as it was written too; without values where
   * there are none, with the reason.
   */
  record Probed(
      String name,
      Spot at,
      Place written,
      List<Value> values,
      Optional<String> remark,
      String description,
      Writing writing)
      implements FieldResult {
    /** Keeps its own copy of the values. */
    public Probed {
      values = List.copyOf(values);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.probed(this);
    }
  }

  /** A value with its symbol and what it is; {@code otherwise}: the same with an SI prefix. */
  record Value(String symbol, String words, Shown shown, @Nullable Shown otherwise) {
    /** The same with an SI prefix, where that reads better. */
    public Optional<Shown> prefixed() {
      return Optional.ofNullable(otherwise);
    }
  }

  /** A map. */
  record Mapped(String title, Chart chart, Writing writing) implements FieldResult {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.mapped(this);
    }
  }

  /** The potential as height. */
  record Reliefed(
      String title, Nature nature, plainscale.field.Relief relief, Levels levels, Writing writing)
      implements FieldResult {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reliefed(this);
    }
  }

  /** Potential and field along a line. */
  record Sectioned(String title, Nature nature, plainscale.field.Section section, Writing writing)
      implements FieldResult {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sectioned(this);
    }
  }

  /**
   * The motion of a body, with the map on which it is drawn; {@code written} is the body as it was
   * written, {@code asked}: whether it was said for how long; {@code round}: after which time, in
   * s, it is as it was at the start.
   */
  record Released(
      String title,
      Chart chart,
      TestCharge body,
      FieldStatement.Body written,
      Trajectory trajectory,
      boolean asked,
      @Nullable Double round,
      Writing writing)
      implements FieldResult {
    /** The period, in s, if it comes back. */
    public OptionalDouble period() {
      return round == null ? OptionalDouble.empty() : OptionalDouble.of(round);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.released(this);
    }
  }

  /** One method for each kind of result about fields. */
  interface Visitor<R> {
    R declared(Declared declared);

    R probed(Probed probed);

    R mapped(Mapped mapped);

    R reliefed(Reliefed reliefed);

    R sectioned(Sectioned sectioned);

    R released(Released released);
  }
}
