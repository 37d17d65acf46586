package plainscale.session;

import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;
import plainscale.wire.Message;

/**
 * A front end for tests: sends requests, gathers what comes, and checks every single message
 * against the {@link MessageSpec}. How messages travel is up to the subclass.
 */
abstract class FrontEnd implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 20;
  private static final Set<Channel> REPLIES = Set.of(Channel.SHELL, Channel.CONTROL);

  /** A message and where it came. */
  record Received(Channel channel, Message message) {
    String type() {
      return message.header().type();
    }

    boolean isCausedBy(Header request) {
      return message.parent().path("msg_id").asText().equals(request.id());
    }

    boolean isStatus(String state) {
      return message.content().path("execution_state").asText().equals(state);
    }
  }

  private final String session = UUID.randomUUID().toString();
  private final List<Received> received = new ArrayList<>();

  abstract void transmit(Channel channel, Message message);

  /** The next message, if one comes within the time. */
  abstract Optional<Received> next(long millis);

  @Override
  public abstract void close();

  Header send(Channel channel, String type, ObjectNode content) {
    return send(channel, type, content, Json.object());
  }

  Header send(Channel channel, String type, ObjectNode content, ObjectNode metadata) {
    Header header = Header.of(type, session, UUID.randomUUID().toString());
    List<byte[]> identity = List.of(session.getBytes(StandardCharsets.UTF_8));
    transmit(channel, new Message(identity, header, Json.object(), metadata, content, List.of()));
    return header;
  }

  Header execute(String code) {
    return execute(Json.object().put("code", code));
  }

  Header execute(ObjectNode content) {
    return send(Channel.SHELL, "execute_request", content);
  }

  /** Sends and waits for the answer. */
  Answer ask(Channel channel, String type, ObjectNode content) {
    return answer(send(channel, type, content));
  }

  Answer run(String code) {
    return answer(execute(code));
  }

  /** Waits for the reply and the idle status of a request, in whichever order they come. */
  Answer answer(Header request) {
    await(message -> message.isCausedBy(request) && message.type().endsWith("_reply"));
    return effects(request);
  }

  /** Waits for the idle status only, for messages that have no reply. */
  Answer effects(Header request) {
    await(message -> message.isCausedBy(request) && message.isStatus("idle"));
    return new Answer(received.stream().filter(message -> message.isCausedBy(request)).toList());
  }

  /** Waits for a message that fits, taking those into account that have come before. */
  Received await(Predicate<Received> wanted) {
    for (int seen = 0; ; seen++) {
      while (seen >= received.size()) {
        gather();
      }
      if (wanted.test(received.get(seen))) {
        return received.get(seen);
      }
    }
  }

  /** All that has come so far, in order. */
  List<Received> received() {
    return List.copyOf(received);
  }

  /** Takes in and checks what has come and was not waited for. */
  void gatherRest() {
    for (var next = next(0); next.isPresent(); next = next(0)) {
      keep(next.get());
    }
  }

  private void gather() {
    keep(
        next(PATIENCE_SECONDS * 1_000)
            .orElseGet(() -> fail("no message in time; came: " + received)));
  }

  private void keep(Received message) {
    MessageSpec.check(message.channel(), message.message());
    received.add(message);
  }

  /** All that one request caused. */
  record Answer(List<Received> messages) {

    /** The content of the reply; there must be exactly one. */
    ObjectNode reply() {
      return only(messages.stream().filter(m -> REPLIES.contains(m.channel())).toList());
    }

    /** The types of what was published, in order, without busy and idle. */
    List<String> outputs() {
      return published().stream()
          .map(Received::type)
          .filter(type -> !type.equals("status"))
          .toList();
    }

    /** The content of the only published message of a type. */
    ObjectNode output(String type) {
      return only(published().stream().filter(m -> m.type().equals(type)).toList());
    }

    List<Received> published() {
      return messages.stream().filter(m -> m.channel() == Channel.IOPUB).toList();
    }

    private static ObjectNode only(List<Received> found) {
      return found.size() == 1
          ? found.get(0).message().content()
          : fail("expected one message, not " + found);
    }
  }
}
