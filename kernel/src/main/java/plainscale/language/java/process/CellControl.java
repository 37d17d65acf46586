package plainscale.language.java.process;

import java.lang.reflect.Method;
import java.util.concurrent.Callable;
import jdk.jshell.execution.RemoteExecutionControl;
import org.jspecify.annotations.Nullable;
import plainscale.api.Displays;

/**
 * Runs snippets and keeps the value of the last one, so that it can be shown as the object that it
 * is. The kernel stops a snippet from outside, through the debugger's interface: it throws {@link
 * #STOP} in the thread {@link #running}, whatever that does. In the process itself nothing could:
 * newer virtual machines have no other way to stop a thread.
 */
public final class CellControl extends RemoteExecutionControl {
  /** Commands beyond JShell's own. */
  public static final String BEGIN = "begin";

  /** Shows the last value, as the cell's own if the argument is true. */
  public static final String SHOW = "show";

  /** Waits until the kernel has been told all. */
  public static final String END = "end";

  /** Read by the kernel, by its name; it has no stack trace that could be wrong. */
  @SuppressWarnings("StaticAssignmentOfThrowable")
  static final StopCell STOP = new StopCell();

  /** Read by the kernel, by its name: the thread that runs a cell's code, while it does. */
  @SuppressWarnings("UnusedVariable")
  private static volatile @Nullable Thread running;

  private final Outgoing outgoing;
  private final Typing typing;
  private final Showing showing;
  private @Nullable Object last;

  CellControl(Outgoing outgoing, Typing typing) {
    this.outgoing = outgoing;
    this.typing = typing;
    this.showing = new Showing(outgoing::add);
    Displays.sendTo(value -> showing.show(value, false));
  }

  @Override
  protected String invoke(Method snippet) throws Exception {
    snippet.setAccessible(true);
    last = stoppable(() -> snippet.invoke(null));
    return "";
  }

  @Override
  public Object extensionCommand(String command, Object argument)
      throws RunException, EngineTerminationException, InternalException {
    switch (command) {
      case BEGIN -> begin();
      case SHOW -> {
        return show(Boolean.TRUE.equals(argument));
      }
      case END -> outgoing.drain();
      default -> {
        return super.extensionCommand(command, argument);
      }
    }
    return "";
  }

  private void begin() {
    outgoing.begin();
    typing.begin();
  }

  /** An object's own words are the user's code too: they can be stopped, and may fail. */
  private String show(boolean value) throws StoppedException {
    Object object = last;
    try {
      stoppable(
          () -> {
            showing.show(object, value);
            return "";
          });
      return "";
    } catch (StoppedException e) {
      throw e;
    } catch (Exception e) {
      return ReadableText.ofProblem(e);
    }
  }

  /**
   * Each piece of code has a thread of its own, so that a stop which comes too late stops nothing.
   */
  @SuppressWarnings("ThreadJoinLoop") // the library that would loop for us is not here
  private static @Nullable Object stoppable(Callable<@Nullable Object> body) throws Exception {
    Stoppable task = new Stoppable(body);
    Thread thread = new Thread(task, "cell");
    running = thread;
    try {
      thread.start();
      while (thread.isAlive()) {
        try {
          thread.join();
        } catch (InterruptedException e) {
          // Only a cell could have done this; it goes on.
        }
      }
    } finally {
      running = null;
    }
    return task.outcome();
  }
}
