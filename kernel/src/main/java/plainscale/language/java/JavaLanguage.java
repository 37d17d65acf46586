package plainscale.language.java;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import plainscale.language.Cell;
import plainscale.language.Completeness;
import plainscale.language.Completion;
import plainscale.language.Input;
import plainscale.language.Language;
import plainscale.language.LanguageInfo;
import plainscale.language.MimeBundle;
import plainscale.language.Outcome;
import plainscale.language.Outputs;

/** Java as a kernel's language, with the library imported. */
public final class JavaLanguage implements Language {
  /** After so many calls, a tenth of a second apart, a cell that does not stop is ended. */
  private static final int PATIENCE = 30;

  private final ExecutorService stopping = daemon("plainscale-stop");
  private final ExecutorService typing = daemon("plainscale-type");
  private final Conversation conversation = new Conversation();
  private final Origins origins = new Origins();
  private final AtomicInteger stops = new AtomicInteger();

  /** Guards the three below: a stop belongs to the run for which it was asked. */
  private final Object turn = new Object();

  private int runs;
  private boolean running;
  private boolean killed;

  private final AtomicBoolean stopUnderWay = new AtomicBoolean();
  private volatile CompletableFuture<Shell> shell = new CompletableFuture<>();

  @Override
  public LanguageInfo info() {
    return new LanguageInfo(
        "java",
        System.getProperty("java.specification.version"),
        "text/x-java",
        ".java",
        "java",
        "Plainscale Java: cells in Java, which can do all that you can do on this machine."
            + " Try: quantity(\"2.70(5) g\")",
        List.of());
  }

  @Override
  public Outcome execute(Cell cell, Outputs outputs, Input input) {
    stops.set(0);
    Shell used;
    try {
      used = shell.join();
    } catch (CompletionException e) {
      return notStarted(e);
    }
    conversation.begin(outputs, input);
    origins.begin();
    begin();
    try {
      return run(used, cell.source());
    } finally {
      end();
      conversation.end();
    }
  }

  private static Outcome notStarted(CompletionException e) {
    String sentence =
        "The process in which Java cells run could not be started: %s. Try: restart the kernel."
            .formatted(Objects.requireNonNullElse(e.getCause(), e).getMessage());
    return new Outcome.Failed("JavaNotStarted", sentence, List.of(sentence));
  }

  private Outcome run(Shell used, String source) {
    Optional<Outcome> outcome = attempt(used, source);
    boolean byUs = end();
    return byUs || outcome.isEmpty() ? startAgain(used, byUs) : outcome.get();
  }

  /** How the cell ended; empty if its process did. */
  private Optional<Outcome> attempt(Shell used, String source) {
    try {
      Outcome outcome =
          used.with(
              jshell ->
                  new CellRun(jshell, used.cells(), origins, source, () -> stops.get() > 0).run());
      return used.cells().isLost() ? Optional.empty() : Optional.of(outcome);
    } catch (IllegalStateException e) {
      if (used.process().hasEnded()) {
        return Optional.empty();
      }
      throw e;
    }
  }

  private void begin() {
    synchronized (turn) {
      runs++;
      running = true;
      killed = false;
    }
  }

  /** From here on no stop hits anything; whether one has ended the process. */
  private boolean end() {
    synchronized (turn) {
      running = false;
      return killed;
    }
  }

  private Outcome startAgain(Shell lost, boolean byUs) {
    String why =
        byUs
            ? "The cell did not stop and had to be ended with all of Java"
            : "The cell ended Java itself (" + lost.process().ending() + ")";
    String sentence = why + ": all values of earlier cells are gone. Run the cells again.";
    lost.close();
    shell = new CompletableFuture<>();
    start(shell);
    return new Outcome.Failed("JavaEnded", sentence, List.of(sentence));
  }

  @Override
  public void opened() {
    start(shell);
  }

  /** On another thread: the front end is told meanwhile what the language is. */
  private void start(CompletableFuture<Shell> starting) {
    starting.completeAsync(
        () -> {
          try {
            return new Shell(event -> conversation.take(event, this::answer));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  /** The cell waits; the thread that passes on what it shows must not. */
  private void answer(String prompt, int question) {
    typing.execute(
        () -> {
          String line = conversation.input().line(prompt).map(text -> text + "\n").orElse("");
          if (stops.get() == 0) { // a cell that is being stopped must not see an end of input
            shell.join().process().answer(question, line);
          }
        });
  }

  @Override
  public void interrupt() {
    int times = stops.incrementAndGet();
    int run;
    synchronized (turn) {
      run = runs;
    }
    if (!stopUnderWay.getAndSet(true)) {
      var unused = shell.thenAcceptAsync(used -> stop(used, times, run), stopping);
    }
  }

  /** Stops that run and no later one. */
  private void stop(Shell used, int times, int run) {
    try {
      synchronized (turn) {
        if (!running || run != runs) {
          return;
        }
        killed = times > PATIENCE;
        if (killed) {
          used.process().close();
        } else {
          used.process().stopCell();
        }
      }
    } finally {
      stopUnderWay.set(false);
    }
  }

  @Override
  public Outcome evaluate(String expression, Outputs outputs) {
    Shell used = shell.join();
    conversation.begin(outputs, Input.none());
    begin();
    try {
      Outcome outcome =
          used.with(
              jshell ->
                  new CellRun(jshell, used.cells(), origins, expression, () -> false)
                      .evaluateAndForget());
      return end() ? startAgain(used, true) : outcome;
    } finally {
      end();
      conversation.end();
    }
  }

  @Override
  public Completion complete(String code, int cursor) {
    return shell.join().with(jshell -> Assistance.complete(jshell, code, cursor));
  }

  @Override
  public Optional<MimeBundle> inspect(String code, int cursor, int detailLevel) {
    return shell.join().with(jshell -> Assistance.inspect(jshell, code, cursor));
  }

  @Override
  public Completeness completeness(String code) {
    return shell.join().with(jshell -> Assistance.completeness(jshell, code));
  }

  @Override
  public void close() {
    var unused = shell.thenAccept(Shell::close); // one that starts only now ends with the kernel
    stopping.shutdown();
    typing.shutdown();
  }

  private static ExecutorService daemon(String name) {
    return Executors.newSingleThreadExecutor(
        body -> {
          Thread thread = new Thread(body, name);
          thread.setDaemon(true);
          return thread;
        });
  }
}
