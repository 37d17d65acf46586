package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import plainscale.session.FrontEnd.Answer;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Header;
import plainscale.wire.Json;

/** The real server on loopback sockets. */
class KernelServerTest {

  private final FakeLanguage language = new FakeLanguage();
  private ConnectionFile connection;
  private FutureTask<Integer> server;
  private SocketFrontEnd front;

  @BeforeEach
  void start(@TempDir Path folder) throws Exception {
    connection = FakeKernel.connection(folder);
    server = new FutureTask<>(() -> KernelServer.run(connection, () -> language));
    new Thread(server, "test-server").start();
    front = new SocketFrontEnd(connection);
  }

  @AfterEach
  void stop() throws Exception {
    language.gate.countDown();
    front.send(Channel.CONTROL, "shutdown_request", Json.object().put("restart", false));
    assertEquals(KernelServer.OK, server.get(20, TimeUnit.SECONDS));
    front.close();
  }

  @Test
  void theHeartbeatEchoesBytes() {
    try (ZContext context = new ZContext()) {
      ZMQ.Socket socket = SocketFrontEnd.socket(context, SocketType.REQ);
      socket.connect(connection.endpoint(Channel.HEARTBEAT));
      for (byte[] beat : List.of(new byte[] {1, 2, 3}, new byte[0], new byte[70_000])) {
        socket.send(beat);
        assertArrayEquals(beat, socket.recv());
      }
    }
  }

  @Test
  void kernelInfoAnswersOnShellAndControl() {
    for (Channel channel : List.of(Channel.SHELL, Channel.CONTROL)) {
      Answer answer = front.ask(channel, "kernel_info_request", Json.object());
      assertEquals("5.5", answer.reply().path("protocol_version").textValue());
    }
  }

  @Test
  void aCellRuns() {
    Answer answer = front.run("say θ🧲\nvalue 42");
    assertEquals(List.of("execute_input", "stream", "execute_result"), answer.outputs());
    assertEquals("θ🧲\n", answer.output("stream").path("text").textValue());
  }

  @Test
  void completionAnswersWhileACellRuns() {
    Header cell = front.execute("gate");
    front.await(m -> m.isCausedBy(cell) && m.type().equals("execute_input"));
    ObjectNode content = Json.object().put("code", "𝜃 alp").put("cursor_pos", 5);
    Answer answer = front.ask(Channel.SHELL, "complete_request", content);
    assertEquals(2, answer.reply().path("cursor_start").intValue());
    assertTrue(front.received().stream().noneMatch(m -> m.type().equals("execute_reply")));
    language.gate.countDown();
    assertEquals("ok", front.answer(cell).reply().path("status").textValue());
  }

  @Test
  void anInterruptStopsABlockedCellAndClearsTheQueue() {
    List<Header> burst = burst("wait", "say b", "say c");
    front.await(m -> m.isCausedBy(burst.get(0)) && m.type().equals("execute_input"));
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertEquals(List.of("Interrupted", "Aborted", "Aborted"), ends(burst));
    assertEquals("ok", front.run("say d").reply().path("status").textValue());
  }

  /** The reply to the request behind the burst shows that all of the burst has come in. */
  @Test
  void afterAnErrorTheRestOfABurstIsNotRun() {
    List<Header> burst = burst("gate\nfail", "say b", "say c", "say d", "say e");
    front.ask(Channel.SHELL, "kernel_info_request", Json.object());
    language.gate.countDown();
    assertEquals(List.of("Mistake", "Aborted", "Aborted", "Aborted", "Aborted"), ends(burst));
    assertEquals("ok", front.run("say f").reply().path("status").textValue());
  }

  @Test
  void everyNewSubscriberIsWelcomed() {
    try (SocketFrontEnd second = new SocketFrontEnd(connection);
        SocketFrontEnd third = new SocketFrontEnd(connection)) {
      Answer answer = third.run("say a");
      assertEquals("ok", answer.reply().path("status").textValue());
      // The second sees what the third caused, but not its reply.
      second.effects(third.execute("say b"));
    }
  }

  @Test
  void aSubscriberToOneTopicIsWelcomedUnderIt() {
    try (ZContext context = new ZContext()) {
      ZMQ.Socket socket = SocketFrontEnd.socket(context, SocketType.SUB);
      socket.subscribe("stream");
      socket.connect(connection.endpoint(Channel.IOPUB));
      assertEquals("stream", socket.recvStr());
      List<String> frames = new ArrayList<>();
      while (socket.hasReceiveMore()) {
        frames.add(socket.recvStr());
      }
      assertEquals("{\"subscription\":\"stream\"}", frames.get(frames.size() - 1));
      front.run("say a");
      assertEquals("stream", socket.recvStr());
    }
  }

  @Test
  void hostileFramesDoNotStopTheServer() {
    Random random = new Random(7);
    List<byte[]> delimiter = List.of("<IDS|MSG>".getBytes(StandardCharsets.US_ASCII));
    front.transmit(Channel.SHELL, delimiter);
    front.transmit(Channel.CONTROL, delimiter);
    for (int i = 0; i < 100; i++) {
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      front.transmit(
          Channel.SHELL, List.of(bytes, delimiter.get(0), bytes, bytes, bytes, bytes, bytes));
    }
    assertEquals("ok", front.run("say a").reply().path("status").textValue());
  }

  /** Connections that greet well and then announce a frame of nonsensical length. */
  @ParameterizedTest
  @ValueSource(
      longs = {-1, Long.MIN_VALUE, Long.MIN_VALUE + 1_500_000_000, Long.MAX_VALUE, 1L << 30})
  void aNonsensicalFrameLengthDoesNotStopTheSockets(long length) throws Exception {
    byte[] greeting = new byte[64];
    greeting[0] = (byte) 0xFF;
    greeting[9] = 0x7F;
    greeting[10] = 3;
    System.arraycopy("NULL".getBytes(StandardCharsets.US_ASCII), 0, greeting, 12, 4);
    byte[] frame = ByteBuffer.allocate(64).put((byte) 2).putLong(length).array();
    for (Channel channel : Channel.values()) {
      String port = connection.endpoint(channel).replaceFirst(".*:", "");
      try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(port))) {
        socket.getOutputStream().write(greeting);
        socket.getOutputStream().write(frame);
        socket.getOutputStream().flush();
        socket.shutdownOutput();
        drain(socket);
      }
    }
    try (SocketFrontEnd second = new SocketFrontEnd(connection)) {
      assertEquals("ok", second.run("say a").reply().path("status").textValue());
    }
  }

  @Test
  void manyCellsSentAtOnceAreAllAnswered() {
    List<Header> burst = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      burst.add(front.execute("value " + i));
    }
    for (int i = 0; i < burst.size(); i++) {
      ObjectNode result = front.answer(burst.get(i)).output("execute_result");
      assertEquals(Integer.toString(i), result.at("/data/text~1plain").textValue());
    }
  }

  @Test
  void shutdownIsAnsweredEvenWhileACellBlocks() throws Exception {
    Header cell = front.execute("wait");
    front.await(m -> m.isCausedBy(cell) && m.type().equals("execute_input"));
    Answer answer =
        front.ask(Channel.CONTROL, "shutdown_request", Json.object().put("restart", true));
    assertTrue(answer.reply().path("restart").booleanValue());
    assertEquals(KernelServer.OK, server.get(20, TimeUnit.SECONDS));
    assertTrue(language.closed.await(20, TimeUnit.SECONDS));
  }

  @Test
  void aTakenPortIsAFailureAtOnce() throws Exception {
    assertEquals(KernelServer.FAILED, KernelServer.run(connection, FakeLanguage::new));
  }

  @Test
  void ipcIsRefusedRatherThanServedToNobody() throws Exception {
    ConnectionFile ipc =
        new ConnectionFile(
            ConnectionFile.Transport.IPC, "/nowhere/kernel", connection.ports(), "key");
    assertEquals(KernelServer.FAILED, KernelServer.run(ipc, FakeLanguage::new));
  }

  /** Reads until the other side closes, so that it has taken in what was sent. */
  private static void drain(Socket socket) throws IOException {
    socket.setSoTimeout(20_000);
    try {
      socket.getInputStream().transferTo(OutputStream.nullOutputStream());
    } catch (SocketException e) {
      // Closed the hard way.
    }
  }

  private List<Header> burst(String... cells) {
    List<Header> burst = new ArrayList<>();
    for (String cell : cells) {
      burst.add(front.execute(cell));
    }
    return burst;
  }

  private List<String> ends(List<Header> burst) {
    return burst.stream()
        .map(request -> front.answer(request).reply())
        .map(reply -> reply.path("ename").asText(reply.path("status").asText()))
        .toList();
  }
}
