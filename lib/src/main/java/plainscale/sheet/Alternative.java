package plainscale.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainscale.algebra.Equation;
import plainscale.notation.Change;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;

/** The sheet with some of its quantities or relations changed. */
final class Alternative {
  private static final double SAME = 1e-12;

  private final Showing showing;
  private final Map<String, Quantity> quantities = new LinkedHashMap<>();
  private final Map<String, Entry> relations = new LinkedHashMap<>();
  private final List<Result.Reworded> reworded = new ArrayList<>();
  private final OtherValues other;

  /** Changes that stand in the cell that is shown; their values are those of the sheet as it is. */
  Alternative(Showing showing, List<Change> changes) {
    this.showing = showing;
    changes.forEach(this::add);
    this.other = new OtherValues(showing, quantities, relations);
  }

  private void add(Change change) {
    if (change instanceof Change.Relation relation) {
      relations.put(relation.name().text(), changed(relation));
    } else {
      Change.Value value = (Change.Value) change;
      quantities.put(value.name().text(), changed(value));
    }
  }

  private Entry changed(Change.Relation change) {
    String name = change.name().text();
    Entry entry = showing.names().entries().get(name);
    if (entry != null && !(entry.statement() instanceof Statement.Relation)) {
      String sentence =
          "“%s” is a quantity; another value of it is written with =.".formatted(name);
      throw showing.problem(
          Problem.Kind.NAME, sentence, change.name().span(), List.of(name + " = …"));
    }
    if (entry == null) {
      throw showing.wave().derivations().noRelation(change.name(), showing.source());
    }
    Statement.Relation other =
        new Statement.Relation(
            change.name().span(), name, change.left(), change.right(), entry.description());
    Statement.Relation before = (Statement.Relation) entry.statement();
    reworded.add(new Result.Reworded(name, equation(before), equation(other)));
    return new Entry(name, entry.cellId(), showing.source(), other);
  }

  private Quantity changed(Change.Value change) {
    refuseRelation(change.name());
    Quantity before = before(change.name());
    Quantity after = showing.value(change.value());
    if (!before.kind().equals(after.kind())) {
      String sentence =
          "“%s” is %s; it cannot become %s."
              .formatted(
                  change.name().text(),
                  showing.words(before.kind(), change.value().span()),
                  showing.words(after.kind(), change.value().span()));
      throw showing.problem(Problem.Kind.UNIT, sentence, change.value().span(), List.of());
    }
    return after;
  }

  private void refuseRelation(Statement.Option name) {
    Entry entry = showing.names().entries().get(name.text());
    if (entry != null && entry.statement() instanceof Statement.Relation) {
      String sentence =
          "“%s” is a relation; another form of it is written with a colon.".formatted(name.text());
      throw showing.problem(
          Problem.Kind.NAME, sentence, name.span(), List.of(name.text() + ": … = …"));
    }
  }

  private Quantity before(Statement.Option name) {
    return showing.value(new Expr.Name(name.span(), name.text()));
  }

  /** What the names of quantities are instead, as it was written. */
  static List<Equation> written(List<Change> changes) {
    return changes.stream()
        .filter(Change.Value.class::isInstance)
        .map(Change.Value.class::cast)
        .map(change -> new Equation(name(change), change.value()))
        .toList();
  }

  private static Expr name(Change.Value change) {
    return new Expr.Name(change.name().span(), change.name().text());
  }

  /** The names of the quantities that are changed. */
  Set<String> quantities() {
    return quantities.keySet();
  }

  /** The relations that are changed, before and after. */
  List<Result.Reworded> relations() {
    return List.copyOf(reworded);
  }

  private static Equation equation(Statement.Relation relation) {
    return new Equation(relation.left(), relation.right());
  }

  /** All values after the change. */
  Wave wave() {
    return other.wave();
  }

  /**
   * The changed value. If a name was changed that the sheet derives from relations, and a given of
   * these relations is asked for, the relations are solved for the given instead.
   */
  Quantity after(Expr expr) {
    Quantity after = other.of(expr);
    refuseOtherKind(expr, after);
    return after;
  }

  /** A changed relation may give other values, but a speed stays a speed. */
  private void refuseOtherKind(Expr expr, Quantity after) {
    Optional<Kind> before = relations.isEmpty() ? Optional.empty() : kindNow(expr);
    if (before.isPresent() && !before.get().equals(after.kind())) {
      String sentence =
          "“%s” is %s; with the changed relation it would become %s."
              .formatted(
                  Printer.print(expr),
                  showing.words(before.get(), changedRelation()),
                  showing.words(after.kind(), changedRelation()));
      throw showing.problem(Problem.Kind.UNIT, sentence, changedRelation(), List.of());
    }
  }

  private Optional<Kind> kindNow(Expr expr) {
    try {
      return Optional.of(showing.value(expr).kind());
    } catch (ProblemException noValue) {
      return Optional.empty();
    }
  }

  private Span changedRelation() {
    return relations.values().iterator().next().statement().span();
  }

  /** Whether an expression contains a change, directly or through definitions. */
  boolean hangsOn(Expr expr) {
    return other.reach(expr);
  }

  /** All that the sheet computes and nobody changes, without what waits for a blank. */
  static List<Expr> computed(Showing showing, Statement statement, Collection<String> changed) {
    List<Expr> computed =
        showing.names().entries().values().stream()
            .filter(entry -> isComputed(entry.statement()) && !changed.contains(entry.name()))
            .<Expr>map(entry -> new Expr.Name(statement.span(), entry.name()))
            .toList();
    List<Expr> ready = computed.stream().filter(name -> !Blanks.waits(name, showing)).toList();
    return ready.isEmpty() ? computed : ready;
  }

  private static boolean isComputed(Statement statement) {
    return statement instanceof Statement.Definition || statement instanceof Statement.Solve;
  }

  /** Whether two values are the same but for the last digits of the computation. */
  static boolean isSame(Quantity before, Quantity after) {
    double one = before.value().doubleValue();
    double other = after.value().doubleValue();
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  }

  /** The names of several alternatives' quantities, in their order. */
  static Set<String> quantities(List<Alternative> alternatives) {
    Set<String> names = new LinkedHashSet<>();
    alternatives.forEach(alternative -> names.addAll(alternative.quantities()));
    return names;
  }
}
