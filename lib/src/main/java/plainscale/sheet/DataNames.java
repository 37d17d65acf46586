package plainscale.sheet;

import java.util.stream.Stream;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Statement;

/** The names that a statement about data hangs on, those that it defines among them. */
final class DataNames implements DataStatement.Visitor<Stream<String>> {
  @Override
  public Stream<String> table(DataStatement.Table table) {
    return defined(table);
  }

  private static Stream<String> defined(DataStatement data) {
    return data.named().stream().map(DataStatement.Named::name);
  }

  @Override
  public Stream<String> statistics(DataStatement.Statistics statistics) {
    return Stream.concat(
        Stream.of(statistics.column().text()), expressions(statistics.against().stream()));
  }

  @Override
  public Stream<String> histogram(DataStatement.Histogram histogram) {
    return Stream.concat(
        Stream.of(histogram.column().text()), expressions(histogram.against().stream()));
  }

  @Override
  public Stream<String> fit(DataStatement.Fit fit) {
    return Stream.concat(defined(fit), Stream.of(fit.y().text(), fit.x().text()));
  }

  @Override
  public Stream<String> plot(DataStatement.Plot plot) {
    Stream<Expr> expressions =
        Stream.concat(
            Stream.of(plot.y().value()),
            plot.along().stream().flatMap(range -> Stream.of(range.from(), range.to())));
    Stream<String> columns =
        plot.points().stream()
            .flatMap(pair -> Stream.of(pair.y(), pair.x()))
            .map(Statement.Option::text);
    return Stream.concat(
        Stream.of(plot.x().text()), Stream.concat(expressions(expressions), columns));
  }

  private static Stream<String> expressions(Stream<Expr> expressions) {
    return expressions.flatMap(References::names);
  }
}
