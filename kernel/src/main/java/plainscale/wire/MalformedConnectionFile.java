package plainscale.wire;

/** A connection file that cannot be used; the message says why in one line. */
public final class MalformedConnectionFile extends Exception {
  private static final long serialVersionUID = 1L;

  private final String line;

  MalformedConnectionFile(String line) {
    super(line);
    this.line = line;
  }

  @Override
  public String getMessage() {
    return line;
  }
}
