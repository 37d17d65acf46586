package plainscale.language.java;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.Value;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.Connector;
import com.sun.jdi.connect.IllegalConnectorArgumentsException;
import com.sun.jdi.connect.ListeningConnector;
import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import plainscale.language.java.process.CellControl;

/**
 * A line into the process of the cells through the debugger's interface. It stops a thread whatever
 * that is doing, which no virtual machine since Java 20 allows from inside, and replaces the bodies
 * of classes that are declared again.
 */
final class Debugger implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";
  private static final String TIMEOUT_MILLIS = "20000";

  private final ListeningConnector connector;
  private final Map<String, Connector.Argument> arguments;
  private final String address;
  private final CompletableFuture<VirtualMachine> machine = new CompletableFuture<>();

  /** Waits, on a thread of its own, for one process to call. */
  Debugger() throws IOException {
    connector = connector();
    arguments = connector.defaultArguments();
    set("localAddress", LOOPBACK);
    set("timeout", TIMEOUT_MILLIS);
    try {
      address = connector.startListening(arguments);
    } catch (IllegalConnectorArgumentsException e) {
      throw new IllegalStateException(e);
    }
    Thread thread = new Thread(this::accept, "plainscale-debugger");
    thread.setDaemon(true);
    thread.start();
  }

  private void set(String name, String value) {
    Objects.requireNonNull(arguments.get(name)).setValue(value);
  }

  private static ListeningConnector connector() {
    return Bootstrap.virtualMachineManager().listeningConnectors().stream()
        .filter(connector -> connector.transport().name().equals("dt_socket"))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("this JDK has no debugger over sockets"));
  }

  private void accept() {
    try {
      machine.complete(connector.accept(arguments));
      connector.stopListening(arguments);
    } catch (IOException | IllegalConnectorArgumentsException e) {
      machine.completeExceptionally(e);
    }
  }

  /** What the process must be started with to call. */
  String option() {
    return "-agentlib:jdwp=transport=dt_socket,server=n,suspend=n,address=" + address;
  }

  /** The process, once it has called. */
  VirtualMachine machine() {
    return machine.join();
  }

  /** Stops the cell that runs; nothing happens if none does. */
  void stopCell() {
    try {
      VirtualMachine vm = machine();
      vm.suspend();
      try {
        vm.classesByName(CellControl.class.getName()).forEach(Debugger::stopCell);
      } finally {
        vm.resume();
      }
    } catch (VMDisconnectedException e) {
      // The process is gone, and its cell with it.
    }
  }

  /** While all is suspended, so that the cell cannot end between the question and the stop. */
  private static void stopCell(ReferenceType control) {
    Value running = control.getValue(control.fieldByName("running"));
    Value stop = control.getValue(control.fieldByName("STOP"));
    if (running instanceof ThreadReference thread && stop instanceof ObjectReference error) {
      try {
        thread.stop(error);
      } catch (InvalidTypeException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  @Override
  public void close() {
    try {
      connector.stopListening(arguments);
    } catch (IOException | IllegalConnectorArgumentsException e) {
      // It does not listen any more.
    }
  }
}
