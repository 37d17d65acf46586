package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import plainscale.language.Language;
import plainscale.wire.Channel;
import plainscale.wire.Json;
import plainscale.wire.Message;

/**
 * What the kernel does with requests, without sockets: which thread takes them and which handler
 * answers them.
 */
final class KernelSession implements AutoCloseable {

  private static final long CLOSE_MILLIS = 500;
  private static final String EXECUTE = "execute_request";

  private final Publisher publisher;
  private final LanguageHolder language = new LanguageHolder();
  private final History history = new History();
  private final Questions questions = new Questions();

  private final ScheduledExecutorService timer = Threads.timer();
  private final ExecutorService cellThread = Threads.single("cells");
  private final ExecutorService assistThread = Threads.single("assist");
  private final ExecutorService controlThread = Threads.single("control");
  private final CellQueue cells = new CellQueue(cellThread, timer, CellQueue.BURST_MILLIS);

  private final Dispatcher shell;
  private final Dispatcher control;
  private final IntConsumer stop;

  /** Starts to make the language; {@code stop} is called with an exit code, once or more often. */
  KernelSession(Publisher publisher, Supplier<? extends Language> factory, IntConsumer stop) {
    this.publisher = publisher;
    this.stop = stop;
    this.shell = new Dispatcher(shellHandlers());
    this.control = new Dispatcher(controlHandlers());
    cellThread.execute(
        () -> {
          if (!language.create(factory)) {
            stop.accept(KernelServer.FAILED);
          }
        });
  }

  /** The sockets are open. */
  void opened() {
    cellThread.execute(() -> language.ifReady(Language::opened));
  }

  /** Takes a message over; returns at once. */
  void received(Channel channel, Message message) {
    Request request = new Request(channel, message, publisher);
    if (channel == Channel.STDIN) {
      questions.received(message);
    } else if (channel == Channel.CONTROL) {
      controlThread.execute(() -> control.dispatch(request));
    } else if (request.type().equals(EXECUTE)) {
      cells.submit(() -> shell.dispatch(request));
    } else {
      assistThread.execute(() -> shell.dispatch(request));
    }
  }

  /** For work beside the cells, at startup and at intervals. */
  ScheduledExecutorService timer() {
    return timer;
  }

  /** Stops the running cell and the threads; waits for the language, but not long. */
  @Override
  public void close() {
    cells.interrupt(this::interruptLanguage);
    questions.close();
    cellThread.shutdown();
    assistThread.shutdown();
    controlThread.shutdown();
    language.close(CLOSE_MILLIS);
    timer.shutdown();
  }

  private Map<String, Handler> shellHandlers() {
    return Map.ofEntries(
        Map.entry(EXECUTE, new ExecuteHandler(language, cells, history, questions, timer)),
        Map.entry("complete_request", asking(AssistHandlers::complete)),
        Map.entry("inspect_request", asking(AssistHandlers::inspect)),
        Map.entry("is_complete_request", asking(AssistHandlers::isComplete)),
        Map.entry("kernel_info_request", asking((language, asked) -> info(language))),
        Map.entry("history_request", request -> Optional.of(history.answer(request.content()))),
        Map.entry("comm_info_request", request -> Optional.of(noComms())),
        Map.entry("comm_open", KernelSession::refuseComm),
        Map.entry("shutdown_request", request -> shutdown(request, assistThread)));
  }

  private Map<String, Handler> controlHandlers() {
    return Map.of(
        "kernel_info_request",
        asking((language, asked) -> info(language)),
        "interrupt_request",
        request -> interrupt(),
        "shutdown_request",
        request -> shutdown(request, controlThread));
  }

  private Handler asking(BiFunction<Language, ObjectNode, ObjectNode> answer) {
    return request -> Optional.of(answer.apply(language.get(), request.content()));
  }

  private static ObjectNode info(Language language) {
    return KernelInfo.reply(language.info());
  }

  private Optional<ObjectNode> interrupt() {
    cells.interrupt(this::interruptLanguage);
    questions.close();
    return Optional.of(Contents.ok());
  }

  private void interruptLanguage() {
    language.ifReady(Language::interrupt);
  }

  /** The stop is queued behind this request on its own thread, that is, after its idle. */
  private Optional<ObjectNode> shutdown(Request request, ExecutorService thread) {
    thread.execute(() -> stop.accept(KernelServer.OK));
    boolean restart = request.content().path("restart").asBoolean(false);
    return Optional.of(Contents.ok().put("restart", restart));
  }

  private static ObjectNode noComms() {
    ObjectNode reply = Contents.ok();
    reply.putObject("comms");
    return reply;
  }

  /** spec: if the target is not found, reply with comm_close to avoid an inconsistent state. */
  private static Optional<ObjectNode> refuseComm(Request request) {
    ObjectNode close = Json.object().put("comm_id", request.content().path("comm_id").asText());
    close.putObject("data");
    request.publish("comm_close", close);
    return Optional.empty();
  }
}
