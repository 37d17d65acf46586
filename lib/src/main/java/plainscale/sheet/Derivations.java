package plainscale.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.algebra.Budget;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Known;
import plainscale.algebra.NumericSystem;
import plainscale.algebra.Outcome;
import plainscale.algebra.Relation;
import plainscale.algebra.Solver;
import plainscale.algebra.UnknownKinds;
import plainscale.notation.Expr;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;

/** What the relations of a sheet say about its unknowns: derivations, each made once in a wave. */
final class Derivations {
  private final Wave wave;
  private final Map<String, Entry> entries;
  private final Budget budget;
  private final Map<Statement.Solve, Derivation> made = new HashMap<>();
  private final Map<Statement.Solve, Optional<RootByNumbers.Found>> roots = new HashMap<>();
  private final Map<Statement.Solve, Optional<SystemByNumbers.Found>> systems = new HashMap<>();

  private final Map<Statement.Solve, Set<String>> asKelvins = new HashMap<>();

  private final Map<Statement.Solve, ProblemException> undecided = new HashMap<>();

  Derivations(Wave wave, Map<String, Entry> entries, Budget budget) {
    this.wave = wave;
    this.entries = entries;
    this.budget = budget;
  }

  /** The derivation of the unknown that a solving statement defines. */
  Derivation of(Statement.Solve solve, String source) {
    Derivation known = made.get(solve);
    if (known == null) {
      known = decided(solve, source, derived(solve, source));
      made.put(solve, known);
    }
    return known;
  }

  /** The root that the statement asks for; what it leaves open is told where a value is wanted. */
  private Derivation decided(Statement.Solve solve, String source, Derivation derivation) {
    try {
      return choice(solve, source).chosen(derivation);
    } catch (ProblemException e) {
      undecided.put(solve, e);
      return derivation;
    }
  }

  private RootChoice choice(Statement.Solve solve, String source) {
    return new RootChoice(wave, solve, source, answer -> value(solve, answer, source));
  }

  private Derivation derived(Statement.Solve solve, String source) {
    List<Relation> relations = relations(solve, source);
    Set<String> names = new TreeSet<>();
    relations.forEach(r -> names.addAll(names(r.equation())));
    Known known = known(solve);
    names.removeIf(name -> !known.isKnown(name));
    KnownDerivations.Question question =
        new KnownDerivations.Question(relations, solve.unknown(), Set.copyOf(names));
    Optional<Derivation> before =
        wave.isChanged() ? wave.knownDerivations().latest(question) : Optional.empty();
    return before.orElseGet(() -> derived(solve, source, question));
  }

  private Derivation derived(
      Statement.Solve solve, String source, KnownDerivations.Question question) {
    Known known = known(solve);
    Map<String, Double> values = new TreeMap<>();
    question.known().forEach(n -> known.value(n).ifPresent(value -> values.put(n, value)));
    return wave.knownDerivations()
        .of(
            question,
            values,
            () -> {
              refuseUnitsThatDisagree(question.relations(), solve, source);
              return Solver.solve(question.relations(), solve.unknown(), known, budget);
            });
  }

  private void refuseUnitsThatDisagree(
      List<Relation> relations, Statement.Solve solve, String source) {
    List<Equation> equations = relations.stream().map(Relation::equation).toList();
    kinds(equations, solve)
        .disagreement()
        .ifPresent(
            i -> {
              Equation equation = equations.get(i);
              String sentence =
                  RelationUnits.sentence(relations.get(i).name(), equation)
                      + RelationUnits.inWords(equation, name -> known(solve, name));
              Span place = solve.relations().get(i).span();
              List<String> hidden = hidden(equation);
              List<String> repairs = hidden.isEmpty() ? List.of(RelationUnits.REPAIR) : hidden;
              throw new ProblemException(
                  new Problem(Problem.Kind.UNIT, sentence, source, place, repairs));
            });
  }

  /** Letters of a relation that stand for constants, and may be meant otherwise. */
  private List<String> hidden(Equation equation) {
    return names(equation).stream()
        .filter(name -> !entries.containsKey(name))
        .flatMap(name -> wave.letter(name).stream())
        .toList();
  }

  /** The names in an equation. */
  static Set<String> names(Equation equation) {
    Set<String> names = new TreeSet<>(References.in(equation.left()));
    names.addAll(References.in(equation.right()));
    return names;
  }

  private List<Relation> relations(Statement.Solve solve, String source) {
    List<Relation> relations = new ArrayList<>();
    for (Statement.Option name : solve.relations()) {
      Entry entry = entries.get(name.text());
      if (entry != null) {
        Blanks.refuse(entry);
      }
      if (entry == null || !(entry.statement() instanceof Statement.Relation relation)) {
        throw noRelation(name, source);
      }
      Equation equation = new Equation(relation.left(), relation.right());
      Equation taken =
          solve.small().map(angle -> approximate(equation, angle.text())).orElse(equation);
      String said = relation.description();
      String words =
          taken.equals(equation)
              ? said
              : (said + "; " + approximately(solve)).replaceFirst("^; ", "");
      relations.add(new Relation(relation.name(), taken, words));
    }
    return relations;
  }

  private static Equation approximate(Equation equation, String angle) {
    SmallAngle small = new SmallAngle(angle);
    return new Equation(equation.left().accept(small), equation.right().accept(small));
  }

  private static String approximately(Statement.Solve solve) {
    String angle = solve.small().orElseThrow().text();
    return "for small %1$s: sin(%1$s) ≈ tan(%1$s) ≈ %1$s, cos(%1$s) ≈ 1".formatted(angle);
  }

  /** The complaint about a name that is no relation. */
  ProblemException noRelation(Statement.Option name, String source) {
    List<String> repairs = new ArrayList<>();
    entries.values().stream()
        .filter(entry -> entry.statement() instanceof Statement.Relation)
        .limit(4)
        .forEach(entry -> repairs.add(entry.name()));
    if (repairs.isEmpty()) {
      repairs.add("write it first: relation " + name.text() + ": … = …");
    }
    String sentence = "I know no relation “" + name.text() + "” in this sheet.";
    return new ProblemException(
        new Problem(Problem.Kind.NAME, sentence, source, name.span(), repairs));
  }

  private Known known(Statement.Solve solve) {
    return new Known() {
      @Override
      public boolean isKnown(String name) {
        return !name.equals(solve.unknown()) && wave.has(name) && !isSolvedBeside(name, solve);
      }

      @Override
      public OptionalDouble value(String name) {
        return isKnown(name) ? wave.number(name) : OptionalDouble.empty();
      }
    };
  }

  /**
   * What is solved from the same relations is no help, nor is what follows from some of them and
   * from the unknown: each would lean on the other. What a what-if gives another value is not
   * solved but known.
   */
  private boolean isSolvedBeside(String name, Statement.Solve solve) {
    Entry entry = entries.get(name);
    return entry != null
        && !wave.isChanged(name)
        && entry.statement() instanceof Statement.Solve other
        && (names(other).equals(names(solve))
            || (names(solve).containsAll(names(other)) && mentions(other, solve.unknown())));
  }

  private boolean mentions(Statement.Solve solve, String name) {
    return solve.relations().stream()
        .map(relation -> entries.get(relation.text()))
        .anyMatch(
            entry ->
                entry != null
                    && entry.statement() instanceof Statement.Relation relation
                    && names(new Equation(relation.left(), relation.right())).contains(name));
  }

  private static Set<String> names(Statement.Solve solve) {
    return solve.relations().stream().map(Statement.Option::text).collect(Collectors.toSet());
  }

  /** The value of the unknown by the answer of its derivation. */
  Quantity value(Statement.Solve solve, String source) {
    Quantity value = plain(solve, source);
    return value.kind().isNumber() && isAngle(solve) ? value.asKind(Kind.ANGLE) : value;
  }

  /** Whether one of the relations comes from a law in which the unknown is an angle. */
  private boolean isAngle(Statement.Solve solve) {
    return angles(solve).anyMatch(name -> name.equals(solve.unknown()));
  }

  /** A law says which of its letters are angles, so that θ = ω t is right as it stands. */
  private boolean hasAngles(Statement.Solve solve) {
    return angles(solve).findAny().isPresent();
  }

  private Stream<String> angles(Statement.Solve solve) {
    return solve.relations().stream()
        .flatMap(name -> Optional.ofNullable(entries.get(name.text())).stream())
        .flatMap(entry -> entry.origin().stream())
        .flatMap(origin -> origin.angles().stream());
  }

  private Quantity plain(Statement.Solve solve, String source) {
    Derivation derivation = of(solve, source);
    if (undecided.containsKey(solve)) {
      throw undecided.get(solve);
    }
    if (derivation.outcome() instanceof Outcome.Several several) {
      throw choice(solve, source).several(several);
    }
    if (derivation.outcome() instanceof Outcome.Solved solved) {
      return value(solve, solved.answer(), source);
    }
    if (derivation.outcome() instanceof Outcome.Numeric) {
      return byNumbers(solve, source)
          .map(RootByNumbers.Found::quantity)
          .orElseThrow(() -> unsolved(derivation, solve.span(), source));
    }
    return together(solve, source)
        .map(found -> found.quantities().get(solve.unknown()))
        .orElseThrow(() -> unsolved(derivation, solve.span(), source));
  }

  /** The roots of what is left where several equations have no closed form together. */
  Optional<SystemByNumbers.Found> together(Statement.Solve solve, String source) {
    if (!(of(solve, source).outcome() instanceof Outcome.NumericSystem system)) {
      return Optional.empty();
    }
    if (!systems.containsKey(solve)) {
      SystemByNumbers numbers = new SystemByNumbers(wave, system.equations(), system.unknowns());
      systems.put(solve, numbers.found(known(solve)).map(found -> fitting(solve, source, found)));
    }
    return systems.getOrDefault(solve, Optional.empty());
  }

  private SystemByNumbers.Found fitting(
      Statement.Solve solve, String source, SystemByNumbers.Found found) {
    Quantity root = Objects.requireNonNull(found.quantities().get(solve.unknown()));
    choice(solve, source).refuseOthers(List.of(root));
    return found;
  }

  /** The root of what is left of the relations where there is no closed form. */
  Optional<RootByNumbers.Found> byNumbers(Statement.Solve solve, String source) {
    if (!(of(solve, source).outcome() instanceof Outcome.Numeric numeric)) {
      return Optional.empty();
    }
    if (!roots.containsKey(solve)) {
      RootByNumbers numbers = new RootByNumbers(wave, numeric.equation(), solve.unknown());
      roots.put(solve, numbers.found(known(solve), choice(solve, source)));
    }
    return roots.getOrDefault(solve, Optional.empty());
  }

  private Quantity value(Statement.Solve solve, Expr answer, String source) {
    Quantity value = valueAsItIs(solve, answer, source);
    boolean small = solve.small().filter(angle -> angle.text().equals(solve.unknown())).isPresent();
    return small && value.kind().isNumber() ? value.asKind(Kind.ANGLE) : value;
  }

  private Quantity valueAsItIs(Statement.Solve solve, Expr answer, String source) {
    try {
      return evaluated(answer, solve.span(), source);
    } catch (ProblemException e) {
      if (e.isBlank()) {
        throw e;
      }
      boolean numbers = NumbersNeeded.in(answer, wave) || hasAngles(solve);
      Optional<Kind> kind = numbers ? kind(solve, source) : Optional.empty();
      if (kind.isEmpty()) {
        throw e;
      }
      asKelvins.put(solve, NumbersNeeded.readings(answer, wave));
      return placed(
          solve.span(),
          source,
          () ->
              Evaluator.at(
                  source, solve.span(), () -> wave.number(answer, source).asKind(kind.get())));
    }
  }

  /** The names whose readings in °C were taken as kelvins in the answer. */
  Set<String> takenAsKelvins(Statement.Solve solve) {
    return asKelvins.getOrDefault(solve, Set.of());
  }

  /** The kind of the unknown, from the units of the relations. */
  private Optional<Kind> kind(Statement.Solve solve, String source) {
    List<Equation> equations = relations(solve, source).stream().map(Relation::equation).toList();
    String unknown = solve.unknown();
    Optional<Kind> kind = Optional.ofNullable(kinds(equations, solve).kinds().get(unknown));
    return kind.map(
        k -> k.isNumber() && NumericSystem.isAngle(equations, unknown) ? Kind.ANGLE : k);
  }

  private UnknownKinds.Found kinds(List<Equation> equations, Statement.Solve solve) {
    return UnknownKinds.of(equations, name -> known(solve, name), known(solve)::value);
  }

  private Optional<Kind> known(Statement.Solve solve, String name) {
    return known(solve).isKnown(name) ? wave.kind(name) : Optional.empty();
  }

  private Quantity evaluated(Expr answer, Span span, String source) {
    return placed(span, source, () -> new Evaluator(source, wave, budget).evaluate(answer));
  }

  /** An answer stands in no source, so what is wrong with it is told at the statement. */
  private static Quantity placed(Span span, String source, Supplier<Quantity> answer) {
    try {
      return answer.get();
    } catch (ProblemException e) {
      Problem root = e.problems().get(0);
      boolean placed = e.isBlank() || root.span().end() > root.span().start();
      throw placed
          ? e
          : new ProblemException(
              new Problem(root.kind(), root.sentence(), source, span, root.repairs()));
    }
  }

  private ProblemException unsolved(Derivation derivation, Span span, String source) {
    if (budget.isStopped() && derivation.outcome() instanceof Outcome.Bounded bounded) {
      return new ProblemException(
          new Problem(Problem.Kind.LIMIT, bounded.why(), source, span, List.of()));
    }
    return new ProblemException(
        new Problem(Problem.Kind.VALUE, sentence(derivation), source, span, repairs(derivation)));
  }

  private static String sentence(Derivation derivation) {
    String unknown = derivation.unknown();
    Outcome outcome = derivation.outcome();
    if (outcome instanceof Outcome.Free free) {
      return occurring(derivation).contains(unknown)
          ? "The relations are too few for “%s”: still free %s %s."
              .formatted(
                  unknown, free.names().size() == 1 ? "is" : "are", String.join(", ", free.names()))
          : "“%s” does not occur in %s.".formatted(unknown, named(derivation));
    }
    if (outcome instanceof Outcome.Contradiction contradiction) {
      return "The relations contradict each other: they lead to %s."
          .formatted(contradiction.equation().text());
    }
    if (outcome instanceof Outcome.Cancelled) {
      return "“%s” drops out: these relations say nothing about it.".formatted(unknown);
    }
    if (outcome instanceof Outcome.NoRealSolution none) {
      return "There is no real solution: in step (%d) %s".formatted(none.step(), none.why());
    }
    if (outcome instanceof Outcome.Bounded bounded) {
      return "I did not find “%s”: %s".formatted(unknown, afterColon(bounded.why()));
    }
    return "I found no closed form for “%s”, and no root by numbers.".formatted(unknown);
  }

  private static String afterColon(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private static List<String> repairs(Derivation derivation) {
    if (derivation.outcome() instanceof Outcome.Bounded bounded) {
      return afterStop(derivation, bounded);
    }
    if (!occurring(derivation).contains(derivation.unknown())) {
      return List.of("what occurs there: " + String.join(", ", occurring(derivation)));
    }
    return derivation.outcome() instanceof Outcome.Free free
        ? List.of("give " + free.names().get(0) + " a value, or add a relation that contains it")
        : List.of();
  }

  private static Set<String> occurring(Derivation derivation) {
    Set<String> names = new TreeSet<>();
    derivation.relations().forEach(relation -> names.addAll(names(relation.equation())));
    return names;
  }

  private static String named(Derivation derivation) {
    return derivation.relations().stream().map(Relation::name).collect(Collectors.joining(", "));
  }

  /** What makes the next search shorter. */
  private static List<String> afterStop(Derivation derivation, Outcome.Bounded bounded) {
    List<String> repairs = new ArrayList<>();
    if (!bounded.open().isEmpty()) {
      String next = bounded.open().get(0);
      repairs.add(
          "in two steps: solve … for %s, then … for %s".formatted(next, derivation.unknown()));
      repairs.add("give " + next + " a value");
    }
    repairs.add("leave out relations that are not needed");
    return repairs;
  }
}
