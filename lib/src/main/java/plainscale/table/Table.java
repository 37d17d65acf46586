package plainscale.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tab-separated resource: lines that start with {@code #} are comments, the first other line
 * names the columns. A missing file or a row of the wrong width is a mistake of ours, so it stops
 * the program.
 */
public final class Table {
  private Table() {}

  /** One row; {@link #get} refuses a column that the table does not have. */
  public record Row(Map<String, String> cells) {
    /** The text in that column, possibly empty. */
    public String get(String column) {
      String text = cells.get(column);
      if (text == null) {
        throw new IllegalArgumentException("no column " + column + " among " + cells.keySet());
      }
      return text;
    }
  }

  /**
   * Reads the resource that lies at {@code name} beside {@code owner}, or from the root if it
   * starts with a slash.
   */
  public static List<Row> read(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + name);
      }
      return read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> read(BufferedReader reader, String name) throws IOException {
    List<Row> rows = new ArrayList<>();
    String[] header = {};
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] cells = line.split("\t", -1);
      if (header.length == 0) {
        header = cells;
      } else {
        rows.add(row(header, cells, name));
      }
    }
    return rows;
  }

  private static Row row(String[] header, String[] cells, String name) {
    if (cells.length != header.length) {
      throw new IllegalStateException(
          name + ": " + cells.length + " cells in row " + String.join("|", cells));
    }
    Map<String, String> byColumn = new TreeMap<>();
    for (int i = 0; i < header.length; i++) {
      byColumn.put(header[i], cells[i].strip());
    }
    return new Row(byColumn);
  }
}
