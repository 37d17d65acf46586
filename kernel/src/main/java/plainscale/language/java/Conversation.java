package plainscale.language.java;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.ObjIntConsumer;
import org.jspecify.annotations.Nullable;
import plainscale.language.Input;
import plainscale.language.MimeBundle;
import plainscale.language.Outputs;
import plainscale.language.java.process.Event;

/**
 * Between the process of the cells and the cell that runs. What a thread that was left running
 * prints between two cells is shown with the next one.
 */
final class Conversation {
  private static final int MOST_LATE = 64_000;

  private record Present(Outputs outputs, Input input) {}

  private final StringBuilder late = new StringBuilder();
  private @Nullable Present present;

  synchronized void begin(Outputs outputs, Input input) {
    present = new Present(outputs, input);
    if (!late.isEmpty()) {
      outputs.stream(Outputs.Stream.STDOUT, late.toString());
      late.setLength(0);
    }
  }

  synchronized void end() {
    present = null;
  }

  /** Who answers the present cell's questions. */
  synchronized Input input() {
    return present == null ? Input.none() : present.input();
  }

  /** Passes an event on; a question goes to {@code asked} with its number. */
  synchronized void take(Event event, ObjIntConsumer<String> asked) {
    if (event instanceof Event.Asked question) {
      asked.accept(question.prompt(), question.number());
    } else if (event instanceof Event.Printed printed) {
      print(printed);
    } else if (event instanceof Event.Shown shown && present != null) {
      show(shown, present.outputs());
    }
  }

  private void print(Event.Printed printed) {
    if (present != null) {
      present.outputs().stream(
          printed.error() ? Outputs.Stream.STDERR : Outputs.Stream.STDOUT, printed.text());
    } else if (late.length() < MOST_LATE) {
      late.append(printed.text());
    }
  }

  private static void show(Event.Shown shown, Outputs outputs) {
    Map<String, Object> data = new LinkedHashMap<>(shown.data());
    if (shown.value()) {
      outputs.result(MimeBundle.of(data));
    } else {
      outputs.display(MimeBundle.of(data), UUID.randomUUID().toString());
    }
  }
}
