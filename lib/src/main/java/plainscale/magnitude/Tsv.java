package plainscale.magnitude;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads a table of this package: tab-separated, first row the column names, # for comments. */
final class Tsv {
  private Tsv() {}

  /** The rows, each from column name to cell; a cell that is missing at the end is empty. */
  static List<Map<String, String>> read(String name) {
    try (InputStream stream = Objects.requireNonNull(Tsv.class.getResourceAsStream(name), name);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      List<String[]> lines =
          reader
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .map(line -> line.split("\t", -1))
              .toList();
      return rows(lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, String>> rows(List<String[]> lines) {
    String[] columns = lines.get(0);
    List<Map<String, String>> rows = new ArrayList<>();
    for (String[] cells : lines.subList(1, lines.size())) {
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < columns.length; i++) {
        row.put(columns[i], i < cells.length ? cells[i].strip() : "");
      }
      rows.add(row);
    }
    return rows;
  }
}
