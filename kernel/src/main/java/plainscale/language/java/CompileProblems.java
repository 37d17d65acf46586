package plainscale.language.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import plainscale.language.Outcome.Failed;

/** What the compiler does not accept, with the place in the cell. */
final class CompileProblems {
  private static final String NAME = "CompileProblem";

  private CompileProblems() {}

  /** At least one of the diagnostics is an error. */
  static Failed of(String cell, Piece piece, List<Diag> diagnostics) {
    List<String> lines = new ArrayList<>();
    List<Diag> errors = diagnostics.stream().filter(Diag::isError).toList();
    for (Diag error : errors) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(lines(cell, piece, error));
    }
    String first = lines.isEmpty() ? "This cannot be compiled." : lines.get(0);
    return new Failed(NAME, first, lines);
  }

  /** The sentence, the line, and a mark below the place. */
  private static List<String> lines(String cell, Piece piece, Diag error) {
    int at = Math.min(cell.length(), piece.start() + (int) Math.max(0, error.getPosition()));
    int lineStart = cell.lastIndexOf('\n', at - 1) + 1;
    int lineEnd = cell.indexOf('\n', at);
    String line = cell.substring(lineStart, lineEnd < 0 ? cell.length() : lineEnd);
    long number = cell.substring(0, lineStart).chars().filter(c -> c == '\n').count() + 1;
    return List.of(
        "Line " + number + ": " + sentence(error),
        "  " + line,
        "  " + blanks(line, at - lineStart) + "^");
  }

  /** A tab stays one, so that the mark stands right. */
  private static String blanks(String line, int count) {
    return line.substring(0, Math.min(count, line.length())).replaceAll("[^\\t]", " ");
  }

  /** The compiler's words without its line of the location, which names a class of JShell's. */
  private static String sentence(Diag error) {
    return error
        .getMessage(Locale.ENGLISH)
        .lines()
        .map(String::strip)
        .filter(line -> !line.startsWith("location:"))
        .map(line -> line.replaceFirst("^symbol: +", ""))
        .collect(Collectors.joining(", "));
  }
}
