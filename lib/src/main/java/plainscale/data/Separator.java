package plainscale.data;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Which character parts the cells: of tab, semicolon and comma the first by which the heading and
 * most of the first rows have the same number of cells, more than one. The comma comes last, since
 * it may be a decimal comma.
 */
final class Separator {
  private static final List<Character> CANDIDATES = List.of('\t', ';', ',');
  private static final int ROWS = 20;

  private Separator() {}

  /**
   * What a candidate makes of the first rows.
   *
   * @param widths the cells in each
   * @param broken whether an open quotation mark ended the first row
   */
  private record Trial(char separator, List<Integer> widths, boolean broken) {
    boolean parts() {
      return !widths.isEmpty() && widths.get(0) > 1;
    }

    boolean agrees() {
      long same = widths.stream().filter(width -> width > 1 && width <= widths.get(0)).count();
      return parts() && 2 * same > widths.size();
    }
  }

  /** The separator of the text that starts like this; in a single column nothing is parted. */
  static char of(String start) {
    List<Trial> trials = CANDIDATES.stream().map(separator -> trial(start, separator)).toList();
    return Stream.<Predicate<Trial>>of(Trial::agrees, Trial::parts, Trial::broken)
        .flatMap(test -> trials.stream().filter(test).limit(1))
        .map(Trial::separator)
        .findFirst()
        .orElse(CANDIDATES.get(0));
  }

  private static Trial trial(String start, char separator) {
    List<Integer> widths = new ArrayList<>();
    try (Rows rows = new Rows(new StringReader(start), separator)) {
      Optional<Rows.Row> row = rows.next();
      while (row.isPresent() && widths.size() < ROWS) {
        widths.add(row.get().width());
        row = rows.next();
      }
    } catch (DataException brokenRow) { // behind good rows the cut may have left a mark open
      return widths.isEmpty()
          ? brokenAtOnce(start, separator)
          : new Trial(separator, widths, false);
    }
    return new Trial(separator, widths, false);
  }

  private static Trial brokenAtOnce(String start, char separator) {
    long separators = start.chars().filter(c -> c == separator).count();
    boolean tooWide = separators >= Limits.COLUMNS;
    List<Integer> widths = tooWide ? List.of(Limits.COLUMNS + 1) : List.of();
    return new Trial(separator, widths, separators > 0);
  }
}
