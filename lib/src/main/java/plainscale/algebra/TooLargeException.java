package plainscale.algebra;

/** An expression grew beyond what is sensible to go on with. */
final class TooLargeException extends RuntimeException {
  private static final long serialVersionUID = 1;

  TooLargeException(String message) {
    super(message);
  }
}
