package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import plainscale.session.FrontEnd.Received;
import plainscale.wire.Channel;
import plainscale.wire.Header;
import plainscale.wire.Json;

/** Cells that ask their user for a line. */
class QuestionsTest {

  @AutoClose private final LocalFrontEnd front = new LocalFrontEnd();

  private Header asking(boolean allowed) {
    return front.execute(
        Json.object().put("code", "say hello\nask name?").put("allow_stdin", allowed));
  }

  private Received question(Header cell) {
    return front.await(
        message -> message.type().equals("input_request") && message.isCausedBy(cell));
  }

  private void reply(String value) {
    front.send(Channel.STDIN, "input_reply", Json.object().put("value", value));
  }

  @Test
  void theQuestionGoesToTheFrontEndAndTheAnswerToTheCell() {
    Header cell = asking(true);
    Received question = question(cell);
    assertEquals(Channel.STDIN, question.channel());
    assertEquals("name?", question.message().content().path("prompt").textValue());
    assertFalse(question.message().content().path("password").booleanValue());
    reply("Ada");
    assertTrue(text(cell).endsWith("got Ada\n"), text(cell));
  }

  @Test
  void whatWasPrintedBeforeIsReadBefore() {
    Header cell = asking(true);
    question(cell);
    assertTrue(
        front.received().stream()
            .filter(message -> message.isCausedBy(cell))
            .anyMatch(message -> message.type().equals("stream")));
    reply("");
    assertTrue(text(cell).endsWith("got \n"), text(cell));
  }

  @Test
  void aFrontEndThatCannotAskIsNotAsked() {
    Header cell = asking(false);
    assertEquals("hello\nnobody\n", text(cell));
    assertFalse(front.received().stream().anyMatch(m -> m.type().equals("input_request")));
  }

  @Test
  void anInterruptEndsTheQuestion() {
    Header cell = asking(true);
    question(cell);
    front.ask(Channel.CONTROL, "interrupt_request", Json.object());
    assertTrue(text(cell).endsWith("nobody\n"), text(cell));
  }

  @Test
  void anAnswerThatNobodyAskedForIsPassedOver() {
    reply("too early");
    Header cell = asking(true);
    question(cell);
    reply("Ada");
    assertTrue(text(cell).endsWith("got Ada\n"), text(cell));
  }

  private String text(Header cell) {
    StringBuilder text = new StringBuilder();
    for (Received message : front.answer(cell).published()) {
      if (message.type().equals("stream")) {
        text.append(message.message().content().path("text").asText());
      }
    }
    return text.toString();
  }
}
