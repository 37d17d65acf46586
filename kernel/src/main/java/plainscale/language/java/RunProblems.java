package plainscale.language.java;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import jdk.jshell.EvalException;
import jdk.jshell.JShellException;
import jdk.jshell.UnresolvedReferenceException;
import plainscale.language.Outcome.Failed;

/**
 * What a cell threw: its own words, and the lines of cells that it went through; no other frames.
 */
final class RunProblems {
  private static final int MOST_FRAMES = 10;

  /** Errors of the virtual machine, whose own words say little to a student. */
  private static final Map<String, String> KNOWN =
      Map.of(
          "StackOverflowError", "The stack is full: a method goes on calling itself.",
          "OutOfMemoryError",
              "There is no memory left. Try: keep fewer objects, or let go of large ones (x = null).");

  private RunProblems() {}

  static Failed of(JShellException thrown, Origins origins) {
    String name = name(thrown);
    String message = message(thrown, name);
    List<String> lines = new ArrayList<>(message.lines().toList());
    lines.addAll(frames(thrown, origins));
    causes(thrown, lines, origins);
    return new Failed(name, lines.get(0), lines);
  }

  private static String name(JShellException thrown) {
    if (thrown instanceof EvalException exception) {
      String full = exception.getExceptionClassName();
      return full.substring(Math.max(full.lastIndexOf('.'), full.lastIndexOf('$')) + 1);
    }
    return "Undeclared";
  }

  private static String message(JShellException thrown, String name) {
    if (thrown instanceof UnresolvedReferenceException unresolved) {
      String what = unresolved.getSnippet().name();
      return "%s cannot be used yet: something in it is not declared.".formatted(what);
    }
    String message = Objects.requireNonNullElse(thrown.getMessage(), "").strip();
    String words = KNOWN.getOrDefault(name, "");
    return words.isEmpty() ? (message.isEmpty() ? name : message) : words;
  }

  private static List<String> frames(JShellException thrown, Origins origins) {
    // One line for all frames of a method that calls itself.
    List<String> frames =
        Arrays.stream(thrown.getStackTrace())
            .flatMap(
                frame ->
                    origins
                        .line(
                            Objects.requireNonNullElse(frame.getFileName(), ""),
                            frame.getLineNumber())
                        .stream())
            .distinct()
            .limit(MOST_FRAMES)
            .toList();
    List<String> told = new ArrayList<>();
    for (String frame : frames) {
      told.add((told.isEmpty() ? "  in " : "  called from ") + frame);
    }
    return told;
  }

  private static void causes(JShellException thrown, List<String> lines, Origins origins) {
    if (thrown.getCause() instanceof JShellException cause) {
      String name = name(cause);
      lines.add("because of " + name + ": " + message(cause, name));
      lines.addAll(frames(cause, origins));
    }
  }
}
