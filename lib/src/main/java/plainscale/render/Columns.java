package plainscale.render;

import java.util.ArrayList;
import java.util.List;

/** Tables as plain text. */
final class Columns {
  private Columns() {}

  /** The rows as lines, each column as wide as its widest cell, with so many spaces between two. */
  static List<String> lines(List<List<String>> rows, int gap) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        int column = i;
        int width = rows.stream().mapToInt(r -> length(r.get(column))).max().orElse(0);
        line.append(row.get(i)).append(" ".repeat(width - length(row.get(i)) + gap));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
