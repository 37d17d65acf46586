package plainscale.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import zmq.Command;
import zmq.Msg;

/**
 * The five sockets. They are opened, used and closed by one thread; others reach them through the
 * {@link Outbox}. That thread must never be interrupted: it would break the sockets' own pipes.
 */
final class SocketLoop implements AutoCloseable {

  private static final int LINGER_MILLIS = 500;

  /** So that one flooded channel cannot starve the others. */
  private static final int MAX_AT_ONCE = 200;

  /** A frame's length is believed before its signature can be checked, so it has a bound. */
  private static final int MAX_FRAME_BYTES = 1 << 25;

  private static final int UNLIMITED = 0;

  private final ZContext context = new ZContext(1);
  private final Map<Channel, ZMQ.Socket> sockets = new EnumMap<>(Channel.class);
  private final Outbox outbox;
  private volatile boolean broken;

  private SocketLoop(Outbox outbox) {
    this.outbox = outbox;
    context.setUncaughtExceptionHandler(this::failed);
    context.setNotificationExceptionHandler(this::noted);
  }

  /** Opens and binds all sockets, or none. */
  static SocketLoop open(ConnectionFile connection, Outbox outbox) throws CannotListen {
    if (connection.transport() == ConnectionFile.Transport.IPC) {
      throw new CannotListen("transport ipc does not work with this kernel's sockets, use tcp");
    }
    SocketLoop loop = new SocketLoop(outbox);
    try {
      for (Channel channel : Channel.values()) {
        loop.bind(channel, connection);
      }
      return loop;
    } catch (CannotListen e) {
      loop.close();
      throw e;
    }
  }

  /**
   * Passes on what comes in and sends what waits in the outbox until that is finished. Shell is
   * read before control, so that an interrupt finds the cells that were sent before it in the
   * queue. On the publishing channel what comes in are subscriptions.
   */
  void run(BiConsumer<Channel, List<byte[]>> received) {
    try (ZMQ.Poller poller = context.createPoller(sockets.size() + 1)) {
      sockets.values().forEach(socket -> poller.register(socket, ZMQ.Poller.POLLIN));
      poller.register(outbox.wakeUp(), ZMQ.Poller.POLLIN);
      while (!outbox.isFinished()) {
        poller.poll(-1);
        sockets.forEach((channel, socket) -> receive(channel, socket, received));
        outbox.drain(this::transmit);
      }
      outbox.drain(this::transmit);
    }
  }

  /** Waits for what was sent to leave, but not long; broken sockets would be waited for forever. */
  @Override
  public void close() {
    if (!broken) {
      context.close();
    }
  }

  private void bind(Channel channel, ConnectionFile connection) throws CannotListen {
    ZMQ.Socket socket = create(channel);
    socket.setIPv6(connection.isIpv6());
    sockets.put(channel, socket);
    String endpoint = connection.endpoint(channel);
    try {
      socket.bind(endpoint);
    } catch (ZMQException e) {
      String reason = ZMQ.Error.findByCode(e.getErrorCode()).getMessage();
      throw new CannotListen("cannot listen on " + endpoint + " (" + reason + ")");
    } catch (IllegalArgumentException e) {
      throw new CannotListen("cannot listen on " + endpoint + " (not an address)");
    }
  }

  private ZMQ.Socket create(Channel channel) {
    ZMQ.Socket socket = context.createSocket(type(channel));
    socket.setLinger(LINGER_MILLIS);
    socket.setHWM(UNLIMITED);
    socket.setMaxMsgSize(MAX_FRAME_BYTES);
    socket.setMsgAllocator(SocketLoop::allocate);
    if (channel == Channel.IOPUB) {
      socket.setXpubVerbose(true);
      socket.setXpubNoDrop(true);
    } else if (channel != Channel.HEARTBEAT) {
      // A front end that reconnects under its old identity takes it over.
      socket.setRouterHandover(true);
    }
    return socket;
  }

  /**
   * jeromq 0.6.0 reads a length of 2^63 and more as negative, which passes for less than the
   * maximum, and its thread hangs when that much cannot be allocated: any stray connection could
   * stop the kernel. An empty frame in its place ends the connection or is rejected by the codec.
   */
  private static Msg allocate(int size) {
    return new Msg(size < 0 || size > MAX_FRAME_BYTES ? 0 : size);
  }

  /**
   * jeromq goes on after an exception. Mostly that costs one connection; but if it was working off
   * its commands, it will never do so again.
   */
  private void noted(Thread thread, Throwable e) {
    boolean inCommand =
        Arrays.stream(e.getStackTrace())
            .anyMatch(frame -> frame.getClassName().equals(Command.class.getName()));
    if (inCommand) {
      failed(thread, e);
    } else if (!outbox.isFinished()) {
      Log.line("a connection failed: " + e);
    }
  }

  /** Better to end, and be started again, than to hang. */
  private void failed(Thread thread, Throwable e) {
    if (!outbox.isFinished()) {
      Log.line("the sockets failed, the kernel ends: " + e);
      broken = true;
      outbox.finish();
    }
  }

  private static SocketType type(Channel channel) {
    return switch (channel) {
      case SHELL, CONTROL, STDIN -> SocketType.ROUTER;
      case IOPUB -> SocketType.XPUB;
      case HEARTBEAT -> SocketType.REP;
    };
  }

  private void receive(
      Channel channel, ZMQ.Socket socket, BiConsumer<Channel, List<byte[]>> received) {
    for (int i = 0; i < MAX_AT_ONCE; i++) {
      List<byte[]> frames = receive(socket);
      if (frames.isEmpty()) {
        return;
      } else if (channel == Channel.HEARTBEAT) {
        transmit(channel, frames);
      } else {
        received.accept(channel, frames);
      }
    }
  }

  /** The frames of one message; none if none has come. */
  private static List<byte[]> receive(ZMQ.Socket socket) {
    List<byte[]> frames = new ArrayList<>();
    byte[] frame = socket.recv(ZMQ.DONTWAIT);
    while (frame != null) {
      frames.add(frame);
      frame = socket.hasReceiveMore() ? socket.recv() : null;
    }
    return frames;
  }

  private void transmit(Channel channel, List<byte[]> frames) {
    ZMQ.Socket socket = sockets.get(channel);
    if (socket == null) {
      throw new IllegalStateException("no socket for " + channel);
    }
    for (int i = 0; i < frames.size(); i++) {
      socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
  }
}
