package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;
import plainscale.wire.Message;

/** Gives each message of this kernel its header and its parent, and sends it. */
final class Publisher {

  private final Sender sender;
  private final String session = UUID.randomUUID().toString();
  private final AtomicLong count = new AtomicLong();

  Publisher(Sender sender) {
    this.sender = sender;
  }

  /** Answers a request on the channel and to the front end that it came from. */
  void reply(Request request, ObjectNode content) {
    String type = request.type().replaceFirst("_request$", "_reply");
    Message reply = Message.of(request.message().identities(), header(type), content);
    sender.send(request.channel(), reply.causedBy(request.message().header()));
  }

  /** Asks the front end that sent a message; the answer comes back on the same channel. */
  void ask(Message cause, String type, ObjectNode content) {
    Message question = Message.of(cause.identities(), header(type), content);
    sender.send(Channel.STDIN, question.causedBy(cause.header()));
  }

  /** Tells all front ends about an effect of a request. */
  void publish(Header cause, String type, ObjectNode content) {
    sender.send(Channel.IOPUB, onTopic(bytes(type), type, content).causedBy(cause));
  }

  /** Tells those who subscribed to the topic that they now receive. */
  void welcome(byte[] subscription) {
    ObjectNode content =
        Json.object().put("subscription", new String(subscription, StandardCharsets.UTF_8));
    sender.send(Channel.IOPUB, onTopic(subscription, "iopub_welcome", content));
  }

  /** The one status that no request causes. */
  void starting() {
    ObjectNode content = Json.object().put("execution_state", "starting");
    sender.send(Channel.IOPUB, onTopic(bytes("status"), "status", content));
  }

  private Message onTopic(byte[] topic, String type, ObjectNode content) {
    return Message.of(List.of(topic), header(type), content);
  }

  private Header header(String type) {
    return Header.of(type, session, session + "_" + count.incrementAndGet());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
