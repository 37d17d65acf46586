package plainscale.command;

import java.io.PrintWriter;

/** A progress bar on a terminal; elsewhere nothing until the work is done. */
final class Progress {
  private static final int WIDTH = 24;
  private static final String CLEAR = "\r\u001B[K";

  private final PrintWriter out;
  private final boolean terminal;

  Progress(PrintWriter out) {
    this(out, isTerminal());
  }

  /** From Java 22 on there is always a console unless this property asks for the old rule. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    System.setProperty("jdk.console", "java.base");
    return System.console() != null && System.getenv("TERM") != null;
  }

  Progress(PrintWriter out, boolean terminal) {
    this.out = out;
    this.terminal = terminal;
  }

  /** Shows how far a piece of work is. */
  void show(String what, int done, int all) {
    if (terminal) {
      int filled = all == 0 ? WIDTH : WIDTH * done / all;
      out.print(
          CLEAR
              + "█".repeat(filled)
              + "·".repeat(WIDTH - filled)
              + " "
              + done
              + "/"
              + all
              + " "
              + what);
      out.flush();
    }
  }

  /** Takes the bar away and writes a line that stays. */
  void done(String line) {
    out.println((terminal ? CLEAR : "") + line);
    out.flush();
  }
}
