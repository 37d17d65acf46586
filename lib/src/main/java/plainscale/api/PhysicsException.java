package plainscale.api;

import java.util.List;
import plainscale.data.DataException;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.quantity.QuantityException;
import plainscale.render.ProblemText;
import plainscale.units.UnitException;

/**
 * What a program asked for has no answer. The message is what the notation tells a student: a
 * sentence, the place with a caret where there is one, and what to try.
 *
 * <pre>{@code
 * String said = "";
 * try {
 *   quantity("2.70 gg");
 * } catch (PhysicsException e) {
 *   said = e.getMessage();
 * }
 * check(said.contains("gg") && said.contains("Try:"));
 * }</pre>
 */
public final class PhysicsException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Problem> problems;

  PhysicsException(List<Problem> problems) {
    super(
        String.join("\n", problems.stream().flatMap(p -> ProblemText.lines(p).stream()).toList()));
    this.problems = List.copyOf(problems);
  }

  private PhysicsException(String sentence, List<String> repairs) {
    super(repairs.isEmpty() ? sentence : sentence + "\nTry:  " + String.join("   or   ", repairs));
    this.problems = List.of();
  }

  static PhysicsException of(ProblemException e) {
    return new PhysicsException(e.problems());
  }

  static PhysicsException of(QuantityException e) {
    return new PhysicsException(e.sentence(), e.repairs());
  }

  static PhysicsException of(UnitException e) {
    return new PhysicsException(String.valueOf(e.getMessage()), e.repairs());
  }

  static PhysicsException of(DataException e) {
    return new PhysicsException(e.sentence(), e.repairs());
  }

  static PhysicsException of(String sentence, String... repairs) {
    return new PhysicsException(sentence, List.of(repairs));
  }

  /** The problems with their places in the statement that was run; none if it has no place. */
  public List<Problem> problems() {
    return problems;
  }
}
