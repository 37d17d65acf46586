package plainscale.session;

/** The sockets could not be opened; the message says why in one line. */
final class CannotListen extends Exception {
  private static final long serialVersionUID = 1L;

  private final String line;

  CannotListen(String line) {
    super(line);
    this.line = line;
  }

  @Override
  public String getMessage() {
    return line;
  }
}
