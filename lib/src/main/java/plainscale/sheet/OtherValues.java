package plainscale.sheet;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;

/**
 * A sheet in which some names have other values, or relations say something else. If one of them is
 * derived from relations, and a given of these relations is asked for, the relations are solved for
 * the given instead.
 */
final class OtherValues {
  private final Showing showing;
  private final Map<String, Quantity> changed;
  private final Map<String, Entry> relations;
  private final Wave wave;

  OtherValues(Showing showing, Map<String, Quantity> changed) {
    this(showing, changed, Map.of());
  }

  /** With some of its relations changed, too. */
  OtherValues(Showing showing, Map<String, Quantity> changed, Map<String, Entry> relations) {
    this.showing = showing;
    this.changed = changed;
    this.relations = relations;
    this.wave = showing.wave().with(changed, relations);
  }

  /** All values after the change. */
  Wave wave() {
    return wave;
  }

  /** The value; empty where there is none. */
  Optional<Quantity> find(Expr expr) {
    try {
      return Optional.of(of(expr));
    } catch (ProblemException noValue) {
      if (wave.isOver() || noValue.isBlank()) {
        throw noValue;
      }
      return Optional.empty();
    }
  }

  Quantity of(Expr expr) {
    if (expr instanceof Expr.Name name && !changed.containsKey(name.text())) {
      Optional<Statement.Solve> turned = turned(name.text());
      if (turned.isPresent()) {
        return wave.derivations().value(turned.get(), showing.source());
      }
    }
    return wave.evaluate(expr, showing.source());
  }

  /** The statement that derives the given from the changed unknown, if that is what is asked. */
  private Optional<Statement.Solve> turned(String name) {
    Map<String, Entry> entries = showing.names().entries();
    Entry asked = entries.get(name);
    if (asked == null || !(asked.statement() instanceof Statement.Given)) {
      return Optional.empty();
    }
    return changed.keySet().stream()
        .flatMap(other -> Stream.ofNullable(entries.get(other)))
        .filter(entry -> entry.statement() instanceof Statement.Solve)
        .map(entry -> (Statement.Solve) entry.statement())
        .filter(solve -> References.of(solve, entries).contains(name))
        .findFirst()
        .map(solve -> solve.turnedTo(name));
  }

  /** Whether what was changed stands in the expression or in what it hangs on. */
  boolean reach(Expr expr) {
    Map<String, Entry> entries = showing.names().entries();
    return References.in(expr).stream()
        .flatMap(name -> References.ofName(name, entries).stream())
        .anyMatch(name -> changed.containsKey(name) || relations.containsKey(name));
  }
}
