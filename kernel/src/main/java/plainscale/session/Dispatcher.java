package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.language.Outcome.Failed;
import plainscale.wire.Json;

/**
 * Handles the requests of one channel by a table of message types. The only place where a request
 * turns busy, is replied to and turns idle, so that no handler can forget it. A type that is not in
 * the table is passed over, between busy and idle as the rest.
 */
final class Dispatcher {

  private static final Handler IGNORE = request -> Optional.empty();

  private final Map<String, Handler> handlers;

  Dispatcher(Map<String, Handler> handlers) {
    this.handlers = Map.copyOf(handlers);
  }

  void dispatch(Request request) {
    status(request, "busy");
    try {
      answer(request).ifPresent(request::reply);
    } finally {
      status(request, "idle");
    }
  }

  /** Whatever goes wrong in a handler, the front end gets its answer. */
  private Optional<ObjectNode> answer(Request request) {
    try {
      return handlers.getOrDefault(request.type(), IGNORE).handle(request);
    } catch (RuntimeException | Error e) {
      Log.line(request.type() + " failed: " + e);
      return request.type().endsWith("_request")
          ? Optional.of(Contents.error(kernelProblem(e)))
          : Optional.empty();
    }
  }

  /** What a front end is told when the kernel, not the user, is at fault. */
  static Failed kernelProblem(Throwable e) {
    String message = "The kernel itself failed (" + e.getClass().getSimpleName() + ").";
    return new Failed("KernelProblem", message, List.of(message));
  }

  private static void status(Request request, String state) {
    request.publish("status", Json.object().put("execution_state", state));
  }
}
