package plainscale.algebra;

import java.util.List;
import java.util.Optional;

/**
 * One line on the board. The relations are numbered from 1, the steps go on after them; {@code
 * from} are the numbers of what the step uses, {@code reason} says it in a sentence, and {@code
 * condition} is what was assumed, such as "d ≠ 0".
 */
public record Step(
    int number,
    Rule rule,
    List<Integer> from,
    Equation after,
    String reason,
    Optional<String> condition) {

  /** Keeps its own copy of the numbers. */
  public Step {
    from = List.copyOf(from);
  }
}
