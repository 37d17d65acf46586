package plainscale.language.java.process;

import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Callable;
import jdk.jshell.spi.ExecutionControl.StoppedException;
import org.jspecify.annotations.Nullable;

/** Code of a cell that may be stopped at any point, and what came of it. */
final class Stoppable implements Runnable {
  private final Callable<@Nullable Object> body;
  private @Nullable Object value;
  private Throwable failure = new StopCell();
  private boolean finished;

  Stoppable(Callable<@Nullable Object> body) {
    this.body = body;
  }

  @Override
  public void run() {
    try {
      value = body.call();
      finished = true;
    } catch (Throwable e) {
      failure = e;
    }
  }

  /**
   * The value; to be asked after the thread has ended.
   *
   * @throws StoppedException if it was stopped before its end
   */
  @Nullable Object outcome() throws Exception {
    if (finished) {
      return value;
    }
    Throwable cause = failure instanceof InvocationTargetException e ? e.getCause() : failure;
    if (cause instanceof StopCell) {
      throw new StoppedException();
    }
    if (failure instanceof Exception exception) {
      throw exception;
    }
    throw new InvocationTargetException(failure);
  }
}
