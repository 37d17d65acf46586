package plainscale.document;

/** A file that is not a lesson, or that cannot be read or written: one sentence. */
public final class LessonException extends Exception {
  private static final long serialVersionUID = 1L;

  /** The sentence. */
  public LessonException(String sentence) {
    super(sentence);
  }

  /** The sentence; never null. */
  public String sentence() {
    return String.valueOf(getMessage());
  }
}
