package plainscale.language;

import java.util.List;

/** How a cell ended. */
public sealed interface Outcome {

  /** The cell ran to its end. */
  record Ok() implements Outcome {}

  /**
   * The cell stopped at a mistake. {@code name} is a short kind ("UnitProblem"), {@code message}
   * one sentence for a student, {@code lines} what to print: the sentence, the place, the repair.
   * Never a stack trace.
   */
  record Failed(String name, String message, List<String> lines) implements Outcome {}
}
