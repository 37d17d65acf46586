package plainscale.language.java.process;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plainscale.language.java.process.Link.Channel;

class LinkTest {

  private final ByteArrayOutputStream pipe = new ByteArrayOutputStream();
  private final Link sender = new Link(InputStream.nullInputStream(), pipe);

  private List<String> received() {
    List<String> received = new ArrayList<>();
    Link receiver =
        new Link(new ByteArrayInputStream(pipe.toByteArray()), OutputStream.nullOutputStream());
    receiver.receive(
        Map.of(
            Channel.COMMAND, frame -> received.add("command " + text(frame)),
            Channel.EVENT, frame -> received.add("event " + text(frame))));
    return received;
  }

  private static String text(byte[] frame) {
    return new String(frame, StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void framesKeepOneOrderOverAllChannels() throws IOException {
    sender.send(Channel.EVENT, bytes("é"));
    sender.send(Channel.COMMAND, bytes(""));
    sender.send(Channel.ANSWER, bytes("nobody listens"));
    sender.send(Channel.EVENT, bytes("b"));
    assertEquals(List.of("event é", "command ", "event b"), received());
  }

  @Test
  void aFlushIsAFrame() throws IOException {
    try (OutputStream sink = sender.sink(Channel.COMMAND)) {
      sink.write(bytes("a"));
      sink.write(bytes("b"));
      sink.flush();
      sink.flush();
      sink.write(bytes("c"));
      sink.flush();
    }
    assertEquals(List.of("command ab", "command c"), received());
  }

  @Test
  void aPipeThatBreaksInAFrameEndsTheTalk() throws IOException {
    sender.send(Channel.EVENT, bytes("whole"));
    sender.send(Channel.EVENT, bytes("cut off"));
    byte[] cut = pipe.toByteArray();
    pipe.reset();
    pipe.write(cut, 0, cut.length - 3);
    assertEquals(List.of("event whole"), received());
  }

  @Test
  void anInboxJoinsFramesAndEnds() throws IOException {
    try (Inbox inbox = new Inbox()) {
      inbox.add(bytes("ab"));
      inbox.add(bytes(""));
      inbox.add(bytes("c"));
      inbox.end();
      assertArrayEquals(bytes("abc"), inbox.readAllBytes());
      assertEquals(-1, inbox.read());
    }
  }
}
