package plainscale.notation;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The expressions whose values a statement needs, in the order of its text. The sides of relations
 * are none of them, since their names may be unknowns.
 */
public final class Expressions implements Statement.Visitor<Stream<Expr>> {
  private static final Expressions ONLY = new Expressions();

  private Expressions() {}

  /** Those of one statement; of one with blanks, those that stand around the blanks too. */
  public static Stream<Expr> of(Statement statement) {
    return statement.accept(ONLY);
  }

  private static Stream<Expr> values(Collection<Part.Value> values) {
    return values.stream().map(Part.Value::value);
  }

  @Override
  public Stream<Expr> given(Statement.Given given) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> definition(Statement.Definition definition) {
    return Stream.of(definition.formula());
  }

  @Override
  public Stream<Expr> show(Statement.Show show) {
    return Stream.of(show.value());
  }

  @Override
  public Stream<Expr> say(Statement.Say say) {
    return say.parts().stream()
        .filter(Part.Value.class::isInstance)
        .map(part -> ((Part.Value) part).value());
  }

  @Override
  public Stream<Expr> contrast(Statement.Contrast contrast) {
    return contrast.sides().stream();
  }

  @Override
  public Stream<Expr> near(Statement.Near near) {
    return Stream.of(near.value());
  }

  @Override
  public Stream<Expr> expand(Statement.Expand expand) {
    return Stream.of(expand.value());
  }

  @Override
  public Stream<Expr> picture(Statement.Picture picture) {
    return picture.sides().stream();
  }

  @Override
  public Stream<Expr> relation(Statement.Relation relation) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> solve(Statement.Solve solve) {
    return solve.bounds().stream().map(Bound::value);
  }

  @Override
  public Stream<Expr> whatIf(Statement.WhatIf whatIf) {
    return Stream.concat(changes(whatIf.changes()), whatIf.shown().stream());
  }

  private static Stream<Expr> changes(Collection<Change> changes) {
    return changes.stream()
        .filter(Change.Value.class::isInstance)
        .map(change -> ((Change.Value) change).value());
  }

  @Override
  public Stream<Expr> compare(Statement.Compare compare) {
    return Stream.concat(
        compare.cases().stream().flatMap(c -> changes(c.changes())), values(compare.shown()));
  }

  @Override
  public Stream<Expr> forces(Statement.Forces forces) {
    return Stream.concat(
        forces.onSlope().stream(), forces.acting().stream().flatMap(Expressions::acting));
  }

  private static Stream<Expr> acting(Acting force) {
    return force.pointing() instanceof Acting.Along along
        ? Stream.of(force.size(), along.angle())
        : Stream.of(force.size());
  }

  @Override
  public Stream<Expr> pairs(Statement.Pairs pairs) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> field(FieldStatement field) {
    return field.accept(new OfFields());
  }

  @Override
  public Stream<Expr> depends(Statement.Depends depends) {
    return Stream.of(depends.value());
  }

  @Override
  public Stream<Expr> vary(Statement.Vary vary) {
    Stream<Expr> rows = Stream.concat(Stream.of(vary.from(), vary.to()), vary.by().stream());
    return Stream.concat(rows, values(vary.shown()));
  }

  @Override
  public Stream<Expr> limit(Statement.Limit limit) {
    return Stream.concat(limit.goal().stream(), values(limit.shown()));
  }

  @Override
  public Stream<Expr> together(Statement.Together together) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> budget(Statement.Budget budget) {
    return Stream.of(budget.value());
  }

  @Override
  public Stream<Expr> choice(Statement.Choice choice) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> figure(Figure figure) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> data(DataStatement data) {
    return data.acceptData(new OfData());
  }

  @Override
  public Stream<Expr> guard(GuardStatement guard) {
    return guard instanceof GuardStatement.Expected expected
        ? Stream.concat(Stream.of(expected.value()), expected.range().limits().stream())
        : Stream.empty();
  }

  /** What stands for a symbol may be an unknown, as in the relation that comes of it. */
  @Override
  public Stream<Expr> law(LawStatement law) {
    return Stream.empty();
  }

  @Override
  public Stream<Expr> open(Open open) {
    return open.around().accept(this);
  }

  @Override
  public Stream<Expr> unreadable(Statement.Unreadable unreadable) {
    return Stream.empty();
  }

  private static final class OfFields implements FieldStatement.Visitor<Stream<Expr>> {
    @Override
    public Stream<Expr> declared(FieldStatement.Declared declared) {
      return declared.items().stream().flatMap(OfFields::item);
    }

    private static Stream<Expr> item(FieldItem item) {
      Stream<Expr> sizes = Stream.concat(Stream.of(item.amount()), item.extent().stream());
      return Stream.concat(sizes, places(Stream.of(item.at()), item.end()));
    }

    private static Stream<Expr> places(Stream<Place> places, Optional<Place> last) {
      return Stream.concat(places, last.stream()).flatMap(p -> Stream.of(p.x(), p.y()));
    }

    private static Stream<Expr> corners(FieldStatement.Corners corners) {
      return places(Stream.of(corners.from(), corners.to()), Optional.empty());
    }

    @Override
    public Stream<Expr> probe(FieldStatement.Probe probe) {
      return places(Stream.of(probe.at()), Optional.empty());
    }

    @Override
    public Stream<Expr> map(FieldStatement.Map map) {
      return map.frame().stream().flatMap(OfFields::corners);
    }

    @Override
    public Stream<Expr> relief(FieldStatement.Relief relief) {
      return relief.frame().stream().flatMap(OfFields::corners);
    }

    @Override
    public Stream<Expr> section(FieldStatement.Section section) {
      return corners(section.line());
    }

    @Override
    public Stream<Expr> release(FieldStatement.Release release) {
      FieldStatement.Body body = release.body();
      Stream<Expr> sizes = Stream.concat(body.charge().stream(), Stream.of(body.mass()));
      Stream<Expr> places = places(Stream.of(body.at()), body.velocity());
      return Stream.concat(Stream.concat(sizes, places), release.duration().stream());
    }
  }

  private static final class OfData implements DataStatement.Visitor<Stream<Expr>> {
    @Override
    public Stream<Expr> table(DataStatement.Table table) {
      return Stream.empty();
    }

    @Override
    public Stream<Expr> statistics(DataStatement.Statistics statistics) {
      return statistics.against().stream();
    }

    @Override
    public Stream<Expr> histogram(DataStatement.Histogram histogram) {
      return histogram.against().stream();
    }

    @Override
    public Stream<Expr> fit(DataStatement.Fit fit) {
      return Stream.empty();
    }

    @Override
    public Stream<Expr> plot(DataStatement.Plot plot) {
      return Stream.concat(
          Stream.of(plot.y().value()),
          plot.along().stream().flatMap(range -> Stream.of(range.from(), range.to())));
    }
  }
}
