package plainscale.language.java.process;

/**
 * What is thrown in a cell's thread, from outside, to stop it. An error, so that a cell which
 * catches exceptions stops too.
 */
final class StopCell extends Error {
  private static final long serialVersionUID = 1;

  StopCell() {
    super("stopped", null, false, false);
  }
}
