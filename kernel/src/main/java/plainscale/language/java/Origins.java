package plainscale.language.java;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Where each snippet came from, so that an error can point to its place. For one thread. */
final class Origins {
  private record Origin(int cell, String source, Piece piece) {}

  private final Map<String, Origin> origins = new HashMap<>();
  private int cell;

  /** Another cell begins. */
  void begin() {
    cell++;
  }

  /** Remembers where a snippet of the present cell stands. */
  void add(String snippetId, String source, Piece piece) {
    origins.put(snippetId, new Origin(cell, source, piece));
  }

  /**
   * A line of a snippet in words, with what stands there; empty for what no cell contains.
   *
   * @param file the name that JShell gives to the source of a snippet: # and its id
   */
  Optional<String> line(String file, int line) {
    Origin origin = origins.get(file.startsWith("#") ? file.substring(1) : "");
    if (origin == null || line < 1) {
      return Optional.empty();
    }
    int number = origin.piece().lineInCell(origin.source(), line);
    String where =
        "line " + number + " of " + (origin.cell() == cell ? "this" : "an earlier") + " cell";
    return Optional.of(where + ": " + text(origin.source(), number));
  }

  private static String text(String source, int line) {
    return source.lines().skip(line - 1L).findFirst().orElse("").strip();
  }
}
