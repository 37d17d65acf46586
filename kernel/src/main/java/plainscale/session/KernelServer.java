package plainscale.session;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import plainscale.language.Language;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Decoded;
import plainscale.wire.WireCodec;

/**
 * A kernel process: opens the sockets of a connection file and serves a language on them.
 *
 * <pre>
 * int code = KernelServer.run(ConnectionFile.read(path), NotationLanguage::new);
 * System.exit(code);
 * </pre>
 */
public final class KernelServer {

  /** Exit code after a shutdown request, or when the parent process is gone. */
  public static final int OK = 0;

  /** Exit code when the sockets or the language could not be started, or the sockets failed. */
  public static final int FAILED = 1;

  private static final int UNDECIDED = -1;
  private static final long TERMINATION_MILLIS = 2_000;

  private final WireCodec codec;
  private final Outbox outbox = new Outbox();
  private final Publisher publisher;
  private final AtomicInteger exitCode = new AtomicInteger(UNDECIDED);
  private final CountDownLatch closed = new CountDownLatch(1);

  /** Whether neither a subscription nor a request has come yet; for the socket thread alone. */
  private boolean untouched = true;

  private KernelServer(String key) {
    this.codec = new WireCodec(key);
    this.publisher =
        new Publisher((channel, message) -> outbox.add(channel, codec.encode(message)));
  }

  /**
   * Serves until a front end asks for shutdown, the process is told to end, or the parent process
   * is gone; returns an exit code. The language is made on another thread while the sockets open,
   * and kernel_info waits for it, so its constructor should do little. The calling thread owns the
   * sockets and must not be interrupted.
   */
  public static int run(ConnectionFile connection, Supplier<? extends Language> language) {
    return new KernelServer(connection.key()).serve(connection, language);
  }

  private int serve(ConnectionFile connection, Supplier<? extends Language> language) {
    Thread hook = new Thread(this::terminate, "plainscale-terminate");
    Runtime.getRuntime().addShutdownHook(hook);
    try (outbox;
        KernelSession session = new KernelSession(publisher, language, this::stop)) {
      listen(connection, session);
      // Sockets that fail end the loop without anybody's wish.
      stop(FAILED);
      return exitCode.get();
    } catch (CannotListen e) {
      Log.line(e.getMessage());
      return FAILED;
    } finally {
      closed.countDown();
      forget(hook);
    }
  }

  private void listen(ConnectionFile connection, KernelSession session) throws CannotListen {
    try (SocketLoop sockets = SocketLoop.open(connection, outbox)) {
      session.opened();
      ParentWatch.parent(System.getenv(ParentWatch.VARIABLE), System.getProperty("os.name"))
          .ifPresent(parent -> ParentWatch.start(parent, session.timer(), () -> stop(OK)));
      sockets.run((channel, frames) -> received(channel, frames, session));
    }
  }

  private void received(Channel channel, List<byte[]> frames, KernelSession session) {
    switch (channel) {
      case SHELL, CONTROL, STDIN -> message(channel, frames, session);
      case IOPUB -> welcome(frames.get(0));
      case HEARTBEAT -> {}
    }
  }

  private void message(Channel channel, List<byte[]> frames, KernelSession session) {
    untouched = false;
    Decoded decoded = codec.decode(frames);
    if (decoded instanceof Decoded.Accepted accepted) {
      session.received(channel, accepted.message());
    } else if (decoded instanceof Decoded.Rejected rejected) {
      Log.line("dropped " + rejected.reason().sentence() + " on " + channel);
    }
  }

  /** A subscription comes as 1 and its topic, the end of one as 0 and its topic. */
  private void welcome(byte[] change) {
    if (change.length > 0 && change[0] == 1) {
      publisher.welcome(Arrays.copyOfRange(change, 1, change.length));
      sayOnceThatItStarts();
    }
  }

  /**
   * After the first welcome, which has to come first, and before any answer: sent when the sockets
   * open, it would reach a front end that subscribes at that moment before its welcome does.
   */
  private void sayOnceThatItStarts() {
    if (untouched) {
      untouched = false;
      publisher.starting();
    }
  }

  /** Callable from every thread; the first code counts. */
  private void stop(int code) {
    exitCode.compareAndSet(UNDECIDED, code);
    outbox.finish();
  }

  /** The process is told to end: let the sockets and the language close first. */
  private void terminate() {
    stop(OK);
    try {
      if (!closed.await(TERMINATION_MILLIS, TimeUnit.MILLISECONDS)) {
        Log.line("ended before all was closed");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is ending already, and the hook with it.
    }
  }
}
