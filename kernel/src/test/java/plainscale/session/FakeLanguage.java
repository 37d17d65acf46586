package plainscale.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
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
import plainscale.language.Outputs.Stream;

/**
 * A language of commands, one a line, that do what the kernel must cope with. {@code wait} blocks
 * until it is interrupted; {@code doze} too, but misses the first call; {@code gate} blocks until
 * the test opens the gate.
 */
final class FakeLanguage implements Language {

  static final LanguageInfo INFO =
      new LanguageInfo(
          "fake",
          "1.0",
          "text/x-fake",
          ".fake",
          "text",
          "A language for tests",
          List.of(new LanguageInfo.HelpLink("Help", "https://example.org/help")));

  final CountDownLatch gate = new CountDownLatch(1);
  final CountDownLatch closed = new CountDownLatch(1);
  final List<Cell> cells = new ArrayList<>();
  private final AtomicInteger interrupts = new AtomicInteger();
  private volatile Optional<Outputs> kept = Optional.empty();

  @Override
  public LanguageInfo info() {
    return INFO;
  }

  @Override
  public Outcome execute(Cell cell, Outputs outputs, Input input) {
    cells.add(cell);
    interrupts.set(0);
    for (String line : cell.source().lines().toList()) {
      Outcome outcome = command(line.split(" ", 3), outputs, input);
      if (outcome instanceof Outcome.Failed) {
        return outcome;
      }
    }
    return new Outcome.Ok();
  }

  private Outcome command(String[] words, Outputs outputs, Input input) {
    String first = words.length > 1 ? words[1] : "";
    String rest = words.length > 2 ? words[2] : "";
    switch (words[0]) {
      case "say" -> outputs.stream(Stream.STDOUT, String.join(" ", first, rest).strip() + "\n");
      case "warn" -> outputs.stream(Stream.STDERR, first + "\n");
      case "show" -> outputs.display(text(rest), first);
      case "change" -> outputs.update(text(rest), first);
      case "value" -> outputs.result(text(first));
      case "flood" -> flood(Integer.parseInt(first), outputs);
      case "ask" ->
          outputs.stream(
              Stream.STDOUT, input.line(first).map(l -> "got " + l).orElse("nobody") + "\n");
      case "keep" -> kept = Optional.of(outputs);
      case "late" -> kept.orElseThrow().display(text("too late"), "late");
      case "poke" -> Thread.currentThread().interrupt();
      case "crash" -> throw new IllegalStateException("a fault in the language");
      case "deep" -> deep(Integer.MAX_VALUE);
      case "fail" -> {
        return new Outcome.Failed("Mistake", "it failed", List.of("it failed", "here"));
      }
      case "wait" -> {
        return waitForInterrupts(1);
      }
      case "doze" -> {
        return waitForInterrupts(2);
      }
      case "gate" -> await(gate);
      default -> {}
    }
    return new Outcome.Ok();
  }

  @Override
  public synchronized void interrupt() {
    interrupts.incrementAndGet();
    notifyAll();
  }

  private synchronized Outcome waitForInterrupts(int times) {
    while (interrupts.get() < times) {
      try {
        wait();
      } catch (InterruptedException e) {
        throw new AssertionError("the kernel itself must not interrupt a cell's thread", e);
      }
    }
    return new Outcome.Failed("Interrupted", "stopped", List.of("stopped"));
  }

  private static void await(CountDownLatch latch) {
    try {
      if (!latch.await(20, TimeUnit.SECONDS)) {
        throw new AssertionError("the gate was never opened");
      }
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static void flood(int lines, Outputs outputs) {
    for (int i = 0; i < lines; i++) {
      outputs.stream(Stream.STDOUT, "line " + i + "\n");
    }
  }

  private static int deep(int levels) {
    return levels == 0 ? 0 : deep(levels - 1) + 1;
  }

  @Override
  public Outcome evaluate(String expression, Outputs outputs) {
    return command(expression.split(" ", 3), outputs, Input.none());
  }

  /** Completes the ASCII letters before the cursor. */
  @Override
  public Completion complete(String code, int cursor) {
    if (code.equals("crash")) {
      throw new IllegalStateException("a fault in completion");
    }
    int start = cursor;
    while (start > 0 && code.charAt(start - 1) >= 'a' && code.charAt(start - 1) <= 'z') {
      start--;
    }
    String word = code.substring(start, cursor);
    List<Completion.Item> items =
        List.of("alpha", "alpine", "beta").stream()
            .filter(name -> name.startsWith(word))
            .map(name -> new Completion.Item(name, "name"))
            .toList();
    return new Completion(start, cursor, items);
  }

  @Override
  public Optional<MimeBundle> inspect(String code, int cursor, int detailLevel) {
    return code.startsWith("alpha")
        ? Optional.of(text("alpha, level " + detailLevel))
        : Optional.empty();
  }

  @Override
  public Completeness completeness(String code) {
    if (code.endsWith("\\")) {
      return new Completeness(Completeness.Status.INCOMPLETE, "  ");
    }
    return Completeness.of(
        switch (code) {
          case "" -> Completeness.Status.UNKNOWN;
          case ")" -> Completeness.Status.INVALID;
          default -> Completeness.Status.COMPLETE;
        });
  }

  @Override
  public void close() {
    closed.countDown();
  }

  private static MimeBundle text(String text) {
    return MimeBundle.of(Map.of("text/plain", text));
  }
}
