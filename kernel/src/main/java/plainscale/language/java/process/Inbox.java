package plainscale.language.java.process;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** The bytes that have come on one channel, as a stream to read from. */
public final class Inbox extends InputStream {
  private static final byte[] END = {};

  private final BlockingQueue<byte[]> frames = new LinkedBlockingQueue<>();
  private byte[] current = {};
  private int next;
  private boolean ended;

  /** Appends a frame. */
  public void add(byte[] frame) {
    if (frame.length > 0) {
      frames.add(frame);
    }
  }

  /** Nothing more will come. */
  public void end() {
    frames.add(END);
  }

  @Override
  public int read() throws IOException {
    return await() ? current[next++] & 0xFF : -1;
  }

  @Override
  public int read(byte[] target, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (!await()) {
      return -1;
    }
    int count = Math.min(length, current.length - next);
    System.arraycopy(current, next, target, offset, count);
    next += count;
    return count;
  }

  private boolean await() throws IOException {
    if (next == current.length && !ended) {
      try {
        current = frames.take();
      } catch (InterruptedException e) {
        throw new IOException("interrupted", e);
      }
      next = 0;
      ended = current.length == 0;
    }
    return !ended;
  }
}
