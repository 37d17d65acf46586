package plainscale.language.java;

import java.io.PrintStream;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import jdk.jshell.execution.DirectExecutionControl;
import org.jspecify.annotations.Nullable;
import plainscale.api.Displays;
import plainscale.language.java.process.Printing;
import plainscale.language.java.process.ReadableText;
import plainscale.sheet.Result;

/**
 * Runs cells in this process, where what they show stays results that any edition can print. For
 * commands whose user has allowed it; a kernel must survive its cells and uses {@link RemoteCells}.
 */
final class LocalCells extends DirectExecutionControl implements Cells {
  private final PrintStream out = System.out;
  private final PrintStream err = System.err;
  private final List<Result> results = new ArrayList<>();
  private @Nullable Object last;

  @Override
  protected String invoke(Method snippet) throws Exception {
    snippet.setAccessible(true);
    last = snippet.invoke(null);
    return "";
  }

  @Override
  public void begin() {
    results.clear();
    System.setOut(stream(false));
    System.setErr(stream(true));
    Displays.sendTo(this::display);
  }

  private PrintStream stream(boolean error) {
    return new PrintStream(new Printing(text -> print(text, error)), false, StandardCharsets.UTF_8);
  }

  /** What follows on the same stream is one text with what was printed before. */
  private synchronized void print(String text, boolean error) {
    int end = results.size() - 1;
    if (end >= 0 && results.get(end) instanceof Result.Printed before && before.error() == error) {
      results.set(end, new Result.Printed(before.text() + text, error));
    } else {
      results.add(new Result.Printed(text, error));
    }
  }

  @Override
  public String show(boolean value) {
    try {
      display(last);
      return "";
    } catch (RuntimeException e) {
      return ReadableText.ofProblem(e);
    }
  }

  private synchronized void display(@Nullable Object value) {
    results.addAll(
        Displays.of(value)
            .orElseGet(() -> List.of(new Result.Printed(ReadableText.of(value), false))));
  }

  @Override
  public void end() {
    System.setOut(out);
    System.setErr(err);
  }

  @Override
  public boolean wasStopped() {
    return false;
  }

  /** What the last cell has shown. */
  synchronized List<Result> results() {
    return List.copyOf(results);
  }
}
