package plainscale.data;

import java.util.List;

/** Data that cannot be read or that give no result: one sentence, and repairs to offer. */
public final class DataException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final String sentence;
  private final transient List<String> repairs;

  /** A complaint with its repairs, nearest first. */
  public DataException(String sentence, String... repairs) {
    this(sentence, List.of(repairs));
  }

  /** A complaint with its repairs, nearest first. */
  public DataException(String sentence, List<String> repairs) {
    super(sentence);
    this.sentence = sentence;
    this.repairs = List.copyOf(repairs);
  }

  /** What is wrong. */
  public String sentence() {
    return sentence;
  }

  /** What to try instead. */
  public List<String> repairs() {
    return repairs;
  }
}
