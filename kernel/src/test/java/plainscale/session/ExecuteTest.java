package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import plainscale.session.FrontEnd.Answer;
import plainscale.session.FrontEnd.Received;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;

class ExecuteTest {

  @AutoClose private final LocalFrontEnd front = new LocalFrontEnd();

  @Test
  void aCellIsEchoedRunAndAnswered() {
    Answer answer = front.run("value 42");
    assertEquals(List.of("execute_input", "execute_result"), answer.outputs());
    assertEquals("value 42", answer.output("execute_input").path("code").textValue());
    assertEquals(1, answer.output("execute_input").path("execution_count").intValue());
    assertEquals("42", answer.output("execute_result").at("/data/text~1plain").textValue());
    assertEquals(1, answer.output("execute_result").path("execution_count").intValue());
    assertEquals("ok", answer.reply().path("status").textValue());
    assertEquals(1, answer.reply().path("execution_count").intValue());
    assertTrue(answer.reply().path("payload").isEmpty());
  }

  @Test
  void busyComesFirstAndIdleLast() {
    List<Received> published = front.run("say hello").published();
    assertTrue(published.get(0).isStatus("busy"));
    assertTrue(published.get(published.size() - 1).isStatus("idle"));
  }

  @Test
  void theCountRisesWithEveryStoredCell() {
    assertEquals(1, count(front.run("say a")));
    assertEquals(2, count(front.run("fail")));
    assertEquals(3, count(front.run("say b")));
  }

  @Test
  void aCellThatIsNotStoredKeepsTheCount() {
    front.run("say a");
    Answer answer = front.answer(front.execute(code("value 1").put("store_history", false)));
    assertEquals(1, count(answer));
    assertEquals(1, answer.output("execute_input").path("execution_count").intValue());
    assertEquals(2, count(front.run("say b")));
  }

  @Test
  void aSilentCellPublishesNothingAndKeepsTheCount() {
    String everything = "say a\nwarn b\nshow id c\nvalue d\nfail";
    ObjectNode content = code(everything).put("silent", true).put("store_history", true);
    Answer answer = front.answer(front.execute(content));
    assertEquals(List.of(), answer.outputs());
    assertEquals("error", answer.reply().path("status").textValue());
    assertEquals(0, count(answer));
    assertTrue(front.language.cells.get(0).silent());
  }

  @Test
  void theCellIdOfTheFrontEndReachesTheLanguage() {
    ObjectNode metadata = Json.object().put("cellId", "c-17");
    front.answer(front.send(Channel.SHELL, "execute_request", code("say a"), metadata));
    front.run("say b");
    assertEquals(Optional.of("c-17"), front.language.cells.get(0).id());
    assertEquals(Optional.empty(), front.language.cells.get(1).id());
  }

  @Test
  void displaysAndUpdatesCarryTheirId() {
    Answer answer = front.run("show d1 before\nchange d1 after");
    assertEquals(List.of("execute_input", "display_data", "update_display_data"), answer.outputs());
    ObjectNode update = answer.output("update_display_data");
    assertEquals("d1", update.at("/transient/display_id").textValue());
    assertEquals("after", update.at("/data/text~1plain").textValue());
  }

  @Test
  void anErrorIsPublishedOnceAndRepeatedInTheReply() {
    Answer answer = front.run("say a\nfail\nsay b");
    assertEquals(List.of("execute_input", "stream", "error"), answer.outputs());
    for (ObjectNode content : List.of(answer.output("error"), answer.reply())) {
      assertEquals("Mistake", content.path("ename").textValue());
      assertEquals("it failed", content.path("evalue").textValue());
      assertEquals("here", content.path("traceback").path(1).textValue());
    }
  }

  @Test
  void aFaultOfTheLanguageIsAnErrorWithoutAStackTrace() {
    for (String code : List.of("crash", "deep")) {
      Answer answer = front.run(code);
      assertEquals("KernelProblem", answer.output("error").path("ename").textValue());
      assertFalse(answer.output("error").toString().contains("at plainscale"));
      assertEquals("error", answer.reply().path("status").textValue());
    }
    assertEquals("ok", front.run("say a").reply().path("status").textValue());
  }

  @Test
  void outputAfterTheCellHasEndedIsDropped() {
    front.run("keep");
    assertEquals(List.of("execute_input"), front.run("late").outputs());
    front.gatherRest();
    assertTrue(front.received().stream().noneMatch(m -> m.type().equals("display_data")));
  }

  @Test
  void manySmallWritesAreFewStreamMessages() {
    Answer answer = front.run("flood 1000");
    List<Received> streams = streams(answer);
    assertTrue(streams.size() < 100, streams.size() + " messages");
    String expected =
        IntStream.range(0, 1000).mapToObj(i -> "line " + i + "\n").collect(Collectors.joining());
    assertEquals(expected, text(streams));
  }

  @Test
  void writesArePublishedWhileTheCellRuns() {
    Header request = front.execute("say early\ngate\nsay late");
    front.await(m -> m.isCausedBy(request) && m.type().equals("stream"));
    front.language.gate.countDown();
    assertEquals("early\nlate\n", text(streams(front.answer(request))));
  }

  @Test
  void streamsAndDisplaysKeepTheirOrder() {
    Answer answer =
        front.run("say a\nsay b\nwarn c\nsay d\nshow x e\nsay f\nvalue g\nwarn h\nfail");
    List<String> order =
        answer.published().stream()
            .filter(m -> !m.type().equals("status"))
            .map(m -> m.type() + m.message().content().path("name").asText())
            .toList();
    assertEquals(
        List.of(
            "execute_input",
            "streamstdout",
            "streamstderr",
            "streamstdout",
            "display_data",
            "streamstdout",
            "execute_result",
            "streamstderr",
            "error"),
        order);
  }

  @Test
  void userExpressionsGiveABundleOrAnErrorEach() {
    ObjectNode content = code("say a");
    content
        .putObject("user_expressions")
        .put("good", "value 7")
        .put("bad", "fail")
        .put("broken", "crash")
        .put("none", "say nothing");
    ObjectNode answers =
        (ObjectNode) front.answer(front.execute(content)).reply().path("user_expressions");
    assertEquals("7", answers.at("/good/data/text~1plain").textValue());
    assertEquals("Mistake", answers.at("/bad/ename").textValue());
    assertEquals("KernelProblem", answers.at("/broken/ename").textValue());
    assertTrue(answers.at("/none/data").isEmpty());
  }

  @Test
  void userExpressionsPublishNothing() {
    ObjectNode content = code("keep");
    content.putObject("user_expressions").put("a", "say x").put("b", "show i y");
    assertEquals(List.of("execute_input"), front.answer(front.execute(content)).outputs());
  }

  @Test
  void aRequestWithoutCodeOrWithWrongKindsIsRunWithDefaults() {
    ObjectNode content = Json.object().put("silent", "perhaps").put("stop_on_error", 7);
    content.put("user_expressions", "none");
    assertEquals("ok", front.answer(front.execute(content)).reply().path("status").textValue());
  }

  @Test
  void anInterruptedThreadStillPublishes() {
    Answer answer = front.run("poke\nsay a\nshow x b");
    assertEquals(List.of("execute_input", "stream", "display_data"), answer.outputs());
    assertEquals("ok", front.run("say next").reply().path("status").textValue());
  }

  private static ObjectNode code(String code) {
    return Json.object().put("code", code);
  }

  private static int count(Answer answer) {
    return answer.reply().path("execution_count").intValue();
  }

  private static List<Received> streams(Answer answer) {
    return answer.published().stream().filter(m -> m.type().equals("stream")).toList();
  }

  private static String text(List<Received> streams) {
    return streams.stream()
        .map(m -> m.message().content().path("text").asText())
        .collect(Collectors.joining());
  }
}
