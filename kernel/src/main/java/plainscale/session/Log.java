package plainscale.session;

/** The kernel's log: single lines on standard error, where the front end's server shows them. */
final class Log {

  private Log() {}

  static void line(String text) {
    System.err.println("plainscale kernel: " + text.replaceAll("\\s*\\R\\s*", " "));
  }
}
