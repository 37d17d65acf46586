package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import plainscale.language.Cell;
import plainscale.session.FrontEnd.Answer;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;

/** What happens to cells that wait: after an error, and after an interrupt. */
class QueueTest {

  @AutoClose private final LocalFrontEnd front = new LocalFrontEnd();

  @Test
  void afterAnErrorTheRestOfABurstIsNotRun() {
    List<Header> burst = burst("say a", "gate\nfail", "say b", "say c", "say d");
    front.language.gate.countDown();
    assertEquals(List.of("ok", "Mistake", "Aborted", "Aborted", "Aborted"), ends(burst));
    assertEquals(List.of("say a", "gate\nfail"), sourcesRun());
  }

  @Test
  void anAbortedCellIsAnsweredButNotEchoedNorCounted() {
    List<Header> burst = burst("gate\nfail", "say b");
    front.language.gate.countDown();
    Answer aborted = front.answer(burst.get(1));
    assertEquals(List.of(), aborted.outputs());
    assertEquals("error", aborted.reply().path("status").textValue());
    assertEquals(1, aborted.reply().path("execution_count").intValue());
    assertTrue(aborted.published().get(0).isStatus("busy"));
  }

  @Test
  void aCellSentAfterTheFailedReplyIsRun() {
    front.run("fail");
    assertEquals("ok", front.run("say a").reply().path("status").textValue());
  }

  @Test
  void withoutStopOnErrorTheRestIsRun() {
    List<Header> burst = new ArrayList<>();
    burst.add(front.execute(code("gate\nfail").put("stop_on_error", false)));
    burst.add(front.execute("say b"));
    front.language.gate.countDown();
    assertEquals(List.of("Mistake", "ok"), ends(burst));
  }

  @Test
  void onlyExecuteRequestsAreAborted() {
    List<Header> burst = burst("gate\nfail", "say b");
    Header other = front.send(Channel.SHELL, "is_complete_request", code("x"));
    front.language.gate.countDown();
    assertEquals("complete", front.answer(other).reply().path("status").textValue());
    assertEquals(List.of("Mistake", "Aborted"), ends(burst));
  }

  @Test
  void anInterruptStopsTheCellAndClearsTheQueue() {
    List<Header> burst = burst("wait", "say b", "say c");
    front.await(m -> m.isCausedBy(burst.get(0)) && m.type().equals("execute_input"));
    Answer interrupt = front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertEquals("ok", interrupt.reply().path("status").textValue());
    assertEquals(List.of("Interrupted", "Aborted", "Aborted"), ends(burst));
    assertEquals("ok", front.run("say d").reply().path("status").textValue());
  }

  @Test
  void anInterruptClearsTheQueueAlsoWithoutStopOnError() {
    List<Header> burst = new ArrayList<>();
    for (String cell : List.of("wait", "say b")) {
      burst.add(front.execute(code(cell).put("stop_on_error", false)));
    }
    front.await(m -> m.isCausedBy(burst.get(0)) && m.type().equals("execute_input"));
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertEquals(List.of("Interrupted", "Aborted"), ends(burst));
  }

  @Test
  void aCellThatMissesTheFirstInterruptHearsTheNext() {
    Header cell = front.execute("doze");
    front.await(m -> m.isCausedBy(cell) && m.type().equals("execute_input"));
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertEquals("Interrupted", front.answer(cell).reply().path("ename").textValue());
  }

  @Test
  void anInterruptWhenNothingRunsHarmsNothing() {
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertEquals("ok", front.run("say a").reply().path("status").textValue());
  }

  @Test
  void anInterruptedCellIsAnsweredBeforeTheNextBurstIsRun() {
    List<Header> first = burst("wait");
    front.await(m -> m.isCausedBy(first.get(0)) && m.type().equals("execute_input"));
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    front.answer(first.get(0));
    assertEquals(List.of("ok", "ok"), ends(burst("say a", "say b")));
  }

  private List<Header> burst(String... cells) {
    List<Header> burst = new ArrayList<>();
    for (String cell : cells) {
      burst.add(front.execute(cell));
    }
    return burst;
  }

  /** How each ended: ok, or the name of the error. */
  private List<String> ends(List<Header> burst) {
    return burst.stream()
        .map(request -> front.answer(request).reply())
        .map(reply -> reply.path("ename").asText(reply.path("status").asText()))
        .toList();
  }

  private List<String> sourcesRun() {
    return front.language.cells.stream().map(Cell::source).toList();
  }

  private static ObjectNode code(String code) {
    return Json.object().put("code", code);
  }
}
