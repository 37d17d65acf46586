package plainscale.session;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import plainscale.language.Language;
import plainscale.wire.Channel;
import plainscale.wire.Decoded;
import plainscale.wire.Message;
import plainscale.wire.WireCodec;

/** A front end and a session in one process, without sockets but through the codec. */
final class LocalFrontEnd extends FrontEnd {

  private static final String KEY = "local";

  final FakeLanguage language = new FakeLanguage();
  final BlockingQueue<Integer> stops = new LinkedBlockingQueue<>();
  private final WireCodec codec = new WireCodec(KEY);
  private final BlockingQueue<Received> inbox = new LinkedBlockingQueue<>();
  private final KernelSession kernel;

  LocalFrontEnd() {
    this.kernel = new KernelSession(new Publisher(this::deliver), () -> language, stops::add);
  }

  LocalFrontEnd(Supplier<Language> factory) {
    this.kernel = new KernelSession(new Publisher(this::deliver), factory, stops::add);
  }

  @Override
  void transmit(Channel channel, Message message) {
    kernel.received(channel, message);
  }

  @Override
  Optional<Received> next(long millis) {
    try {
      return Optional.ofNullable(inbox.poll(millis, TimeUnit.MILLISECONDS));
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() {
    language.gate.countDown();
    kernel.close();
    gatherRest();
  }

  private synchronized void deliver(Channel channel, Message message) {
    Decoded decoded = codec.decode(codec.encode(message));
    if (decoded instanceof Decoded.Accepted accepted) {
      inbox.add(new Received(channel, accepted.message()));
    } else {
      throw new AssertionError(decoded);
    }
  }
}
