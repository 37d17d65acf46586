package plainscale.language.java.process;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Standard input of the cells: whoever reads from it asks the user for a line. Answers to a
 * question that nobody waits for any more (its cell was stopped) are passed over.
 */
public final class Typing extends InputStream {
  /** Guards the answer; a monitor stays whole when a cell that waits is stopped. */
  private final Object desk = new Object();

  private final Consumer<Event> events;
  private byte[] line = {};
  private int next;
  private int asked;
  private int answered;
  private byte[] answer = {};

  Typing(Consumer<Event> events) {
    this.events = events;
  }

  /** Takes an answer from the kernel: the number of the question, and the line if there is one. */
  void answered(byte[] frame) {
    ByteBuffer buffer = ByteBuffer.wrap(frame);
    synchronized (desk) {
      answered = buffer.getInt();
      answer = new byte[buffer.remaining()];
      buffer.get(answer);
      desk.notifyAll();
    }
  }

  /** An answer as the kernel must send it: with its line end; nothing at all if there is none. */
  public static byte[] answer(int number, String line) {
    byte[] text = line.getBytes(StandardCharsets.UTF_8);
    return ByteBuffer.allocate(Integer.BYTES + text.length).putInt(number).put(text).array();
  }

  /** What an earlier cell left unread is gone. */
  synchronized void begin() {
    line = new byte[0];
    next = 0;
  }

  @Override
  public synchronized int read() throws IOException {
    return filled() ? line[next++] & 0xFF : -1;
  }

  @Override
  public synchronized int read(byte[] target, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (!filled()) {
      return -1;
    }
    int count = Math.min(length, line.length - next);
    System.arraycopy(line, next, target, offset, count);
    next += count;
    return count;
  }

  @Override
  public synchronized int available() {
    return line.length - next;
  }

  private boolean filled() throws IOException {
    if (next == line.length) {
      int number = ++asked;
      events.accept(new Event.Asked(number, ""));
      line = await(number);
      next = 0;
    }
    return line.length > 0;
  }

  private byte[] await(int number) throws IOException {
    synchronized (desk) {
      while (answered != number) {
        try {
          desk.wait();
        } catch (InterruptedException e) {
          throw new IOException("The cell was interrupted while it waited for a line.", e);
        }
      }
      return answer;
    }
  }
}
