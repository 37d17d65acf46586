package plainscale.units;

import java.util.List;

/**
 * A unit text that cannot be read: one sentence, the position in the text, and repairs to offer.
 */
public final class UnitException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int start;
  private final int end;
  private final transient List<String> repairs;

  /** A complaint about the characters from {@code start} to {@code end} of the unit text. */
  public UnitException(String sentence, int start, int end, List<String> repairs) {
    super(sentence);
    this.start = start;
    this.end = end;
    this.repairs = List.copyOf(repairs);
  }

  /** First character at fault. */
  public int start() {
    return start;
  }

  /** One past the last character at fault. */
  public int end() {
    return end;
  }

  /** What to try instead, nearest first. */
  public List<String> repairs() {
    return repairs;
  }
}
