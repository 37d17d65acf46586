package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.session.FrontEnd.Answer;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;

class AssistTest {

  @AutoClose private final LocalFrontEnd front = new LocalFrontEnd();

  @Test
  void kernelInfoSaysWhatTheProtocolAsks() {
    for (Channel channel : List.of(Channel.SHELL, Channel.CONTROL)) {
      ObjectNode info = front.ask(channel, "kernel_info_request", Json.object()).reply();
      assertEquals("5.5", info.path("protocol_version").textValue());
      assertEquals("plainscale", info.path("implementation").textValue());
      assertTrue(info.path("implementation_version").textValue().matches("\\d+\\.\\d+\\.\\d+"));
      assertEquals("A language for tests", info.path("banner").textValue());
      JsonNode language = info.path("language_info");
      assertEquals("fake", language.path("name").textValue());
      assertEquals("1.0", language.path("version").textValue());
      assertEquals("text/x-fake", language.path("mimetype").textValue());
      assertEquals(".fake", language.path("file_extension").textValue());
      assertEquals("text", language.path("pygments_lexer").textValue());
      assertFalse(language.has("codemirror_mode"));
      assertEquals("Help", info.at("/help_links/0/text").textValue());
      assertTrue(info.path("supported_features").isEmpty());
    }
  }

  @Test
  void completionListsMatchesAndTheirKinds() {
    ObjectNode reply = complete("alp", 3);
    assertEquals("alpha", reply.at("/matches/0").textValue());
    assertEquals("alpine", reply.at("/matches/1").textValue());
    assertEquals(0, reply.path("cursor_start").intValue());
    assertEquals(3, reply.path("cursor_end").intValue());
    JsonNode types = reply.at("/metadata/_jupyter_types_experimental");
    assertEquals(2, types.size());
    assertEquals("alpine", types.at("/1/text").textValue());
    assertEquals("name", types.at("/1/type").textValue());
  }

  /** 𝜃 is one code point and two Java chars. */
  @ParameterizedTest
  @CsvSource({
    "𝜃 alp,          5, 2, 5",
    "𝜃𝜃𝜃 b = 𝜃 al x, 12, 10, 12",
    "alp 𝜃,          3, 0, 3",
    "alp,         9999, 0, 3",
    "alp,           -1, 0, 0",
  })
  void cursorPositionsCountCodePoints(String code, int cursor, int start, int end) {
    ObjectNode reply = complete(code, cursor);
    assertEquals(start, reply.path("cursor_start").intValue());
    assertEquals(end, reply.path("cursor_end").intValue());
  }

  @Test
  void completionWithoutACursorIsAtTheEnd() {
    ObjectNode content = Json.object().put("code", "be");
    ObjectNode reply = front.ask(Channel.SHELL, "complete_request", content).reply();
    assertEquals("beta", reply.at("/matches/0").textValue());
  }

  @Test
  void aFaultInCompletionIsAReplyWithStatusError() {
    assertEquals("KernelProblem", complete("crash", 0).path("ename").textValue());
  }

  @Test
  void completionAndInspectionAnswerWhileACellRuns() {
    Header cell = front.execute("gate");
    front.await(m -> m.isCausedBy(cell) && m.type().equals("execute_input"));
    assertEquals("alpha", complete("alph", 4).at("/matches/0").textValue());
    assertTrue(inspect("alpha", 0).path("found").booleanValue());
    front.ask(Channel.CONTROL, "kernel_info_request", Json.object());
    assertTrue(front.received().stream().noneMatch(m -> m.type().equals("execute_reply")));
    front.language.gate.countDown();
    assertEquals("ok", front.answer(cell).reply().path("status").textValue());
  }

  @Test
  void inspectionGivesABundleOrNothing() {
    ObjectNode found = inspect("alpha", 1);
    assertTrue(found.path("found").booleanValue());
    assertEquals("alpha, level 1", found.at("/data/text~1plain").textValue());
    ObjectNode missing = inspect("gamma", 0);
    assertFalse(missing.path("found").booleanValue());
    assertTrue(missing.path("data").isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"x, complete", "x \\, incomplete", "), invalid", "'', unknown"})
  void completenessHasFourAnswers(String code, String status) {
    ObjectNode content = Json.object().put("code", code);
    ObjectNode reply = front.ask(Channel.SHELL, "is_complete_request", content).reply();
    assertEquals(status, reply.path("status").textValue());
    assertEquals(status.equals("incomplete"), reply.has("indent"));
  }

  @Test
  void thereAreNoComms() {
    ObjectNode reply = front.ask(Channel.SHELL, "comm_info_request", Json.object()).reply();
    assertTrue(reply.path("comms").isEmpty());
  }

  @Test
  void aCommOfAnUnknownTargetIsClosed() {
    ObjectNode open = Json.object().put("comm_id", "c1").put("target_name", "nobody");
    Answer answer = front.effects(front.send(Channel.SHELL, "comm_open", open));
    assertEquals("c1", answer.output("comm_close").path("comm_id").textValue());
  }

  @Test
  void otherCommMessagesAndUnknownTypesArePassedOver() {
    for (String type : List.of("comm_msg", "comm_close", "debug_request", "input_reply")) {
      Answer answer = front.effects(front.send(Channel.SHELL, type, Json.object()));
      assertEquals(List.of(), answer.outputs(), type);
    }
    assertTrue(front.received().stream().noneMatch(m -> m.channel() == Channel.SHELL));
  }

  @ParameterizedTest
  @CsvSource({"SHELL, true", "SHELL, false", "CONTROL, true", "CONTROL, false"})
  void shutdownEchoesRestartAndStopsAfterIdle(Channel channel, boolean restart)
      throws InterruptedException {
    ObjectNode content = Json.object().put("restart", restart);
    Header request = front.send(channel, "shutdown_request", content);
    assertEquals(0, front.stops.poll(20, TimeUnit.SECONDS));
    front.gatherRest();
    assertTrue(
        front.received().stream().anyMatch(m -> m.isCausedBy(request) && m.isStatus("idle")));
    assertEquals(restart, front.answer(request).reply().path("restart").booleanValue());
  }

  @Test
  void aLanguageThatDoesNotStartEndsTheKernel() throws InterruptedException {
    try (LocalFrontEnd broken =
        new LocalFrontEnd(
            () -> {
              throw new IllegalStateException("no licence for this");
            })) {
      assertEquals(KernelServer.FAILED, broken.stops.poll(20, TimeUnit.SECONDS));
    }
  }

  @Test
  void closingLetsTheLanguageClose() throws InterruptedException {
    LocalFrontEnd other = new LocalFrontEnd();
    other.run("say a");
    other.close();
    assertTrue(other.language.closed.await(20, TimeUnit.SECONDS));
  }

  private ObjectNode complete(String code, int cursor) {
    ObjectNode content = Json.object().put("code", code).put("cursor_pos", cursor);
    return front.ask(Channel.SHELL, "complete_request", content).reply();
  }

  private ObjectNode inspect(String code, int detail) {
    ObjectNode content =
        Json.object().put("code", code).put("cursor_pos", 0).put("detail_level", detail);
    return front.ask(Channel.SHELL, "inspect_request", content).reply();
  }
}
