package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import plainscale.wire.Channel;

class OutboxTest {

  @AutoClose private final Outbox outbox = new Outbox();

  @Test
  void addingWakesAndDrainingHandsOverInOrder() throws IOException {
    try (Selector selector = Selector.open()) {
      outbox.wakeUp().register(selector, SelectionKey.OP_READ);
      for (int round = 0; round < 3; round++) {
        outbox.add(Channel.IOPUB, frames(1));
        outbox.add(Channel.SHELL, frames(2));
        assertEquals(1, selector.select(20_000));
        selector.selectedKeys().clear();
        assertEquals(List.of("IOPUB 1", "SHELL 2"), drain());
        assertEquals(0, selector.selectNow());
      }
    }
  }

  @Test
  void anInterruptedThreadDoesNotCloseThePipe() throws IOException {
    Thread.currentThread().interrupt();
    outbox.add(Channel.IOPUB, frames(1));
    assertTrue(Thread.interrupted());
    assertTrue(outbox.wakeUp().isOpen());
    assertEquals(List.of("IOPUB 1"), drain());
    outbox.add(Channel.IOPUB, frames(2));
    assertEquals(List.of("IOPUB 2"), drain());
  }

  @Test
  void nothingIsLostBetweenManyThreads() throws InterruptedException, IOException {
    int each = 2_000;
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      byte name = (byte) i;
      threads.add(
          new Thread(
              () -> {
                for (int k = 0; k < each; k++) {
                  outbox.add(Channel.IOPUB, frames(name));
                }
              }));
    }
    threads.forEach(Thread::start);
    int[] counts = new int[threads.size()];
    try (Selector selector = Selector.open()) {
      outbox.wakeUp().register(selector, SelectionKey.OP_READ);
      for (int sum = 0; sum < each * counts.length; ) {
        assertTrue(selector.select(20_000) > 0, "a wake-up was lost after " + sum);
        selector.selectedKeys().clear();
        List<String> drained = drain();
        sum += drained.size();
        drained.forEach(line -> counts[line.charAt(line.length() - 1) - '0']++);
      }
    }
    for (int count : counts) {
      assertEquals(each, count);
    }
  }

  @Test
  void finishingWakesToo() throws IOException {
    try (Selector selector = Selector.open()) {
      outbox.wakeUp().register(selector, SelectionKey.OP_READ);
      outbox.finish();
      assertEquals(1, selector.select(20_000));
      assertTrue(outbox.isFinished());
    }
  }

  private static List<byte[]> frames(int number) {
    return List.of(new byte[] {(byte) number});
  }

  private List<String> drain() {
    List<String> lines = new ArrayList<>();
    outbox.drain(
        (channel, frames) -> lines.add(channel + " " + ByteBuffer.wrap(frames.get(0)).get()));
    return lines;
  }
}
