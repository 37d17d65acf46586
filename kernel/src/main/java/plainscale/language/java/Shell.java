package plainscale.language.java;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import jdk.jshell.JShell;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import plainscale.language.java.process.Event;

/**
 * JShell with its imports, and the process in which its code runs. JShell is not made for several
 * threads; whoever uses it holds the lock, which a running cell lets go.
 */
final class Shell implements AutoCloseable {
  private final ReentrantLock lock = new ReentrantLock();
  private final CellProcess process;
  private final JShell jshell;

  /** The line to the process; JShell asks for it while it is built. */
  private final RemoteCells cells;

  /** Starts both, the process first: it loads while the compiler does. */
  Shell(Consumer<Event> events) throws IOException {
    process = new CellProcess(events);
    Provider provider = new Provider();
    lock.lock();
    try {
      jshell = Imports.into(JShell.builder().executionEngine(provider, Map.of()));
      cells = provider.made();
      jshell.eval("0"); // so that the first cell finds the compiler awake
    } finally {
      lock.unlock();
    }
  }

  /** Uses JShell, as soon as nobody else does. */
  <T> T with(Function<JShell, T> use) {
    lock.lock();
    try {
      return use.apply(jshell);
    } finally {
      lock.unlock();
    }
  }

  CellProcess process() {
    return process;
  }

  RemoteCells cells() {
    return cells;
  }

  @Override
  public void close() {
    process.close();
  }

  /** Hands JShell the line to our process. */
  private final class Provider implements ExecutionControlProvider {
    private final java.util.ArrayDeque<RemoteCells> lines = new java.util.ArrayDeque<>();

    @Override
    public String name() {
      return "plainscale";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters)
        throws IOException {
      lines.add(process.connect(new LetGo()));
      return lines.getLast();
    }

    RemoteCells made() {
      return lines.getLast();
    }
  }

  private final class LetGo implements RemoteCells.Turn {
    @Override
    public void pause() {
      lock.unlock();
    }

    @Override
    public void resume() {
      lock.lock();
    }
  }
}
