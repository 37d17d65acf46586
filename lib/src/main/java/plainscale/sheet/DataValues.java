package plainscale.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import plainscale.data.Fit;
import plainscale.data.NumberColumn;
import plainscale.data.Parameter;
import plainscale.notation.DataStatement;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.text.Near;

/** The columns of a sheet's tables, and the quantities that follow from them. */
record DataValues(Map<String, Entry> entries, Tables tables, String source) {
  private static final int MOST_NAMED = 12;

  /** A column and the table in which it stands. */
  record Found(ReadTable table, NumberColumn numbers) {}

  /** The value of a name that a statement about data defines. */
  Quantity value(Entry entry) {
    if (entry.statement() instanceof DataStatement.Fit fit) {
      Statement.Option name =
          fit.names().stream().filter(n -> n.text().equals(entry.name())).findFirst().orElseThrow();
      return parameters(fit, of(fit)).get(fit.names().indexOf(name)).quantity();
    }
    DataStatement.Table statement = (DataStatement.Table) entry.statement();
    ReadTable table = tables.of(statement);
    NumberColumn column = table.numbers(entry.name()).orElseThrow();
    return DataProblems.at(
        entry.source(), statement.file().span(), () -> table.statistics(column).quantity());
  }

  /** The fit of a statement. */
  Fit of(DataStatement.Fit fit) {
    Found y = find(fit.y());
    Found x = find(fit.x());
    refuseApart(y, x, new DataStatement.Pair(fit.y(), fit.x()));
    return DataProblems.at(source, fit.y().span().to(fit.x().span()), () -> y.table().fit(fit));
  }

  /** The parameters in the order in which a statement names them: a slope before its intercept. */
  static List<Parameter> parameters(DataStatement.Fit asked, Fit fit) {
    List<Parameter> parameters = new ArrayList<>(fit.parameters());
    if (asked.curve() == DataStatement.Curve.LINE) {
      parameters.sort(Comparator.comparing(Parameter::symbol).reversed());
    }
    return parameters;
  }

  /** Refuses columns that stand in different tables. */
  void refuseApart(Found y, Found x, DataStatement.Pair pair) {
    if (y.table() != x.table()) {
      throw problem(
          "“%s” and “%s” stand in different tables; a point needs both in one row."
              .formatted(pair.y().text(), pair.x().text()),
          new Statement.Option(pair.y().span().to(pair.x().span()), ""),
          List.of("put both columns into one file"));
    }
  }

  /** The column of a name. */
  Found find(Statement.Option name) {
    Entry entry = entries.get(name.text());
    if (entry != null && entry.statement() instanceof DataStatement.Table statement) {
      ReadTable table = tables.of(statement);
      return new Found(table, table.numbers(name.text()).orElseThrow());
    }
    throw noColumn(name, entry != null);
  }

  /** Whether a name is a column. */
  boolean has(String name) {
    Entry entry = entries.get(name);
    return entry != null && entry.statement() instanceof DataStatement.Table;
  }

  private ProblemException noColumn(Statement.Option name, boolean defined) {
    if (tables.all().anyMatch(table -> table.hasWords(name.text()))) {
      return problem(
          "The column “%s” holds words, not numbers.".formatted(name.text()), name, columns());
    }
    List<String> columns = columns();
    if (columns.isEmpty()) {
      return problem("There is no table in this sheet yet.", name, List.of("data \"class.csv\""));
    }
    if (defined) {
      return problem(
          "“%s” is one value; here a column of a table is needed.".formatted(name.text()),
          name,
          columns);
    }
    List<String> near = Near.to(name.text(), columns, 3);
    return problem(
        "There is no column “%s”.".formatted(name.text()), name, near.isEmpty() ? columns : near);
  }

  private List<String> columns() {
    return entries.values().stream()
        .filter(entry -> entry.statement() instanceof DataStatement.Table)
        .map(Entry::name)
        .limit(MOST_NAMED)
        .toList();
  }

  private ProblemException problem(String sentence, Statement.Option place, List<String> repairs) {
    return DataProblems.problem(Problem.Kind.NAME, sentence, source, place.span(), repairs);
  }
}
