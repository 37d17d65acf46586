package plainscale.language.java;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * A part of a cell that JShell runs at once: a declaration, a statement, an expression.
 *
 * @param start where it begins in the cell, in chars
 * @param whole false for text that stops in the middle, or that nobody can make sense of
 */
record Piece(String text, int start, boolean whole) {

  /** The pieces of a cell, in order; the last takes all that cannot be read. */
  static List<Piece> of(String cell, SourceCodeAnalysis analysis) {
    List<Piece> pieces = new ArrayList<>();
    int start = nextText(cell, 0);
    while (start < cell.length()) {
      String rest = cell.substring(start);
      CompletionInfo info = analysis.analyzeCompletion(rest);
      if (info.completeness() == Completeness.EMPTY) {
        break;
      }
      boolean whole = isWhole(info.completeness());
      int end = whole ? cell.length() - info.remaining().length() : cell.length();
      // JShell adds a semicolon that is missing at the end.
      String text = whole ? info.source() : rest;
      pieces.add(new Piece(text.stripTrailing(), start, whole));
      start = nextText(cell, end);
    }
    return pieces;
  }

  /** JShell counts what it cannot read among the complete. */
  private static boolean isWhole(Completeness completeness) {
    return completeness.isComplete() && completeness != Completeness.UNKNOWN;
  }

  private static int nextText(String cell, int from) {
    int next = from;
    while (next < cell.length() && Character.isWhitespace(cell.charAt(next))) {
      next++;
    }
    return next;
  }

  /**
   * Whether it ends in a semicolon, comments left aside: whatever follows that is another piece.
   */
  boolean isQuiet(SourceCodeAnalysis analysis) {
    return !analysis.analyzeCompletion(text + "\n;").remaining().isEmpty();
  }

  /** The number of the cell's line that a line of the piece is; both count from 1. */
  int lineInCell(String cell, int line) {
    return (int) cell.substring(0, start).chars().filter(c -> c == '\n').count() + line;
  }
}
