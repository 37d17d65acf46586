package plainscale.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import plainscale.algebra.Derivation;
import plainscale.algebra.Outcome;
import plainscale.algebra.Relation;

/**
 * Derivations that a sheet has made before: finding one takes longer than all the rest of a cell.
 * One with the same values is the same; with other values in a what-if the steps are the same too.
 * Sheets that were copied from one another share them.
 */
final class KnownDerivations {
  private static final int MOST = 200;

  /** What is derived from what, and which names may stand in the answer. */
  record Question(List<Relation> relations, String unknown, Set<String> known) {}

  private record Asked(Question question, Map<String, Double> values) {}

  private final Map<Asked, Derivation> asked = new Latest<>();
  private final Map<Question, Derivation> latest = new Latest<>();

  /** The derivation for these values, made only if it is not known. */
  synchronized Derivation of(
      Question question, Map<String, Double> values, Supplier<Derivation> making) {
    Asked key = new Asked(question, values);
    Derivation known = asked.get(key);
    if (known == null) {
      known = making.get();
      if (!(known.outcome() instanceof Outcome.Bounded)) { // it may have been stopped
        asked.put(key, known);
        latest.put(question, known);
      }
    }
    return known;
  }

  /**
   * What was found last that leads to a value, whatever the values were: a closed form, or what is
   * left to be solved by numbers.
   */
  synchronized Optional<Derivation> latest(Question question) {
    return Optional.ofNullable(latest.get(question)).filter(d -> leadsToValue(d.outcome()));
  }

  private static boolean leadsToValue(Outcome outcome) {
    return outcome instanceof Outcome.Solved
        || outcome instanceof Outcome.Numeric
        || outcome instanceof Outcome.NumericSystem;
  }

  /** Forgets what was put in first. */
  private static final class Latest<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1;

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
      return size() > MOST;
    }
  }
}
