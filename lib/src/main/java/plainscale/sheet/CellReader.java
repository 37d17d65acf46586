package plainscale.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.algebra.Budget;
import plainscale.notation.DataStatement;
import plainscale.notation.Notation;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;

/**
 * Reads a cell, the files that it asks for and the laws that it uses. The names of columns are
 * known only then, so a cell with data is read twice: whether a word after a number is a unit hangs
 * on them.
 */
record CellReader(Tables tables, SheetNames others, Budget budget) {

  /** The statements; a file that cannot be read makes its line one that cannot be read. */
  List<Statement> read(String source) {
    List<Statement> first = Notation.read(source, others);
    Map<Span, Statement> opened = new HashMap<>();
    first.stream()
        .filter(DataStatement.Table.class::isInstance)
        .forEach(table -> opened.put(table.span(), opened((DataStatement.Table) table, source)));
    Set<String> own = own(Stream.concat(first.stream(), opened.values().stream()));
    List<Statement> again = own.isEmpty() ? first : Notation.read(source, others, own);
    LawReader laws = new LawReader(source, others);
    return again.stream().map(s -> laws.read(opened.getOrDefault(s.span(), s))).toList();
  }

  private static Set<String> own(Stream<Statement> statements) {
    return statements
        .filter(DataStatement.class::isInstance)
        .flatMap(statement -> ((DataStatement) statement).named().stream())
        .map(DataStatement.Named::name)
        .collect(Collectors.toSet());
  }

  private Statement opened(DataStatement.Table table, String source) {
    try {
      return tables.read(table, source, others, budget);
    } catch (ProblemException e) {
      return new Statement.Unreadable(table.span(), "", e.problems().get(0));
    }
  }
}
