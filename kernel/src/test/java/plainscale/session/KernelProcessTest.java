package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Json;

/** The kernel as a process: how it ends and what it leaves on standard error. */
class KernelProcessTest {

  private static final String MAIN = "plainscale.session.FakeKernel";

  /** 128 + 15, as a shell counts a process that was told to terminate. */
  private static final int TERMINATED = 143;

  @TempDir private Path folder;

  @Test
  void aShutdownRequestEndsTheProcessWithoutAWord() throws Exception {
    Path file = FakeKernel.connectionFile(folder);
    Process kernel = FakeKernel.javaProcess(MAIN, file.toString()).start();
    try (SocketFrontEnd front = new SocketFrontEnd(ConnectionFile.read(file))) {
      front.run("say a");
      front.execute("wait");
      front.ask(Channel.CONTROL, "shutdown_request", Json.object().put("restart", false));
      assertEnds(kernel, KernelServer.OK, "");
    }
  }

  @Test
  void aTerminationSignalEndsTheProcessWithoutAWord() throws Exception {
    Path file = FakeKernel.connectionFile(folder);
    Process kernel = FakeKernel.javaProcess(MAIN, file.toString()).start();
    try (SocketFrontEnd front = new SocketFrontEnd(ConnectionFile.read(file))) {
      front.run("say a");
      // Not Process.destroy, which closes the pipe that the error is read from.
      kernel.toHandle().destroy();
      assertEnds(kernel, TERMINATED, "");
    }
  }

  @Test
  void theKernelEndsWhenItsParentIsGone() throws Exception {
    Path file = FakeKernel.connectionFile(folder);
    Process parent = FakeKernel.javaProcess("plainscale.session.ParentWatchTest$Sleeper").start();
    ProcessBuilder builder = FakeKernel.javaProcess(MAIN, file.toString());
    builder.environment().put("JPY_PARENT_PID", Long.toString(parent.pid()));
    Process kernel = builder.start();
    try (SocketFrontEnd front = new SocketFrontEnd(ConnectionFile.read(file))) {
      front.run("say a");
      parent.destroyForcibly();
      assertEnds(kernel, KernelServer.OK, "");
    }
  }

  @Test
  void aTakenPortIsOneLine() throws Exception {
    Path file = FakeKernel.connectionFile(folder);
    ConnectionFile connection = ConnectionFile.read(file);
    Process first = FakeKernel.javaProcess(MAIN, file.toString()).start();
    try (SocketFrontEnd front = new SocketFrontEnd(connection)) {
      Process second = FakeKernel.javaProcess(MAIN, file.toString()).start();
      String line =
          "plainscale kernel: cannot listen on "
              + connection.endpoint(Channel.SHELL)
              + " (Address already in use)\n";
      assertEnds(second, KernelServer.FAILED, line);
      front.ask(Channel.CONTROL, "shutdown_request", Json.object().put("restart", false));
      assertEnds(first, KernelServer.OK, "");
    }
  }

  private static void assertEnds(Process process, int code, String standardError)
      throws IOException, InterruptedException {
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      fail("the process did not end");
    }
    String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(standardError, said);
    assertEquals(code, process.exitValue());
  }
}
