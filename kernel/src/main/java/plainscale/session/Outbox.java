package plainscale.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.nio.channels.SelectableChannel;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import plainscale.wire.Channel;

/**
 * Frames on their way from all threads to the one that owns the sockets. A byte in a pipe wakes
 * that thread from its poll. Both ends of the pipe are non-blocking: an interrupted thread that
 * writes to a blocking one would close it, and cells may be interrupted.
 */
final class Outbox implements AutoCloseable {

  private record Outgoing(Channel channel, List<byte[]> frames) {}

  private final Queue<Outgoing> waiting = new ConcurrentLinkedQueue<>();
  private final AtomicBoolean woken = new AtomicBoolean();
  private final Pipe pipe;
  private volatile boolean finished;

  Outbox() {
    try {
      pipe = Pipe.open();
      pipe.source().configureBlocking(false);
      pipe.sink().configureBlocking(false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Readable when there is something to {@link #drain}. */
  SelectableChannel wakeUp() {
    return pipe.source();
  }

  void add(Channel channel, List<byte[]> frames) {
    waiting.add(new Outgoing(channel, frames));
    wake();
  }

  /** Nothing need be awaited after what waits now. */
  void finish() {
    finished = true;
    wake();
  }

  boolean isFinished() {
    return finished;
  }

  private void wake() {
    if (woken.compareAndSet(false, true)) {
      try {
        pipe.sink().write(ByteBuffer.allocate(1));
      } catch (IOException e) {
        // The sockets are closed already; a cell that was left running has nobody to tell.
      }
    }
  }

  /** Hands over all that waits. What is added meanwhile is seen here or wakes the next poll. */
  void drain(BiConsumer<Channel, List<byte[]>> transmit) {
    try {
      pipe.source().read(ByteBuffer.allocate(8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    woken.set(false);
    for (Outgoing next = waiting.poll(); next != null; next = waiting.poll()) {
      transmit.accept(next.channel(), next.frames());
    }
  }

  @Override
  public void close() {
    try {
      pipe.sink().close();
      pipe.source().close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
