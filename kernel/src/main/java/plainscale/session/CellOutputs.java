package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import plainscale.language.MimeBundle;
import plainscale.language.Outcome.Failed;
import plainscale.language.Outputs;
import plainscale.wire.Json;

/**
 * What one cell shows, published with its request as parent. Streams are gathered and published
 * about five times a second, because front ends drop cells that send thousands of small messages;
 * they are also published before everything else, so that the order stays. A silent cell publishes
 * nothing.
 */
final class CellOutputs implements Outputs, AutoCloseable {

  private static final long FLUSH_MILLIS = 200;
  private static final int FLUSH_LENGTH = 1 << 16;

  private final Request request;
  private final int executionCount;
  private final boolean silent;
  private final ScheduledExecutorService timer;

  private final StringBuilder pending = new StringBuilder();
  private Stream pendingStream = Stream.STDOUT;
  private boolean flushScheduled;
  private boolean open = true;
  private Optional<String> resultText = Optional.empty();

  CellOutputs(Request request, int executionCount, boolean silent, ScheduledExecutorService timer) {
    this.request = request;
    this.executionCount = executionCount;
    this.silent = silent;
    this.timer = timer;
  }

  @Override
  public void display(MimeBundle bundle, String displayId) {
    publish("display_data", named(bundle, displayId));
  }

  @Override
  public void update(MimeBundle bundle, String displayId) {
    publish("update_display_data", named(bundle, displayId));
  }

  @Override
  public synchronized void result(MimeBundle bundle) {
    if (open) {
      resultText = Optional.ofNullable(bundle.data().get("text/plain")).map(Object::toString);
    }
    publish("execute_result", Contents.bundle(bundle).put("execution_count", executionCount));
  }

  @Override
  public synchronized void stream(Stream stream, String text) {
    if (stream != pendingStream) {
      flush();
    }
    pendingStream = stream;
    if (open && !silent) {
      pending.append(text);
    }
    if (pending.length() >= FLUSH_LENGTH) {
      flush();
    } else if (!flushScheduled && !pending.isEmpty()) {
      flushScheduled = true;
      var unused = timer.schedule(this::flushInTime, FLUSH_MILLIS, TimeUnit.MILLISECONDS);
    }
  }

  /** The mistake at which the cell stopped. */
  void error(Failed failure) {
    publish("error", Contents.problem(failure));
  }

  /** The plain text of the cell's result, for the history. */
  synchronized Optional<String> resultText() {
    return resultText;
  }

  /** Publishes what is left; later calls are dropped. */
  @Override
  public synchronized void close() {
    flush();
    open = false;
  }

  private static ObjectNode named(MimeBundle bundle, String displayId) {
    ObjectNode content = Contents.bundle(bundle);
    content.putObject("transient").put("display_id", displayId);
    return content;
  }

  private synchronized void publish(String type, ObjectNode content) {
    flush();
    if (open && !silent) {
      request.publish(type, content);
    }
  }

  private synchronized void flushInTime() {
    flushScheduled = false;
    flush();
  }

  /** Publishes what waits to be joined with more. */
  synchronized void flush() {
    if (!pending.isEmpty()) {
      request.publish(
          "stream",
          Json.object()
              .put("name", pendingStream.name().toLowerCase(Locale.ROOT))
              .put("text", pending.toString()));
      pending.setLength(0);
    }
  }
}
