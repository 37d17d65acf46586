package plainscale.language;

import java.util.Optional;

/** Where a running cell can ask whoever sits before it for a line of text. Thread-safe. */
public interface Input {

  /**
   * Asks, and waits for the answer, which comes without its line end. Empty if nobody can be asked
   * (a front end that says so, a cell that has ended), or if the cell was interrupted meanwhile.
   */
  Optional<String> line(String prompt);

  /** Nobody can be asked. */
  static Input none() {
    return prompt -> Optional.empty();
  }
}
