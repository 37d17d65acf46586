package plainscale.quantity;

import java.util.List;

/**
 * An operation that has no result: one sentence for a student, and repairs to offer. The message,
 * for programs that do not catch it, is the sentence and then what to try.
 */
public final class QuantityException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Whether the units or the numbers are at fault. */
  public enum Fault {
    UNIT,
    VALUE,
    LIMIT
  }

  private final Fault fault;
  private final String sentence;
  private final transient List<String> repairs;

  /** A complaint with its repairs, nearest first. */
  public QuantityException(Fault fault, String sentence, String... repairs) {
    super(
        repairs.length == 0 ? sentence : sentence + "\nTry:  " + String.join("   or   ", repairs));
    this.fault = fault;
    this.sentence = sentence;
    this.repairs = List.of(repairs);
  }

  /** What is wrong. */
  public String sentence() {
    return sentence;
  }

  /** What is at fault. */
  public Fault fault() {
    return fault;
  }

  /** What to try instead. */
  public List<String> repairs() {
    return repairs;
  }
}
