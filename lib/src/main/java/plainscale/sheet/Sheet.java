package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.algebra.Budget;
import plainscale.algebra.Equation;
import plainscale.data.DataFolder;
import plainscale.data.DataTable;
import plainscale.laws.Constants;
import plainscale.magnitude.Writing;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Open;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;

/**
 * The cells of one lesson and what they define. Running a cell again replaces what it defined
 * before; earlier cells whose results depend on the change come back as updates, computed in the
 * same wave.
 *
 * <p>Running is for one thread at a time; {@link #names}, {@link #entry} and {@link #value} may be
 * asked from any thread and answer from the last finished run.
 *
 * <pre>{@code
 * Sheet sheet = new Sheet();
 * Run run = sheet.run("cell-1", "given m = 2.70 g\nw = m g_n");
 * }</pre>
 */
public final class Sheet {
  private final Map<String, Cell> cells = new LinkedHashMap<>();
  private final KnownDerivations derivations;
  private final Map<String, List<Result>> shown = new LinkedHashMap<>();
  private final Map<String, Quantity> handed = new LinkedHashMap<>();
  private final Tables tables;
  private volatile Map<String, Entry> entries = Map.of();
  private volatile Map<String, Quantity> values = Map.of();
  private volatile Settings settings = Settings.USUAL;
  private Set<String> cautioned = Set.of();

  private record Cell(String source, List<Statement> statements) {}

  /** A sheet that reads no files. */
  public Sheet() {
    this(new Tables(Optional.empty()), new KnownDerivations());
  }

  /** A sheet whose {@code data} statements read files of that folder, and no others. */
  public Sheet(DataFolder folder) {
    this(new Tables(Optional.of(folder)), new KnownDerivations());
  }

  private Sheet(Tables tables, KnownDerivations derivations) {
    this.tables = tables;
    this.derivations = derivations;
  }

  /** A sheet that stands as this one does now; what happens to one is nothing to the other. */
  public synchronized Sheet copy() {
    Sheet copy = new Sheet(tables.copy(), derivations);
    copy.cells.putAll(cells);
    copy.shown.putAll(shown);
    copy.handed.putAll(handed);
    copy.entries = entries;
    copy.values = values;
    copy.settings = settings;
    copy.cautioned = cautioned;
    return copy;
  }

  /**
   * From its next run on a given of that name has this value, with all its sources of uncertainty,
   * whatever figures are written in its line.
   */
  public synchronized void hand(String name, Quantity value) {
    handed.put(name, value.called(name));
  }

  /** From its next run on a given of that name is what its line says. */
  public synchronized void takeBack(String name) {
    handed.remove(name);
  }

  /** From now on {@code data} reads this table where it asks for a file of its name. */
  public synchronized void hand(DataTable table) {
    tables.hand(table);
  }

  /** Runs a cell within the usual budget. */
  public Run run(String cellId, String source) {
    return run(cellId, source, Budget.usual());
  }

  /** Runs a cell; a mistake of its author is among the results, never thrown. */
  public synchronized Run run(String cellId, String source, Budget budget) {
    try {
      List<Statement> statements =
          new CellReader(tables, namesWithout(cellId), budget).read(source);
      return run(cellId, new Cell(source, statements), budget);
    } catch (ProblemException e) {
      return new Run(mistakes(e), List.of(), false);
    }
  }

  private Run run(String cellId, Cell cell, Budget budget) {
    Definitions defined = Definitions.of(entries, cellId, cell.source(), cell.statements());
    entries = defined.entries();
    cells.remove(cellId);
    cells.put(cellId, cell);
    tables.keep(statements());
    Settings before = settings;
    settings = chosen();
    Set<String> cautionedBefore = cautioned;
    cautioned = Cautions.in(statements());
    Wave wave = wave(budget);
    Map<String, Quantity> computed =
        wave.allValues(); // in order: a long chain is met from its start
    List<Result> results = new ArrayList<>(defined.remarks());
    results.addAll(results(cellId, cell, wave));
    shown.put(cellId, List.copyOf(results));
    List<Run.Update> updates =
        new ArrayList<>(updates(cellId, defined.changed(), !settings.equals(before), wave));
    if (!cautioned.equals(cautionedBefore)) {
      updates.addAll(warnings(cellId, wave));
    }
    values = computed;
    return new Run(results, updates, isFixed(cell));
  }

  private Wave wave(Budget budget) {
    return new Wave(entries, settings.constants(), budget, derivations, tables, handed);
  }

  private Stream<Statement> statements() {
    return cells.values().stream().flatMap(cell -> cell.statements().stream());
  }

  private Settings chosen() {
    return Settings.of(
        statements()
            .filter(Statement.Choice.class::isInstance)
            .map(Statement.Choice.class::cast)
            .toList());
  }

  /** The results of a cell; a mistake that several statements share is told once. */
  private List<Result> results(String cellId, Cell cell, Wave wave) {
    SheetNames names = new SheetNames(entries, settings.constants());
    Showing showing = new Showing(cell.source(), wave, names, settings);
    Presenter presenter = new Presenter(cellId, showing);
    Unfinished unfinished = new Unfinished(showing);
    Watch watch = new Watch(cellId, showing, cautioned);
    List<Result> results = new ArrayList<>();
    for (Statement statement : cell.statements()) {
      if (Definitions.isSecond(statement, cellId, entries)) {
        continue; // told with the definitions
      }
      try {
        results.add(statement.accept(presenter));
        results.addAll(statement instanceof Open ? unfinished.mistakes(statement) : List.of());
        results.addAll(watch.after(statement));
      } catch (ProblemException e) {
        presenter.withoutValue(statement).ifPresent(results::add);
        results.addAll(e.isBlank() ? unfinished.waiting(statement, e) : mistakes(e));
      }
    }
    return toldOnce(results);
  }

  /** Each line with blanks counts, though its sentence be that of another. */
  private static List<Result> toldOnce(List<Result> results) {
    Set<Result> told = new HashSet<>();
    return results.stream()
        .filter(result -> told.add(result) || result instanceof Result.Unfinished)
        .toList();
  }

  private static List<Result> mistakes(ProblemException e) {
    return e.problems().stream().<Result>map(Result.Mistaken::new).toList();
  }

  private List<Run.Update> updates(String cellId, Set<String> changed, boolean all, Wave wave) {
    List<Run.Update> updates = new ArrayList<>();
    cells.forEach(
        (id, cell) -> {
          if (!id.equals(cellId) && (all || uses(cell, changed))) {
            List<Result> results = results(id, cell, wave);
            boolean same = results.equals(shown.put(id, results));
            if (!same) {
              updates.add(new Run.Update(id, results));
            }
          }
        });
    return updates;
  }

  /** Other cautions in the sheet may set off others at the values of earlier cells. */
  private List<Run.Update> warnings(String cellId, Wave wave) {
    List<Run.Update> updates = new ArrayList<>();
    cells.forEach(
        (id, cell) -> {
          List<Result> before = shown.getOrDefault(id, List.of());
          List<Result> results = id.equals(cellId) ? before : results(id, cell, wave);
          if (!GuardResult.setOff(results).equals(GuardResult.setOff(before))) {
            shown.put(id, results);
            updates.add(new Run.Update(id, results));
          }
        });
    return updates;
  }

  private boolean isFixed(Cell cell) {
    return cell.statements().size() == 1
        && cell.statements().get(0) instanceof Statement.Show show
        && show.bare()
        && References.of(show, entries).isEmpty();
  }

  private boolean uses(Cell cell, Set<String> changed) {
    return cell.statements().stream()
        .anyMatch(
            statement -> References.of(statement, entries).stream().anyMatch(changed::contains));
  }

  /** The value of one expression, without changing the sheet. */
  public synchronized Run evaluate(String expression, Budget budget) {
    try {
      Statement.Show show = Notation.parseExpression(expression, names());
      Wave wave = wave(budget);
      return new Run(results("", new Cell(expression, List.of(show)), wave), List.of(), true);
    } catch (ProblemException e) {
      return new Run(mistakes(e), List.of(), false);
    }
  }

  /**
   * What statements that define nothing would show, as a cell that stands last; nothing of the
   * sheet changes by asking.
   */
  public synchronized List<Result> ask(String source) {
    Budget budget = Budget.usual();
    try {
      List<Statement> statements = new CellReader(tables, namesWithout(""), budget).read(source);
      return results("", new Cell(source, statements), wave(budget));
    } catch (ProblemException e) {
      return mistakes(e);
    }
  }

  /** What a cell shows as the sheet stands now; nothing if there is no such cell. */
  public synchronized List<Result> results(String cellId) {
    Cell cell = cells.get(cellId);
    return cell == null ? List.of() : results(cellId, cell, wave(Budget.usual()));
  }

  /** The names of all that has a value, in the order of the definitions. */
  public Set<String> quantities() {
    Map<String, Quantity> now = values;
    Set<String> names = new LinkedHashSet<>(entries.keySet());
    names.retainAll(now.keySet());
    return names;
  }

  /** The names in a relation; none if there is no such relation. */
  public Set<String> letters(String relation) {
    return Optional.ofNullable(entries.get(relation))
        .map(Entry::statement)
        .filter(Statement.Relation.class::isInstance)
        .map(Statement.Relation.class::cast)
        .map(stated -> Derivations.names(new Equation(stated.left(), stated.right())))
        .orElse(Set.of());
  }

  /** The names of the relations, in the order of the definitions. */
  public List<String> relations() {
    return entries.values().stream()
        .filter(entry -> entry.statement() instanceof Statement.Relation)
        .map(Entry::name)
        .toList();
  }

  /** The names as they stand. */
  public Names names() {
    return new SheetNames(entries, settings.constants());
  }

  /** The statements of a cell as they were read in its last run; none if it could not be read. */
  public synchronized List<SheetLine> lines(String cellId) {
    Cell cell = cells.get(cellId);
    return cell == null ? List.of() : cell.statements().stream().map(SheetLine::of).toList();
  }

  /** What defines a name. */
  public Optional<Entry> entry(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  /** The value of a name after the last run, if it was needed or shown there. */
  public Optional<Quantity> value(String name) {
    return Optional.ofNullable(values.get(name));
  }

  /** The constants in force. */
  public Constants constants() {
    return settings.constants();
  }

  /** How numbers are written. */
  public Writing writing() {
    return settings.writing();
  }

  private SheetNames namesWithout(String cellId) {
    Map<String, Entry> others = new LinkedHashMap<>(entries);
    others.values().removeIf(entry -> entry.cellId().equals(cellId));
    return new SheetNames(others, settings.constants());
  }
}
