package plainscale.sheet;

import java.util.stream.Stream;
import plainscale.notation.Expr;
import plainscale.notation.FieldItem;
import plainscale.notation.FieldStatement;
import plainscale.notation.Place;
import plainscale.notation.Statement;

/** The names that a statement about a field hangs on. */
final class FieldReferences implements FieldStatement.Visitor<Stream<String>> {
  private static Stream<String> names(Stream<Expr> exprs) {
    return exprs.flatMap(expr -> References.in(expr).stream());
  }

  private static Stream<Expr> in(Place place) {
    return Stream.of(place.x(), place.y());
  }

  private static Stream<Expr> in(FieldStatement.Corners corners) {
    return Stream.concat(in(corners.from()), in(corners.to()));
  }

  private static Stream<Expr> in(FieldItem item) {
    Stream<Expr> places =
        Stream.concat(in(item.at()), item.end().stream().flatMap(FieldReferences::in));
    return Stream.concat(Stream.of(item.amount()), Stream.concat(item.extent().stream(), places));
  }

  private static Stream<String> of(Statement.Option field, Stream<Expr> exprs) {
    return Stream.concat(Stream.of(field.text()), names(exprs));
  }

  @Override
  public Stream<String> declared(FieldStatement.Declared declared) {
    return Stream.concat(
        Stream.of(declared.name()), names(declared.items().stream().flatMap(FieldReferences::in)));
  }

  @Override
  public Stream<String> probe(FieldStatement.Probe probe) {
    return of(probe.field(), in(probe.at()));
  }

  @Override
  public Stream<String> map(FieldStatement.Map map) {
    return of(map.field(), map.frame().stream().flatMap(FieldReferences::in));
  }

  @Override
  public Stream<String> relief(FieldStatement.Relief relief) {
    return of(relief.field(), relief.frame().stream().flatMap(FieldReferences::in));
  }

  @Override
  public Stream<String> section(FieldStatement.Section section) {
    return of(section.field(), in(section.line()));
  }

  @Override
  public Stream<String> release(FieldStatement.Release release) {
    FieldStatement.Body body = release.body();
    Stream<Expr> numbers =
        Stream.of(body.charge().stream(), Stream.of(body.mass()), release.duration().stream())
            .flatMap(exprs -> exprs);
    Stream<Expr> places =
        Stream.concat(in(body.at()), body.velocity().stream().flatMap(FieldReferences::in));
    return of(release.field(), Stream.concat(numbers, places));
  }
}
