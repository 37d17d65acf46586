package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Supplier;
import plainscale.language.Cell;
import plainscale.language.Input;
import plainscale.language.Outcome;
import plainscale.language.Outcome.Failed;
import plainscale.wire.Json;

/** Runs cells, one after the other, on the thread of the {@link CellQueue}. */
final class ExecuteHandler implements Handler {

  private static final String NOT_RUN =
      "Not run, because a cell before it failed or was interrupted.";
  private static final Failed ABORTED = new Failed("Aborted", NOT_RUN, List.of());

  private final LanguageHolder language;
  private final CellQueue cells;
  private final History history;
  private final Questions questions;
  private final ScheduledExecutorService timer;

  /** Counts the cells that are stored; only the cells' thread sees it. */
  private int executionCount;

  ExecuteHandler(
      LanguageHolder language,
      CellQueue cells,
      History history,
      Questions questions,
      ScheduledExecutorService timer) {
    this.language = language;
    this.cells = cells;
    this.history = history;
    this.questions = questions;
    this.timer = timer;
  }

  @Override
  public Optional<ObjectNode> handle(Request request) {
    ObjectNode reply =
        cells.isAborted()
            ? Contents.error(ABORTED)
            : run(request, ExecuteRequest.of(request.message()));
    return Optional.of(reply.put("execution_count", executionCount));
  }

  private ObjectNode run(Request request, ExecuteRequest asked) {
    Cell cell = asked.cell();
    if (asked.storeHistory()) {
      executionCount++;
    }
    if (!cell.silent()) {
      request.publish(
          "execute_input",
          Json.object().put("code", cell.source()).put("execution_count", executionCount));
    }
    Outcome outcome = runCell(request, asked);
    if (outcome instanceof Failed failure) {
      if (asked.stopOnError() && !cell.silent()) {
        cells.abortBurst();
      }
      return Contents.error(failure);
    }
    ObjectNode reply = Contents.ok();
    reply.putArray("payload");
    reply.set("user_expressions", evaluate(asked.userExpressions()));
    return reply;
  }

  private Outcome runCell(Request request, ExecuteRequest asked) {
    Cell cell = asked.cell();
    try (CellOutputs outputs = new CellOutputs(request, executionCount, cell.silent(), timer)) {
      Input input = questions.of(request, outputs::flush);
      Outcome outcome = guarded(() -> language.get().execute(cell, outputs, input));
      questions.close();
      if (outcome instanceof Failed failure) {
        outputs.error(failure);
      }
      if (asked.storeHistory()) {
        history.add(new History.Entry(executionCount, cell.source(), outputs.resultText()));
      }
      return outcome;
    }
  }

  private ObjectNode evaluate(Map<String, String> expressions) {
    ObjectNode answers = Json.object();
    expressions.forEach((name, expression) -> answers.set(name, evaluate(expression)));
    return answers;
  }

  private ObjectNode evaluate(String expression) {
    CapturedOutputs outputs = new CapturedOutputs();
    Outcome outcome = guarded(() -> language.get().evaluate(expression, outputs));
    return outcome instanceof Failed failure
        ? Contents.error(failure)
        : Contents.ok().setAll(Contents.bundle(outputs.bundle()));
  }

  /** A fault in the language must not cost the front end its reply. */
  private static Outcome guarded(Supplier<Outcome> body) {
    try {
      return body.get();
    } catch (RuntimeException | Error e) {
      Log.line("the cell language failed: " + e);
      return Dispatcher.kernelProblem(e);
    } finally {
      // An interrupt that came too late for the cell must not disturb what follows.
      Thread.interrupted();
    }
  }
}
