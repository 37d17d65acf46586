package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;
import plainscale.wire.Message;

class DispatcherTest {

  private final List<String> sent = new ArrayList<>();
  private final List<Message> messages = new ArrayList<>();
  private final Publisher publisher =
      new Publisher(
          (channel, message) -> {
            MessageSpec.check(channel, message);
            messages.add(message);
            String state = message.content().path("execution_state").asText();
            sent.add(channel + " " + message.header().type() + " " + state);
          });

  @Test
  void aRequestIsBusyAnsweredAndIdle() {
    dispatch(
        Channel.SHELL,
        "comm_info_request",
        request -> reply(Contents.ok().set("comms", Json.object())));
    assertEquals(List.of("IOPUB status busy", "SHELL comm_info_reply ", "IOPUB status idle"), sent);
  }

  @Test
  void controlIsTreatedAsShell() {
    dispatch(Channel.CONTROL, "interrupt_request", request -> reply(Contents.ok()));
    assertEquals(
        List.of("IOPUB status busy", "CONTROL interrupt_reply ", "IOPUB status idle"), sent);
  }

  @Test
  void whatTheHandlerPublishesStandsBetweenBusyAndIdle() {
    dispatch(
        Channel.SHELL,
        "comm_open",
        request -> {
          request.publish("comm_close", comm());
          return Optional.empty();
        });
    assertEquals(List.of("IOPUB status busy", "IOPUB comm_close ", "IOPUB status idle"), sent);
  }

  @Test
  void anUnknownTypeIsBusyAndIdleWithoutAReply() {
    dispatch(Channel.SHELL, "tea_request", Optional.empty());
    assertEquals(List.of("IOPUB status busy", "IOPUB status idle"), sent);
  }

  @Test
  void aHandlerThatFailsStillRepliesAndTurnsIdle() {
    dispatch(
        Channel.SHELL,
        "inspect_request",
        request -> {
          throw new IllegalArgumentException("secret");
        });
    assertEquals(List.of("IOPUB status busy", "SHELL inspect_reply ", "IOPUB status idle"), sent);
    ObjectNode reply = messages.get(1).content();
    assertEquals("KernelProblem", reply.path("ename").textValue());
    assertTrue(reply.path("evalue").asText().contains("IllegalArgumentException"));
  }

  @Test
  void aFailureWithoutReplyTurnsIdleToo() {
    dispatch(
        Channel.SHELL,
        "comm_open",
        request -> {
          throw new IllegalStateException();
        });
    assertEquals(List.of("IOPUB status busy", "IOPUB status idle"), sent);
  }

  @Test
  void everyMessageHasTheRequestAsParentAndAnIdOfItsOwn() {
    Header header = dispatch(Channel.CONTROL, "interrupt_request", request -> reply(Contents.ok()));
    assertTrue(messages.stream().allMatch(message -> message.parent().equals(header.fields())));
    assertEquals(3, messages.stream().map(message -> message.header().id()).distinct().count());
    assertEquals(
        1, messages.stream().map(message -> message.header().session()).distinct().count());
  }

  @Test
  void theReplyGoesToWhereTheRequestCameFrom() {
    dispatch(Channel.CONTROL, "interrupt_request", request -> reply(Contents.ok()));
    assertEquals(
        "front end", new String(messages.get(1).identities().get(0), StandardCharsets.UTF_8));
  }

  private static ObjectNode comm() {
    return Json.object().put("comm_id", "c").set("data", Json.object());
  }

  private static Optional<ObjectNode> reply(ObjectNode content) {
    return Optional.of(content);
  }

  private Header dispatch(Channel channel, String type, Handler handler) {
    return dispatch(channel, type, Optional.of(handler));
  }

  private Header dispatch(Channel channel, String type, Optional<Handler> handler) {
    Header header = Header.of(type, "client", "id-1");
    byte[] identity = "front end".getBytes(StandardCharsets.UTF_8);
    Message message = Message.of(List.of(identity), header, Json.object());
    Map<String, Handler> table = handler.map(h -> Map.of(type, h)).orElse(Map.of());
    new Dispatcher(table).dispatch(new Request(channel, message, publisher));
    return header;
  }
}
