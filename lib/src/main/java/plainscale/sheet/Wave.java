package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Budget;
import plainscale.algebra.Cost;
import plainscale.algebra.Equation;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Outcome;
import plainscale.algebra.Scope;
import plainscale.laws.Constants;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.FieldStatement;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;

/**
 * One consistent set of values: each name is evaluated once, from the definitions as they stand. A
 * name that has a problem keeps it, so that all that depends on it has the same one.
 */
final class Wave implements Scope {
  private static final int LONGEST_CHAIN = 200;
  private static final Pattern ELSEWHERE =
      Pattern.compile("^“[^”]*” has a mistake in another cell: ");

  private final Basis basis;
  private final Map<String, Entry> entries;
  private final Constants constants;
  private final Budget budget;
  private final Map<String, Quantity> values = new LinkedHashMap<>();
  private final Map<String, ProblemException> problems = new HashMap<>();
  private final Set<String> underway = new LinkedHashSet<>();
  private final Derivations derivations;
  private final Map<String, Quantity> changed;
  private final Measurements measurements;

  Wave(
      Map<String, Entry> entries,
      Constants constants,
      Budget budget,
      KnownDerivations known,
      Tables tables,
      Map<String, Quantity> handed) {
    this(
        new Basis(entries, constants, budget, known, tables),
        Map.of(),
        new Measurements(entries, handed));
  }

  /** What all waves of one run have in common. */
  private record Basis(
      Map<String, Entry> entries,
      Constants constants,
      Budget budget,
      KnownDerivations known,
      Tables tables) {
    Basis within(Budget other) {
      return new Basis(entries, constants, other, known, tables);
    }

    Basis with(Map<String, Entry> relations) {
      Map<String, Entry> others = new LinkedHashMap<>(entries);
      others.putAll(relations);
      return new Basis(others, constants, budget, known, tables);
    }
  }

  private Wave(Basis basis, Map<String, Quantity> changed, Measurements measurements) {
    this.basis = basis;
    this.changed = changed;
    this.values.putAll(changed);
    this.entries = basis.entries();
    this.constants = basis.constants();
    this.budget = basis.budget();
    this.measurements = measurements;
    this.derivations = new Derivations(this, entries, budget);
  }

  /** The same sheet with other values for some names. */
  Wave with(Map<String, Quantity> changed) {
    return with(changed, Map.of());
  }

  /** The same sheet with other values for some names, and with other relations. */
  Wave with(Map<String, Quantity> changed, Map<String, Entry> relations) {
    Map<String, Quantity> all = new HashMap<>(this.changed);
    all.putAll(changed);
    return new Wave(relations.isEmpty() ? basis : basis.with(relations), all, measurements);
  }

  /** The same sheet; what else is computed from here on is paid from another budget. */
  Wave within(Budget other) {
    Wave wave = new Wave(basis.within(other), changed, measurements);
    wave.values.putAll(values);
    return wave;
  }

  /** Whether some names have other values than the sheet gives them. */
  boolean isChanged() {
    return !changed.isEmpty();
  }

  /** Whether this name has another value than the sheet gives it. */
  boolean isChanged(String name) {
    return changed.containsKey(name);
  }

  /** The derivations that the sheet has made before. */
  KnownDerivations knownDerivations() {
    return basis.known();
  }

  /** The tables of this sheet. */
  Tables tables() {
    return basis.tables();
  }

  /** The data of this sheet, seen from a source. */
  DataValues data(String source) {
    return new DataValues(entries, basis.tables(), source);
  }

  /** The derivations of this wave. */
  Derivations derivations() {
    return derivations;
  }

  /** What the sheet has under a name. */
  Optional<Entry> entry(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  /** Whether a name stands for a quantity here: one of the sheet, or a constant. */
  boolean has(String name) {
    Entry entry = entries.get(name);
    return entry == null ? constants.has(name) : entry.isQuantity();
  }

  /** What a single letter stands for, if it is a constant; it may be meant otherwise. */
  Optional<String> letter(String name) {
    return Optional.of(name)
        .filter(text -> text.codePointCount(0, text.length()) == 1 && !entries.containsKey(text))
        .flatMap(constants::find)
        .filter(c -> !c.quantity().kind().isNumber()) // π is π
        .map(
            c ->
                "%1$s is the %2$s here; if you mean a quantity of your own, define it or give it an index: %1$s_1"
                    .formatted(name, c.meaning()));
  }

  /** The values of the names in some equations, as far as they have any. */
  List<Quantity> inputs(List<Equation> equations) {
    return equations.stream()
        .flatMap(
            e -> Stream.concat(References.in(e.left()).stream(), References.in(e.right()).stream()))
        .distinct()
        .filter(name -> kind(name).isPresent())
        .map(name -> value(new Expr.Name(new Span(0, 0), name), ""))
        .toList();
  }

  /** The kind of a name's value; empty if it has none. */
  Optional<Kind> kind(String name) {
    try {
      return has(name)
          ? Optional.of(value(new Expr.Name(new Span(0, 0), name), "").kind())
          : Optional.empty();
    } catch (ProblemException noValue) {
      return Optional.empty();
    }
  }

  /** The value of a name in its coherent unit; empty if it has none. */
  OptionalDouble number(String name) {
    try {
      Expr.Name asked = new Expr.Name(new Span(0, 0), name);
      return OptionalDouble.of(value(asked, "").value().doubleValue());
    } catch (ProblemException noValue) {
      return OptionalDouble.empty();
    }
  }

  /** The values of all names that have one, computed in the order of their definitions. */
  Map<String, Quantity> allValues() {
    for (Entry entry : entries.values()) {
      if (!entry.isQuantity()) {
        continue;
      }
      try {
        value(entry, entry.statement().span(), entry.source());
      } catch (ProblemException known) {
        problems.putIfAbsent(
            entry.name(), known); // told where it was met; here the name is simply missing
      }
    }
    return Map.copyOf(values);
  }

  /** What defines a name, as an expression; empty for a given and where there is none. */
  Optional<Expr> formula(String name) {
    Entry entry = entries.get(name);
    if (entry != null && entry.statement() instanceof Statement.Solve solve) {
      return derivations.of(solve, entry.source()).outcome() instanceof Outcome.Solved solved
          ? Optional.of(solved.answer())
          : Optional.empty();
    }
    return entry == null ? Optional.empty() : entry.formula();
  }

  /** Whether the run has cost all that it may: then no value is missing, it was not computed. */
  boolean isOver() {
    return budget.isOver();
  }

  /** What the computation at a place costs is paid from the budget of this wave. */
  Cost cost(String source, Span span) {
    return new Cost(budget, source, span);
  }

  /** What the computations of this wave may cost. */
  Budget budget() {
    return budget;
  }

  /** A constant in the set that is in force, whatever the sheet calls by its name. */
  Quantity constant(String name) {
    return constants.find(name).orElseThrow().quantity();
  }

  /** The value of an expression of some source. */
  Quantity evaluate(Expr expr, String source) {
    return new Evaluator(source, this, budget).evaluate(expr);
  }

  /** The value of what follows from relations of some source, as a number in coherent SI units. */
  Quantity number(Expr expr, String source) {
    return CoherentNumbers.of(expr, this, budget, source);
  }

  @Override
  public Quantity value(Expr.Name name, String source) {
    Entry entry = entries.get(name.text());
    if (entry == null && values.containsKey(name.text())) {
      return values.get(name.text()); // a constant that was changed
    }
    if (Open.isBlank(name)) {
      throw Blanks.problem(name, source);
    }
    if (entry == null) {
      return constants
          .find(name.text())
          .orElseThrow(() -> UnknownName.problem(name, source, entries.keySet(), constants))
          .quantity();
    }
    try {
      return value(entry, name.span(), source);
    } catch (ProblemException e) {
      throw seenFrom(e, entry, name, source);
    }
  }

  /**
   * A mistake in another cell is told at the name that leans on it, not with that cell's line
   * numbers.
   */
  private static ProblemException seenFrom(
      ProblemException e, Entry entry, Expr.Name name, String source) {
    Problem root = e.problems().get(0);
    if (e.isBlank() || entry.source().equals(source) || root.source().equals(source)) {
      return e;
    }
    String cause = ELSEWHERE.matcher(root.sentence()).replaceFirst("");
    String sentence = "“" + name.text() + "” has a mistake in another cell: " + cause;
    return problem(root.kind(), sentence, source, name.span(), List.of());
  }

  private Quantity value(Entry entry, Span span, String source) {
    Quantity known = values.get(entry.name());
    if (known != null) {
      return known;
    }
    ProblemException problem = problems.get(entry.name());
    if (problem != null) {
      throw problem;
    }
    refuseCircle(entry, span, source);
    underway.add(entry.name());
    try {
      Quantity value = compute(entry);
      values.put(entry.name(), value);
      return value;
    } catch (ProblemException e) {
      problems.put(entry.name(), e);
      throw e;
    } finally {
      underway.remove(entry.name());
    }
  }

  private void refuseCircle(Entry entry, Span span, String source) {
    if (underway.contains(entry.name())) {
      List<String> circle = new ArrayList<>(underway);
      circle = circle.subList(circle.indexOf(entry.name()), circle.size());
      String path = String.join(" → ", circle) + " → " + entry.name();
      String sentence = "“" + entry.name() + "” is defined by itself: " + path + ".";
      throw problem(
          Problem.Kind.NAME, sentence, source, span, List.of("give one of them a new name"));
    }
    if (underway.size() >= LONGEST_CHAIN) {
      String sentence = "Definitions lean on one another more than " + LONGEST_CHAIN + " deep.";
      throw problem(Problem.Kind.LIMIT, sentence, source, span, List.of());
    }
  }

  private static ProblemException problem(
      Problem.Kind kind, String sentence, String source, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }

  private Quantity compute(Entry entry) {
    Blanks.refuse(entry);
    Statement statement = entry.statement();
    if (statement instanceof Statement.Given given) {
      return Evaluator.at(entry.source(), given.span(), () -> measurements.of(given));
    }
    if (statement instanceof DataStatement) {
      return data(entry.source()).value(entry);
    }
    if (statement instanceof Statement.Unreadable unreadable) {
      throw new ProblemException(unreadable.problem());
    }
    if (statement instanceof Statement.Relation relation) {
      throw problem(
          Problem.Kind.NAME,
          "“" + entry.name() + "” is a relation, not a quantity.",
          entry.source(),
          relation.span(),
          List.of("solve " + entry.name() + " for …"));
    }
    if (statement instanceof FieldStatement.Declared field) {
      throw problem(
          Problem.Kind.NAME,
          "“" + entry.name() + "” is a field, not a quantity.",
          entry.source(),
          field.span(),
          List.of("potential of " + entry.name() + " at (…, …)", "map " + entry.name()));
    }
    if (statement instanceof Statement.Solve solve) {
      Quantity value = derivations.value(solve, entry.source());
      return inUnit(value, solve.format().in(), solve.span(), entry.source());
    }
    Statement.Definition definition = (Statement.Definition) statement;
    Quantity value = evaluate(definition.formula(), entry.source());
    return inUnit(value, definition.format().in(), definition.span(), entry.source());
  }

  /** The quantity in the unit asked for, if one was. */
  static Quantity inUnit(Quantity value, @Nullable UnitOfMeasure unit, Span span, String source) {
    return unit == null ? value : Evaluator.at(source, span, () -> value.in(unit));
  }

  /**
   * What has a value already, and the givens, which lean on nothing and so can be asked at any
   * time.
   */
  @Override
  public List<String> ofKind(Kind kind) {
    return entries.values().stream()
        .filter(entry -> isOfKind(entry, kind))
        .map(Entry::name)
        .limit(5)
        .toList();
  }

  private boolean isOfKind(Entry entry, Kind kind) {
    if (entry.statement() instanceof Statement.Given given) {
      return given.measurement().unit().kind().equals(kind);
    }
    Quantity known = values.get(entry.name());
    return known != null && known.kind().equals(kind);
  }
}
