package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plainscale.wire.Channel;
import plainscale.wire.Json;

class HistoryTest {

  @AutoClose private final LocalFrontEnd front = new LocalFrontEnd();

  @BeforeEach
  void runSomeCells() {
    front.run("say a");
    front.run("value 2");
    front.run("say b");
    front.answer(front.execute(Json.object().put("code", "say unseen").put("silent", true)));
    front.answer(front.execute(Json.object().put("code", "say off").put("store_history", false)));
    front.run("say a");
  }

  @Test
  void tailGivesTheLastOnesOldestFirst() {
    assertEquals(List.of("1:3:say b", "1:4:say a"), history(asking("tail").put("n", 2)));
  }

  @Test
  void tailWithoutANumberGivesAll() {
    assertEquals(4, history(asking("tail")).size());
  }

  @Test
  void rangeStopsBeforeItsEnd() {
    ObjectNode range = asking("range").put("start", 2).put("stop", 4);
    assertEquals(List.of("1:2:value 2", "1:3:say b"), history(range));
    assertEquals(List.of("1:2:value 2", "1:3:say b"), history(range.put("session", 1)));
    assertEquals(List.of(), history(range.put("session", -1)));
  }

  @Test
  void searchTakesAGlobOverTheWholeText() {
    assertEquals(List.of("1:1:say a", "1:3:say b", "1:4:say a"), history(searching("say*")));
    assertEquals(List.of("1:2:value 2"), history(searching("v*e ?")));
    assertEquals(List.of(), history(searching("say")));
  }

  @Test
  void searchMayLeaveOutDoublesAndCountTheLastOnes() {
    assertEquals(List.of("1:3:say b", "1:4:say a"), history(searching("say*").put("unique", true)));
    assertEquals(List.of("1:4:say a"), history(searching("say*").put("n", 1)));
  }

  @Test
  void outputIsThePlainTextOfTheResult() {
    ObjectNode content = asking("range").put("output", true).put("start", 1).put("stop", 3);
    ObjectNode reply = front.ask(Channel.SHELL, "history_request", content).reply();
    assertEquals("say a", reply.at("/history/0/2/0").textValue());
    assertEquals(true, reply.at("/history/0/2/1").isNull());
    assertEquals("2", reply.at("/history/1/2/1").textValue());
  }

  @Test
  void oldEntriesMakeRoomForNewOnes() {
    History history = new History();
    for (int i = 1; i <= 1_500; i++) {
      history.add(new History.Entry(i, "cell " + i, Optional.empty()));
    }
    ObjectNode reply = history.answer(asking("tail").put("n", 10_000));
    assertEquals(1_000, reply.path("history").size());
    assertEquals("cell 1500", reply.at("/history/999/2").textValue());
  }

  private static ObjectNode asking(String type) {
    return Json.object().put("hist_access_type", type).put("raw", true).put("output", false);
  }

  private static ObjectNode searching(String pattern) {
    return asking("search").put("pattern", pattern);
  }

  private List<String> history(ObjectNode content) {
    List<String> lines = new ArrayList<>();
    front
        .ask(Channel.SHELL, "history_request", content)
        .reply()
        .path("history")
        .forEach(
            line ->
                lines.add(
                    line.path(0).asInt()
                        + ":"
                        + line.path(1).asInt()
                        + ":"
                        + line.path(2).asText()));
    return lines;
  }
}
