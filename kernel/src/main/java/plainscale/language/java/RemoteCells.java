package plainscale.language.java;

import com.sun.jdi.VirtualMachine;
import java.io.ObjectInput;
import java.io.ObjectOutput;
import jdk.jshell.execution.JdiExecutionControl;
import plainscale.language.java.process.CellControl;

/**
 * JShell's line to the process of the cells. While a cell's code runs there, JShell itself is free
 * to answer other questions here: completion must not wait for a cell.
 */
final class RemoteCells extends JdiExecutionControl implements Cells {

  /** Whose turn it is to use JShell, which is not made for several threads. */
  interface Turn {
    /** A cell's code begins to run elsewhere. */
    void pause();

    /** It has ended. */
    void resume();
  }

  /** The process of the cells has ended, and all their values with it. */
  static final class Lost extends IllegalStateException {
    private static final long serialVersionUID = 1;

    Lost(Exception cause) {
      super(cause);
    }
  }

  private final Debugger debugger;
  private final Turn turn;
  private volatile boolean stopped;
  private volatile boolean lost;

  RemoteCells(ObjectOutput out, ObjectInput in, Debugger debugger, Turn turn) {
    super(out, in);
    this.debugger = debugger;
    this.turn = turn;
  }

  @Override
  protected VirtualMachine vm() {
    return debugger.machine();
  }

  @Override
  public String invoke(String className, String methodName)
      throws RunException, EngineTerminationException, InternalException {
    turn.pause();
    try {
      return super.invoke(className, methodName);
    } catch (StoppedException e) {
      stopped = true;
      throw e;
    } catch (EngineTerminationException e) {
      lost = true;
      throw e;
    } finally {
      turn.resume();
    }
  }

  @Override
  public void begin() {
    command(CellControl.BEGIN, "");
  }

  @Override
  public String show(boolean value) {
    return command(CellControl.SHOW, value);
  }

  @Override
  public void end() {
    command(CellControl.END, "");
  }

  /** A command of ours; like a cell's code, it may take its time, and be stopped. */
  private String command(String command, Object argument) {
    turn.pause();
    try {
      return String.valueOf(extensionCommand(command, argument));
    } catch (StoppedException e) {
      stopped = true;
      return "";
    } catch (RunException | EngineTerminationException | InternalException e) {
      lost = true;
      throw new Lost(e);
    } finally {
      turn.resume();
    }
  }

  @Override
  public boolean wasStopped() {
    boolean was = stopped;
    stopped = false;
    return was;
  }

  /** Whether the process has ended. */
  boolean isLost() {
    return lost;
  }

  @Override
  public void stop() {
    debugger.stopCell();
  }
}
