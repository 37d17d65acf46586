package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.data.Column;
import plainscale.data.Histogram;
import plainscale.data.NumberColumn;
import plainscale.data.Statistics;
import plainscale.data.TextColumn;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Problem;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** Turns the statements about data of one cell into results. */
final class ClassData implements DataStatement.Visitor<Result> {
  private final String cellId;
  private final Showing showing;
  private final DataValues values;

  ClassData(String cellId, Showing showing) {
    this.cellId = cellId;
    this.showing = showing;
    this.values = showing.wave().data(showing.source());
  }

  @Override
  public Result table(DataStatement.Table statement) {
    ReadTable table = showing.wave().tables().of(statement);
    List<NumberColumn> named = new ArrayList<>(table.numbers());
    List<DataResult.Line> lines = new ArrayList<>();
    for (Column column : table.table().columns()) {
      lines.add(column instanceof TextColumn texts ? line(texts) : line(table, named.remove(0)));
    }
    return new DataResult.Listed(
        table.table().name(),
        table.table().rows(),
        lines,
        table.table().remarks(),
        notes(statement, table),
        showing.writing());
  }

  private static DataResult.Line line(TextColumn texts) {
    int there = (int) texts.texts().stream().filter(text -> !text.isEmpty()).count();
    return new DataResult.Line(
        texts.name(), texts.heading(), there, texts.rows() - there, Optional.empty());
  }

  private static DataResult.Line line(ReadTable table, NumberColumn column) {
    int there = column.values().count();
    Optional<DataResult.Numbers> numbers =
        there == 0
            ? Optional.empty()
            : Optional.of(numbers(table.statistics(column), column.unit()));
    return new DataResult.Line(
        column.name(), column.heading(), there, column.rows() - there, numbers);
  }

  private static DataResult.Numbers numbers(Statistics statistics, UnitOfMeasure unit) {
    return new DataResult.Numbers(
        new Shown(statistics.smallest(), null, unit),
        new Shown(statistics.largest(), null, unit),
        statistics.quantity().shown());
  }

  /** Which columns have no name here, and which names found another definition since. */
  private List<String> notes(DataStatement.Table statement, ReadTable table) {
    List<String> notes = new ArrayList<>();
    List<String> nameless =
        table.numbers().stream()
            .filter(column -> column.name().isEmpty())
            .map(NumberColumn::heading)
            .toList();
    if (!nameless.isEmpty()) {
      notes.add(nameless(statement, table, nameless));
    }
    statement.named().stream()
        .map(DataStatement.Named::name)
        .filter(name -> !isOwn(name))
        .map("“%s” is defined in another cell now; there it is no column."::formatted)
        .forEach(notes::add);
    return notes;
  }

  private boolean isOwn(String name) {
    Entry entry = showing.names().entries().get(name);
    return entry == null || entry.cellId().equals(cellId);
  }

  private static String nameless(
      DataStatement.Table statement, ReadTable table, List<String> headings) {
    List<NumberColumn> files = ReadTable.numbers(table.table());
    List<String> names = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      String name = table.numbers().get(i).name();
      names.add(name.isEmpty() ? files.get(i).name() + "_c" : name);
    }
    String sentence =
        headings.size() == 1
            ? "The name of the column %s is taken in this sheet, so it needs another: data \"%s\" as %s"
            : "The names of the columns %s are taken in this sheet, so they need others: data \"%s\" as %s";
    return sentence.formatted(
        String.join(", ", headings), statement.file().text(), String.join(", ", names));
  }

  @Override
  public Result statistics(DataStatement.Statistics asked) {
    DataValues.Found found = values.find(asked.column());
    return DataProblems.at(
        showing.source(),
        asked.column().span(),
        () ->
            new Description(found, showing)
                .described(
                    asked.against().map(expr -> reference(expr, found)).orElse(null),
                    asked.against().map(expr -> TitleWords.of(expr)).orElse("")));
  }

  /** The value to compare with, of the kind of the column. */
  private Quantity reference(Expr expr, DataValues.Found found) {
    Quantity reference = showing.value(expr);
    UnitOfMeasure unit = found.numbers().unit();
    if (!reference.kind().equals(unit.kind())) {
      String sentence =
          "“%s” is in %s and the value beside it in %s; they cannot be compared."
              .formatted(found.numbers().name(), unitWord(unit), unitWord(reference.displayUnit()));
      throw showing.problem(
          Problem.Kind.UNIT, sentence, expr.span(), List.of("a value in " + unitWord(unit)));
    }
    return reference;
  }

  private static String unitWord(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "plain numbers" : unit.text();
  }

  @Override
  public Result histogram(DataStatement.Histogram asked) {
    DataValues.Found found = values.find(asked.column());
    Optional<Quantity> reference = asked.against().map(expr -> reference(expr, found));
    return DataProblems.at(
        showing.source(),
        asked.column().span(),
        () -> {
          UnitOfMeasure unit = found.numbers().unit();
          Statistics statistics = found.table().statistics(found.numbers());
          return new DataResult.Counted(
              asked.title(),
              new DataResult.Side(found.numbers().name(), unit),
              Histogram.of(statistics),
              statistics.count(),
              statistics.quantity().shown(),
              reference.map(value -> value.in(unit).shown()).orElse(null),
              showing.writing());
        });
  }

  @Override
  public Result fit(DataStatement.Fit asked) {
    for (Statement.Option name : asked.names()) {
      if (!isOwn(name.text())) {
        return new Result.Noted(
            "“" + name.text() + "” is defined in another cell now; this fit no longer counts.");
      }
    }
    return new FitReport(showing, values).fitted(asked);
  }

  @Override
  public Result plot(DataStatement.Plot asked) {
    Span span = asked.y().value().span().to(asked.x().span());
    return DataProblems.at(
        showing.source(), span, () -> new PlotReport(showing, values).plotted(asked));
  }
}
