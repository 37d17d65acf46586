package plainscale.algebra;

import java.util.List;

/**
 * How an unknown follows from relations: the steps are data, and the outcome is what the last of
 * them says.
 */
public record Derivation(
    String unknown, List<Relation> relations, List<Step> steps, Outcome outcome) {

  /** Keeps its own copies of the lists. */
  public Derivation {
    relations = List.copyOf(relations);
    steps = List.copyOf(steps);
  }

  /** The equation of that number: a relation, or what a step arrived at. */
  public Equation equation(int number) {
    return number <= relations.size()
        ? relations.get(number - 1).equation()
        : steps.get(number - 1 - relations.size()).after();
  }
}
