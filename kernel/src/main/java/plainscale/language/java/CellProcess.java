package plainscale.language.java;

import java.io.File;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import plainscale.language.java.process.CellMain;
import plainscale.language.java.process.Event;
import plainscale.language.java.process.Inbox;
import plainscale.language.java.process.Link;
import plainscale.language.java.process.Link.Channel;
import plainscale.language.java.process.Typing;

/** The process in which cells run, as the kernel sees it. */
final class CellProcess implements AutoCloseable {
  private static final long GRACE_MILLIS = 2_000;

  /** A quarter of the machine at most: a class shares it with a browser. */
  private static final List<String> OPTIONS =
      List.of(
          "-XX:+UseSerialGC",
          "-XX:MaxRAMPercentage=25",
          "-Xshare:auto",
          "-XX:+DisplayVMOutputToStderr",
          "-Djava.awt.headless=true");

  private final Debugger debugger;
  private final Process process;
  private final Link link;
  private final Inbox results = new Inbox();
  private final Consumer<Event> events;

  /** Starts it; what its cells show is handed to {@code events}, in order, on one thread. */
  CellProcess(Consumer<Event> events) throws IOException {
    this.events = events;
    this.debugger = new Debugger();
    this.process =
        new ProcessBuilder(command()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    this.link = new Link(process.getInputStream(), process.getOutputStream());
    Thread thread = new Thread(this::receive, "plainscale-cells");
    thread.setDaemon(true);
    thread.start();
  }

  private List<String> command() {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add(debugger.option());
    command.addAll(OPTIONS);
    command.addAll(List.of("-cp", classPath(), CellMain.class.getName()));
    return command;
  }

  /** The kernel's own; a kernelspec may be started in any folder. */
  static String classPath() {
    List<String> entries = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      entries.add(Path.of(entry).toAbsolutePath().toString());
    }
    return String.join(File.pathSeparator, entries);
  }

  private void receive() {
    link.receive(Map.of(Channel.COMMAND, results::add, Channel.EVENT, this::happened));
    results.end();
  }

  private void happened(byte[] frame) {
    try {
      events.accept(Event.of(frame));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** JShell's line to the process. Waits until that has started. */
  RemoteCells connect(RemoteCells.Turn turn) throws IOException {
    ObjectOutputStream commands = new ObjectOutputStream(link.sink(Channel.COMMAND));
    commands.flush();
    return new RemoteCells(commands, new ObjectInputStream(results), debugger, turn);
  }

  /** Whether it has ended; waits a little for one that is about to. */
  boolean hasEnded() {
    return process
        .onExit()
        .thenApply(ended -> true)
        .completeOnTimeout(false, GRACE_MILLIS, TimeUnit.MILLISECONDS)
        .join();
  }

  /** How it ended, in words. */
  String ending() {
    return hasEnded() ? "exit code " + process.exitValue() : "it does not answer";
  }

  /** Answers a cell's question for a line. */
  void answer(int question, String line) {
    try {
      link.send(Channel.ANSWER, Typing.answer(question, line));
    } catch (IOException e) {
      // The process is gone; so is the question.
    }
  }

  void stopCell() {
    debugger.stopCell();
  }

  @Override
  public void close() {
    debugger.close();
    process.destroyForcibly();
  }
}
