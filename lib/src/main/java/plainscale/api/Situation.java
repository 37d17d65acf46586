package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.data.DataTable;
import plainscale.notation.DataStatement.Curve;
import plainscale.notation.Problem;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.sheet.DataResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;

/**
 * What is given, defined and related: the names of a sheet as an immutable value. Each method that
 * adds to it returns a new situation; a name that is given or defined again is replaced, and what
 * follows from it follows. Quantities keep their figures and their sources of uncertainty when they
 * enter, so that what is computed from one measurement knows it.
 *
 * <p>Formulas, equations and units are written in the notation. What cannot be read or has no value
 * is told at once, by a {@link PhysicsException}.
 *
 * <pre>{@code
 * Situation ball = given("m", quantity("2.70(5) g"), "mass of one ball")
 *     .given("v", "3.0 m/s")
 *     .define("E_k", "1/2 m v^2", "kinetic energy");
 * check(ball.value("E_k").toString().equals("0.012 J"));
 * check(ball.given("v", "6.0 m/s").value("E_k").in("mJ").shown().value().intValue() == 49);
 * }</pre>
 */
public final class Situation implements Displayed {
  /** Before the cell of a quantity that belongs to one statement and is not shown by itself. */
  private static final String ASIDE = "aside ";

  static final Situation NOTHING = new Situation(new Sheet(), List.of());

  private final Sheet sheet;
  private final List<String> cells;

  private Situation(Sheet sheet, List<String> cells) {
    this.sheet = sheet;
    this.cells = List.copyOf(cells);
  }

  // What stands in it

  /** With a quantity under a name. */
  public Situation given(String name, Quantity value) {
    return given(name, value, "");
  }

  /** With a quantity under a name, and what it is in words. */
  public Situation given(String name, Quantity value, String what) {
    return taking(name, value, name, what);
  }

  /** With a measured value as a given is written: {@code 2.70 ± 0.05 g}, or a list of readings. */
  public Situation given(String name, String measured) {
    return given(name, measured, "");
  }

  /** With a measured value as a given is written, and what it is in words. */
  public Situation given(String name, String measured, String what) {
    Sheet next = sheet.copy();
    next.takeBack(name);
    Situation with = with(next, name, "given " + name + " = " + measured + Written.after(what));
    with.pin(List.of(name));
    return with;
  }

  /** With a quantity that has its name and its words with it. */
  public Situation given(Named named) {
    return given(named.name(), named.quantity(), named.what());
  }

  /**
   * With several lists of readings that were taken at the same moments, each as {@code "U = 5.007,
   * 4.994 V"}: their means keep the correlation of the readings.
   */
  public Situation together(String... readings) {
    List<String> names = Stream.of(readings).map(r -> r.split("=", 2)[0].strip()).toList();
    Sheet next = sheet.copy();
    names.forEach(next::takeBack);
    String givens = Stream.of(readings).map(r -> "given " + r).collect(Collectors.joining("\n"));
    String cell = "together " + String.join(", ", names);
    Situation with = with(next, cell, givens + "\n" + cell);
    with.pin(names);
    return with;
  }

  /** With a name for a formula: {@code define("w", "m g_n")}; it may end with {@code in mN}. */
  public Situation define(String name, String formula) {
    return define(name, formula, "");
  }

  /** With a name for a formula, and what it is in words. */
  public Situation define(String name, String formula, String what) {
    return with(name, name + " = " + formula + Written.after(what));
  }

  /** With an equation that has no name yet; it gets one, {@code equation_1}. */
  public Situation relation(String equation) {
    return relation(freeName("equation_"), equation);
  }

  /** With an equation under a name. */
  public Situation relation(String name, String equation) {
    return relation(name, equation, "");
  }

  /** With an equation under a name, and what it says in words. */
  public Situation relation(String name, String equation, String what) {
    return with(name, "relation " + name + ": " + equation + Written.after(what));
  }

  /** With the relation that a law states. */
  public Situation use(LawUse law) {
    return with(law.relation(), law.statement());
  }

  /**
   * With the columns of numbers of a table: each becomes a name, {@code names} if there are any,
   * else as the table calls it. The value of such a name is the mean of the column.
   */
  public Situation data(DataTable table, String... names) {
    Sheet next = sheet.copy();
    next.hand(table);
    String file = Written.quoted(table.name());
    String columns = Written.clause("as", String.join(", ", names));
    return with(next, "data " + file, "data " + file + columns);
  }

  /** With a choice for all of it, as {@code choose(Setting.CONSTANTS, "textbook")}. */
  public Situation choose(Statement.Setting setting, String option) {
    String word = setting.name().toLowerCase(Locale.ROOT);
    return with(word, word + " " + option);
  }

  /** With what numbers look like somewhere, by language tag: {@code locale("de-CH")}. */
  public Situation locale(String tag) {
    return choose(Statement.Setting.LOCALE, tag);
  }

  /** With the rounded constants of school books, with their figures, in place of CODATA's. */
  public Situation textbookConstants() {
    return choose(Statement.Setting.CONSTANTS, "textbook");
  }

  // What it has

  /** The value of a name or of a formula, with its uncertainty by source. */
  public Quantity value(String formula) {
    List<Result> results = sheet.ask("show " + Written.oneStatement(formula));
    refuseMistakes(results);
    return sheet.value(formula).orElseGet(() -> quantity(results));
  }

  /** The names of all that has a value here, in the order of the definitions. */
  public Set<String> names() {
    return sheet.quantities();
  }

  /** The sheet behind it: a copy, to go on with in the notation. */
  public Sheet sheet() {
    return sheet.copy();
  }

  /** All of its lines, in order, with what they are now. */
  @Override
  public List<Result> results() {
    return cells.stream()
        .filter(cell -> !cell.startsWith(ASIDE))
        .flatMap(cell -> sheet.results(cell).stream())
        .toList();
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }

  // Asking

  /** Solves all of its relations for an unknown. */
  public Solution solveFor(String unknown) {
    return solve(unknown, sheet.relations());
  }

  /** Solves some of its relations for an unknown. */
  public Solution solve(String unknown, List<String> relations) {
    return Solution.of(this, unknown, relations);
  }

  /** A value or a formula in the form that is chosen then. */
  public Wording show(String formula) {
    return Wording.of(this, formula);
  }

  /** A formula and its value, as a line of its own shows it. */
  public Answer<Result.Valued> showValue(String formula) {
    return ask(formula, Result.Valued.class);
  }

  /** A sentence with live values in braces: {@code say("It weighs {w in mN to 2 figures}.")}. */
  public Answer<Result.Narrated> say(String sentence) {
    return ask("say " + Written.quoted(sentence), Result.Narrated.class);
  }

  /** Results with some names changed; what is changed is said next. */
  public WhatIf whatIf(String name, String formula) {
    return WhatIf.of(this).and(name, formula);
  }

  /** Results with some names changed; what else is changed is said next. */
  public WhatIf whatIf(String name, Quantity value) {
    return WhatIf.of(this).and(name, value);
  }

  /** Several cases side by side; the first is called so and changes nothing. */
  public SideBySide compare(String first) {
    return SideBySide.of(this, first);
  }

  /** A table: a name from one value to another, and what follows ({@code "q in nC"}). */
  public Answer<Result.Varied> vary(
      String name, String from, String to, String step, String... shown) {
    return vary(name, Operand.of(from), Operand.of(to), step, shown);
  }

  /** A table: a name from one value to another, and what follows ({@code "q in nC"}). */
  public Answer<Result.Varied> vary(
      String name, Quantity from, Quantity to, Quantity step, String... shown) {
    return vary(name, Operand.of(from), Operand.of(to), Operand.of(step).written(), shown);
  }

  private Answer<Result.Varied> vary(
      String name, Operand from, Operand to, String step, String... shown) {
    String range = " from " + from.written() + " to " + to.written() + Written.clause("by", step);
    return ask("vary " + name + range + " show " + String.join(", ", shown), Result.Varied.class);
  }

  /** What comes of a name ever nearer to a value, or ever larger for {@code "infinity"}. */
  public Answer<Result.Limited> limit(String name, String to, String... shown) {
    return ask(
        "limit " + name + " to " + to + " show " + String.join(", ", shown), Result.Limited.class);
  }

  /** By which power a quantity follows a name. */
  public Answer<Result.Dependence> depends(String formula, String on) {
    return ask("depends " + formula + " on " + on, Result.Dependence.class);
  }

  /** Where the uncertainty of a quantity comes from. */
  public Answer<Result.Budgeted> budget(String formula) {
    return ask("budget " + formula, Result.Budgeted.class);
  }

  /** The same with so many trials (JCGM 101:2008); the same seed gives the same trials. */
  public Answer<Result.Budgeted> budget(String formula, int trials, long seed) {
    String with = " with " + trials + " trials seed " + seed;
    return ask("budget " + formula + with, Result.Budgeted.class);
  }

  /** Where a value should lie, which is said next. */
  public Expectation expect(String formula) {
    return Expectation.of(this, formula);
  }

  /** Two to six quantities set against each other. */
  public Contrast contrast(String... formulas) {
    return Contrast.of(this, List.of(formulas));
  }

  /** The landmarks just above and below a quantity. */
  public Answer<Result.Placed> near(String formula) {
    return ask("near " + formula, Result.Placed.class);
  }

  /** The steps from a power of ten to digits and words. */
  public Answer<Result.Expanded> expand(String formula) {
    return ask("expand " + formula, Result.Expanded.class);
  }

  /** The same steps left to be filled in. */
  public Answer<Result.Expanded> expandWithBoxes(String formula) {
    return ask("expand " + formula + " with boxes", Result.Expanded.class);
  }

  /** One to six quantities on a ruler in powers of ten. */
  public Answer<Result.Pictured> ruler(String... formulas) {
    return ask("ruler " + String.join(" with ", formulas), Result.Pictured.class);
  }

  /** A number as a square in a square, each holding a thousand of the next. */
  public Answer<Result.Pictured> squares(String... formulas) {
    return ask("squares " + String.join(" with ", formulas), Result.Pictured.class);
  }

  /** One to three numbers as dots. */
  public Answer<Result.Pictured> dots(String... formulas) {
    return ask("dots " + String.join(" with ", formulas), Result.Pictured.class);
  }

  /** A body and what acts on it, which is said next. */
  public ForcesOn forces(String body) {
    return ForcesOn.of(this, body);
  }

  /** Which forces on these bodies are action and reaction; without bodies, on all. */
  public Answer<Result.Paired> pairs(String... bodies) {
    String named = Stream.of(bodies).map(Written::quoted).collect(Collectors.joining(", "));
    return ask(("pairs " + named).strip(), Result.Paired.class);
  }

  /** A field by its name; its sources are said next. */
  public FieldOf field(String name) {
    return FieldOf.of(this, name);
  }

  /** The statistics of a column. */
  public Answer<DataResult.Described> statistics(String column) {
    return ask("statistics " + column, DataResult.Described.class);
  }

  /** The statistics of a column beside a reference value. */
  public Answer<DataResult.Described> statistics(String column, Quantity against) {
    String reference = Operand.of(against).written();
    return ask("statistics " + column + " against " + reference, DataResult.Described.class);
  }

  /** How many values of a column lie where. */
  public Answer<DataResult.Counted> histogram(String column) {
    return ask("histogram " + column, DataResult.Counted.class);
  }

  /** How many values of a column lie where, beside a reference value. */
  public Answer<DataResult.Counted> histogram(String column, Quantity against) {
    String reference = Operand.of(against).written();
    return ask("histogram " + column + " against " + reference, DataResult.Counted.class);
  }

  /** A curve through the points of two columns. */
  public FitThrough fit(Curve curve, String y, String x) {
    return FitThrough.of(this, curve, y, x);
  }

  /** A straight line through the points of two columns. */
  public FitThrough fitLine(String y, String x) {
    return fit(Curve.LINE, y, x);
  }

  /** The points of two columns, or a quantity over a name, as a picture. */
  public PlotOf plot(String y, String x) {
    return PlotOf.of(this, y, x);
  }

  /**
   * With hazards: what is given here is of them, so that values beyond their limits set off
   * cautions, as a dome's energy does with {@code electrostatic_generator}.
   */
  public Situation withHazards(String... hazards) {
    return with("caution", "caution " + String.join(", ", hazards));
  }

  /** The cautions of some hazards. */
  public Answer<GuardResult.Cautioned> caution(String... hazards) {
    return ask("caution " + String.join(", ", hazards), GuardResult.Cautioned.class);
  }

  // Inside

  /** A name that nothing has here. */
  String freeName(String stem) {
    int number = 1;
    while (sheet.entry(stem + number).isPresent()) {
      number++;
    }
    return stem + number;
  }

  Situation givenAside(String name, Quantity value) {
    return taking(name, value, ASIDE + name, "");
  }

  private Situation taking(String name, Quantity value, String cell, String what) {
    Sheet next = sheet.copy();
    next.hand(name, value);
    return with(next, cell, "given " + name + " = " + Written.given(value) + Written.after(what));
  }

  Situation with(String cell, String statement) {
    return with(sheet.copy(), cell, statement);
  }

  private Situation with(Sheet next, String cell, String statement) {
    refuseMistakes(next.run(cell, statement).results());
    List<String> all = new ArrayList<>(cells);
    if (!all.contains(cell)) {
      all.add(cell);
    }
    return new Situation(next, all);
  }

  /** Measured once, it is the same measurement from then on. */
  private void pin(List<String> names) {
    names.forEach(name -> sheet.value(name).ifPresent(value -> sheet.hand(name, value)));
  }

  /** What one of its lines shows now. */
  List<Result> results(String cell) {
    return sheet.results(cell);
  }

  <R extends Result> Answer<R> ask(String statement, Class<R> kind) {
    return Answer.of(this, statement, kind);
  }

  /** What a statement shows here, a result of that kind among it. */
  List<Result> results(String statement, Class<? extends Result> kind) {
    List<Result> results = sheet.ask(Written.oneStatement(statement));
    Answer.first(results, kind);
    return results;
  }

  static void refuseMistakes(List<Result> results) {
    List<Problem> problems =
        results.stream()
            .filter(Result.Mistaken.class::isInstance)
            .map(result -> ((Result.Mistaken) result).problem())
            .toList();
    if (!problems.isEmpty()) {
      throw new PhysicsException(problems);
    }
  }

  private static Quantity quantity(List<Result> results) {
    return Answer.first(results, Result.Valued.class).quantity();
  }
}
