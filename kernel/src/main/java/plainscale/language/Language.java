package plainscale.language;

import java.util.Optional;

/**
 * One cell language behind the kernel. {@link #execute} is called from one thread at a time; every
 * other method may be called from another thread while a cell runs, and must answer then too.
 * Cursor positions count Java chars (UTF-16); the session converts from and to the protocol's code
 * points.
 */
public interface Language extends AutoCloseable {

  /** Name, mime type and file extension as the front end must know them. */
  LanguageInfo info();

  /**
   * Called once, when the kernel's sockets are open and before the first cell. What takes ports of
   * this machine begins here and not before: it could get one that was left free for the kernel.
   */
  default void opened() {}

  /**
   * Runs a cell; what it shows goes to {@code outputs} as it comes, what it asks for comes from
   * {@code input}. Never throws for a user's mistake.
   */
  Outcome execute(Cell cell, Outputs outputs, Input input);

  /**
   * Asks the running cell to stop soon; harmless when none runs. Called from another thread, and
   * again every tenth of a second while the same cell runs on, so that a request which comes just
   * before the cell can hear it is not lost. Returns at once. Interrupting the cell's thread is
   * allowed.
   */
  void interrupt();

  /** Evaluates one of a request's {@code user_expressions}, without changing the session. */
  Outcome evaluate(String expression, Outputs outputs);

  /** What could stand at the cursor. */
  Completion complete(String code, int cursor);

  /** What the name at the cursor is; empty where there is nothing to say. */
  Optional<MimeBundle> inspect(String code, int cursor, int detailLevel);

  /** Whether the text could be run as it stands. */
  Completeness completeness(String code);

  /**
   * Lets go of processes and files when the kernel ends; called at most once, even while a cell
   * runs.
   */
  @Override
  default void close() {}
}
