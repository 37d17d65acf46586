package plainscale.data;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which character parts the cells: of tab, semicolon and comma the first by which the heading and
 * most of the first rows have the same number of cells, more than one. The comma comes last, since
 * it may be a decimal comma.
 */
final class Separator {
  private static final char[] CANDIDATES = {'\t', ';', ','};
  private static final int ROWS = 20;

  private Separator() {}

  /** The separator of the text that starts like this. */
  static char of(String start) {
    char parting = '\t'; // in a single column nothing is parted
    for (int i = CANDIDATES.length - 1; i >= 0; i--) {
      List<Integer> widths = widths(start, CANDIDATES[i]);
      boolean parts = !widths.isEmpty() && widths.get(0) > 1;
      boolean better = parts && (agree(widths) || !agree(widths(start, parting)));
      parting = better ? CANDIDATES[i] : parting;
    }
    return parting;
  }

  private static boolean agree(List<Integer> widths) {
    if (widths.isEmpty() || widths.get(0) < 2) {
      return false;
    }
    long same = widths.stream().filter(width -> width > 1 && width <= widths.get(0)).count();
    return 2 * same > widths.size();
  }

  /** Cells in each of the first rows; a quotation mark that the cut left open ends the count. */
  private static List<Integer> widths(String start, char separator) {
    List<Integer> widths = new ArrayList<>();
    try (Rows rows = new Rows(new StringReader(start), separator)) {
      Optional<Rows.Row> row = rows.next();
      while (row.isPresent() && widths.size() < ROWS) {
        widths.add(row.get().width());
        row = rows.next();
      }
    } catch (DataException brokenRow) {
      return widths.isEmpty() && isTooWide(start, separator) ? List.of(Limits.COLUMNS + 1) : widths;
    }
    return widths;
  }

  private static boolean isTooWide(String start, char separator) {
    return start.chars().filter(c -> c == separator).count() >= Limits.COLUMNS;
  }
}
