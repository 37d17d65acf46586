package plainscale.language;

/**
 * Where a running cell puts what it shows. Thread-safe; calls after the cell has ended are dropped.
 */
public interface Outputs {

  /** Shows a bundle; {@code displayId} may be used later to replace it in place. */
  void display(MimeBundle bundle, String displayId);

  /** Replaces, wherever it stands, what was shown under {@code displayId}. */
  void update(MimeBundle bundle, String displayId);

  /** Shows the value of the cell (at most once a cell). */
  void result(MimeBundle bundle);

  /** Writes to a text stream of the cell. */
  void stream(Stream stream, String text);

  /** The two text streams that the protocol knows. */
  enum Stream {
    STDOUT,
    STDERR
  }
}
