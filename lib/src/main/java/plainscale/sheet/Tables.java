package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import plainscale.algebra.Budget;
import plainscale.data.DataFolder;
import plainscale.data.DataTable;
import plainscale.data.NumberColumn;
import plainscale.notation.DataStatement;
import plainscale.notation.Greek;
import plainscale.notation.Keywords;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;

/**
 * The tables that the cells of a sheet have read. A file is read when its cell runs; as long as it
 * holds the same bytes, what was made of it is kept.
 */
final class Tables {
  private final Optional<DataFolder> folder;
  private final Map<DataStatement.Table, ReadTable> read = new HashMap<>();
  private final Map<String, DataTable> handed = new HashMap<>();

  /** From the files of that folder. */
  Tables(Optional<DataFolder> folder) {
    this.folder = folder;
  }

  /** The same tables; what either reads from now on is nothing to the other. */
  Tables copy() {
    Tables copy = new Tables(folder);
    copy.read.putAll(read);
    copy.handed.putAll(handed);
    return copy;
  }

  /** A table that stands for the file of its name. */
  void hand(DataTable table) {
    handed.put(table.name(), table);
  }

  /** All that were read, in no order. */
  Stream<ReadTable> all() {
    return read.values().stream();
  }

  /** What a statement has read. */
  ReadTable of(DataStatement.Table table) {
    ReadTable found = read.get(table);
    if (found == null) {
      throw new IllegalStateException(table.file().text() + " was not read");
    }
    return found;
  }

  /** Forgets the tables that no statement asks for any more. */
  void keep(Stream<Statement> statements) {
    Set<Statement> asked = new HashSet<>();
    statements.filter(DataStatement.Table.class::isInstance).forEach(asked::add);
    read.keySet().retainAll(asked);
  }

  /** Reads the file of a statement, and tells the statement what its columns are called. */
  DataStatement.Table read(
      DataStatement.Table asked, String source, SheetNames others, Budget budget) {
    return DataProblems.at(
        source,
        asked.file().span(),
        () -> budget.untimed(() -> opened(asked, source, others, budget)));
  }

  private DataStatement.Table opened(
      DataStatement.Table asked, String source, SheetNames others, Budget budget) {
    String file = asked.file().text();
    DataTable given = handed.get(file);
    return given != null
        ? kept(given, System.identityHashCode(given), asked, source, others)
        : fromFile(asked, source, others, budget);
  }

  private DataStatement.Table fromFile(
      DataStatement.Table asked, String source, SheetNames others, Budget budget) {
    String file = asked.file().text();
    DataFolder beside =
        folder.orElseThrow(
            () ->
                DataProblems.problem(
                    Problem.Kind.VALUE,
                    "This sheet has no folder, so it reads no files.",
                    source,
                    asked.file().span(),
                    List.of("save the notebook, and put the file beside it")));
    byte[] bytes = beside.bytes(file);
    long content = content(bytes);
    DataTable table =
        known(file, content)
            .orElseGet(() -> DataTable.read(file, bytes, pause(budget, asked, source)));
    return kept(table, content, asked, source, others);
  }

  private DataStatement.Table kept(
      DataTable table, long content, DataStatement.Table asked, String source, SheetNames others) {
    List<String> names = names(table, asked, source, others);
    DataStatement.Table statement = asked.read(named(table, names), content);
    read.computeIfAbsent(statement, s -> new ReadTable(table, names));
    return statement;
  }

  private Optional<DataTable> known(String file, long content) {
    return read.entrySet().stream()
        .filter(e -> e.getKey().content() == content && e.getKey().file().text().equals(file))
        .map(e -> e.getValue().table())
        .findFirst();
  }

  private static long content(byte[] bytes) {
    CRC32 sum = new CRC32();
    sum.update(bytes);
    return ((long) bytes.length << Integer.SIZE) ^ sum.getValue();
  }

  /** How long a file takes is bounded by its size; whoever does not want to wait stops it. */
  private static Runnable pause(Budget budget, DataStatement.Table asked, String source) {
    return () -> {
      if (budget.isStopped()) {
        throw DataProblems.problem(
            Problem.Kind.LIMIT, "Stopped, as you asked.", source, asked.file().span(), List.of());
      }
    };
  }

  /**
   * What the columns of numbers are called, in their order: as the statement says, else as the file
   * says; empty where that is a word of the notation or something else in this sheet.
   */
  private static List<String> names(
      DataTable table, DataStatement.Table asked, String source, SheetNames others) {
    List<NumberColumn> columns = ReadTable.numbers(table);
    List<Statement.Option> wanted = asked.names();
    if (wanted.size() > columns.size()) {
      throw tooMany(asked, columns, source);
    }
    List<String> names = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      names.add(i < wanted.size() ? wanted.get(i).text() : own(columns.get(i), others));
    }
    for (int i = wanted.size(); i < names.size(); i++) {
      if (names.subList(0, i).contains(names.get(i))) {
        names.set(i, "");
      }
    }
    return names;
  }

  private static String own(NumberColumn column, SheetNames others) {
    String name = Greek.normal(column.name());
    return Keywords.isReserved(name) || others.entries().containsKey(name) ? "" : name;
  }

  private static ProblemException tooMany(
      DataStatement.Table asked, List<NumberColumn> columns, String source) {
    String sentence =
        "“%s” has %d %s of numbers, and here are %d names."
            .formatted(
                asked.file().text(),
                columns.size(),
                columns.size() == 1 ? "column" : "columns",
                asked.names().size());
    Statement.Option first = asked.names().get(columns.size());
    List<String> repairs =
        columns.isEmpty()
            ? List.of()
            : List.of(
                "as "
                    + String.join(
                        ", ",
                        asked.names().subList(0, columns.size()).stream()
                            .map(Statement.Option::text)
                            .toList()));
    return DataProblems.problem(Problem.Kind.NAME, sentence, source, first.span(), repairs);
  }

  private static List<DataStatement.Named> named(DataTable table, List<String> names) {
    List<NumberColumn> columns = ReadTable.numbers(table);
    List<DataStatement.Named> named = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (!names.get(i).isEmpty()) {
        int values = columns.get(i).values().count();
        String words =
            "column %s of %s, mean of %d %s"
                .formatted(
                    columns.get(i).heading(),
                    table.name(),
                    values,
                    values == 1 ? "value" : "values");
        named.add(new DataStatement.Named(names.get(i), words));
      }
    }
    return named;
  }
}
