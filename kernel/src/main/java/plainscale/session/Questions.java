package plainscale.session;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import plainscale.language.Input;
import plainscale.wire.Json;
import plainscale.wire.Message;

/**
 * Lines that a running cell asks its user for. A question goes to the front end that sent the cell,
 * and one is open at a time.
 */
final class Questions {

  private static final CompletableFuture<Optional<String>> NONE =
      CompletableFuture.completedFuture(Optional.empty());

  private volatile CompletableFuture<Optional<String>> open = NONE;

  /** How a cell asks; {@code before} is called first, so that what it has printed is read first. */
  Input of(Request request, Runnable before) {
    if (!request.content().path("allow_stdin").asBoolean(false)) {
      return Input.none();
    }
    return prompt -> {
      before.run();
      CompletableFuture<Optional<String>> answer = new CompletableFuture<>();
      open = answer;
      request.ask("input_request", Json.object().put("prompt", prompt).put("password", false));
      return answer.join();
    };
  }

  /** Takes an {@code input_reply}; anything else on its channel is passed over. */
  void received(Message message) {
    if (message.header().type().equals("input_reply")) {
      open.complete(Optional.of(message.content().path("value").asText("")));
    }
  }

  /** Nobody waits for the answer any more. */
  void close() {
    open.complete(Optional.empty());
  }
}
