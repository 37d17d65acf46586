package plainscale.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import plainscale.session.KernelServer;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Header;
import plainscale.wire.Json;
import plainscale.wire.Message;
import plainscale.wire.WireCodec;

/**
 * A short conversation with a kernel in this process: what a notebook asks first, and a cell of
 * each kind.
 */
final class Rehearsal {
  private static final String HOST = "127.0.0.1";
  private static final String KEY = "rehearsal";
  private static final int PATIENCE_MILLIS = 20_000;

  private final WireCodec codec = new WireCodec(KEY);
  private final CellLanguage language;
  private final ConnectionFile connection;
  private int sent;

  private Rehearsal(CellLanguage language, ConnectionFile connection) {
    this.language = language;
    this.connection = connection;
  }

  /** Starts a kernel, talks to it and lets it end; returns whether every question was answered. */
  static boolean run(CellLanguage language) throws IOException, InterruptedException {
    Rehearsal rehearsal =
        new Rehearsal(
            language, new ConnectionFile(ConnectionFile.Transport.TCP, HOST, freePorts(), KEY));
    Thread kernel =
        new Thread(() -> KernelServer.run(rehearsal.connection, language.factory()), "rehearsal");
    kernel.setDaemon(true);
    kernel.start();
    boolean answered = rehearsal.talk();
    kernel.join(PATIENCE_MILLIS);
    return answered;
  }

  private static Map<Channel, Integer> freePorts() throws IOException {
    Map<Channel, Integer> ports = new EnumMap<>(Channel.class);
    List<ServerSocket> held = new ArrayList<>();
    for (Channel channel : Channel.values()) {
      ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
      held.add(socket);
      ports.put(channel, socket.getLocalPort());
    }
    for (ServerSocket socket : held) {
      socket.close();
    }
    return ports;
  }

  private boolean talk() {
    try (ZContext context = new ZContext()) {
      ZMQ.Socket published = context.createSocket(SocketType.SUB);
      published.connect(connection.endpoint(Channel.IOPUB));
      published.subscribe(new byte[0]);
      ZMQ.Socket shell = context.createSocket(SocketType.DEALER);
      shell.connect(connection.endpoint(Channel.SHELL));
      boolean answered =
          ask(shell, "kernel_info_request", Json.object())
              && language.rehearsal().stream()
                  .allMatch(cell -> ask(shell, "execute_request", execute(cell)))
              && ask(shell, "complete_request", Json.object().put("code", "m").put("cursor_pos", 1))
              && ask(shell, "inspect_request", inspect())
              && ask(shell, "is_complete_request", Json.object().put("code", "m"));
      ZMQ.Socket control = context.createSocket(SocketType.DEALER);
      control.connect(connection.endpoint(Channel.CONTROL));
      return ask(control, "shutdown_request", Json.object().put("restart", false)) && answered;
    }
  }

  private static ObjectNode execute(String code) {
    ObjectNode content =
        Json.object().put("code", code).put("silent", false).put("store_history", true);
    content.putObject("user_expressions");
    return content.put("allow_stdin", false).put("stop_on_error", true);
  }

  private static ObjectNode inspect() {
    return Json.object().put("code", "m").put("cursor_pos", 1).put("detail_level", 0);
  }

  private boolean ask(ZMQ.Socket socket, String type, ObjectNode content) {
    Header header = Header.of(type, "rehearsal", "rehearsal-" + ++sent);
    List<byte[]> frames = codec.encode(Message.of(List.of(), header, content));
    for (int i = 0; i < frames.size(); i++) {
      socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
    socket.setReceiveTimeOut(PATIENCE_MILLIS);
    boolean answered = socket.recv() != null;
    while (answered && socket.hasReceiveMore()) {
      socket.recv();
    }
    return answered;
  }
}
