package plainscale.session;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Decoded;
import plainscale.wire.Message;
import plainscale.wire.WireCodec;

/** A front end behind real sockets. */
final class SocketFrontEnd extends FrontEnd {

  private final ZContext context = new ZContext();
  private final Map<Channel, ZMQ.Socket> sockets = new EnumMap<>(Channel.class);
  private final WireCodec codec;

  SocketFrontEnd(ConnectionFile connection) {
    this.codec = new WireCodec(connection.key());
    byte[] identity = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
    for (Channel channel : List.of(Channel.SHELL, Channel.CONTROL, Channel.IOPUB)) {
      boolean publishing = channel == Channel.IOPUB;
      ZMQ.Socket socket = socket(context, publishing ? SocketType.SUB : SocketType.DEALER);
      socket.setIdentity(identity);
      if (publishing) {
        socket.subscribe("");
      }
      socket.connect(connection.endpoint(channel));
      sockets.put(channel, socket);
    }
    await(message -> message.type().equals("iopub_welcome"));
  }

  /**
   * A socket to connect with. About one connection in a hundred that jeromq 0.6.0 makes (not that
   * it accepts) gets stuck before it is established; it is then made anew, by default after 30 s.
   */
  static ZMQ.Socket socket(ZContext context, SocketType type) {
    ZMQ.Socket socket = context.createSocket(type);
    socket.setHandshakeIvl(300);
    socket.setLinger(0);
    socket.setHWM(0);
    return socket;
  }

  @Override
  void transmit(Channel channel, Message message) {
    List<byte[]> frames = codec.encode(message);
    transmit(channel, frames.subList(message.identities().size(), frames.size()));
  }

  /** Sends frames as they are. */
  void transmit(Channel channel, List<byte[]> frames) {
    for (int i = 0; i < frames.size(); i++) {
      socket(channel).send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
  }

  @Override
  Optional<Received> next(long millis) {
    List<Channel> channels = List.copyOf(sockets.keySet());
    try (ZMQ.Poller poller = context.createPoller(channels.size())) {
      channels.forEach(channel -> poller.register(socket(channel), ZMQ.Poller.POLLIN));
      poller.poll(millis);
      for (int i = 0; i < channels.size(); i++) {
        if (poller.pollin(i)) {
          return Optional.of(receive(channels.get(i)));
        }
      }
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    gatherRest();
    context.close();
  }

  private ZMQ.Socket socket(Channel channel) {
    return Objects.requireNonNull(sockets.get(channel));
  }

  private Received receive(Channel channel) {
    ZMQ.Socket socket = socket(channel);
    List<byte[]> frames = new ArrayList<>();
    if (channel != Channel.IOPUB) {
      frames.add(socket.getIdentity());
    }
    do {
      frames.add(socket.recv());
    } while (socket.hasReceiveMore());
    Decoded decoded = codec.decode(frames);
    if (decoded instanceof Decoded.Accepted accepted) {
      return new Received(channel, accepted.message());
    }
    throw new AssertionError(decoded + " on " + channel);
  }
}
