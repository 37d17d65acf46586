package plainscale.language.java.process;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import jdk.jshell.execution.Util;
import plainscale.language.java.process.Link.Channel;

/** The process in which Java cells run. It ends with the kernel that started it. */
public final class CellMain {
  private CellMain() {}

  /** Serves the kernel at the other end of standard input and output. */
  public static void main(String[] arguments) throws IOException {
    Link link =
        new Link(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
    Outgoing outgoing = new Outgoing();
    Typing typing = new Typing(outgoing::add);
    System.setOut(stream(text -> outgoing.print(false, text)));
    System.setErr(stream(text -> outgoing.print(true, text)));
    System.setIn(typing);
    Inbox commands = new Inbox();
    daemon("plainscale-receive", () -> receive(link, commands, typing));
    daemon("plainscale-send", () -> send(link, outgoing));
    ObjectOutputStream results = new ObjectOutputStream(link.sink(Channel.COMMAND));
    results.flush();
    Util.forwardExecutionControl(
        new CellControl(outgoing, typing), new ObjectInputStream(commands), results);
    Runtime.getRuntime().halt(0);
  }

  private static PrintStream stream(java.util.function.Consumer<String> reader) {
    return new PrintStream(new Printing(reader), false, StandardCharsets.UTF_8);
  }

  /** A kernel that is gone needs no cells, not even running ones. */
  private static void receive(Link link, Inbox commands, Typing typing) {
    link.receive(Map.of(Channel.COMMAND, commands::add, Channel.ANSWER, typing::answered));
    Runtime.getRuntime().halt(0);
  }

  private static void send(Link link, Outgoing outgoing) {
    try {
      while (true) {
        link.send(Channel.EVENT, outgoing.next().bytes());
      }
    } catch (IOException e) {
      // The kernel is gone, which the receiver notices too.
    }
  }

  private static void daemon(String name, Runnable body) {
    Thread thread = new Thread(body, name);
    thread.setDaemon(true);
    thread.start();
  }
}
