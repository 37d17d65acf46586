package plainscale.data;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Whether 1,234 and 1.234 can be told: a comma or a point before exactly three digits may part
 * thousands. The other numbers of the file decide.
 */
record DecimalMark(boolean commas, boolean points, boolean commasPartCells) {
  private static final Pattern COMMA = certain(",");
  private static final Pattern POINT = certain("\\.");

  /** Something that thousands are not: 0,5 and 14,0 and 1234,567. */
  private static Pattern certain(String mark) {
    String brief = "\\d+" + mark + "(?:\\d{1,2}|\\d{4,})(?!\\d)";
    return Pattern.compile(
        "(?<![\\d.,])(?:" + brief + "|0" + mark + "\\d+|\\d{4,}" + mark + "\\d+)(?![\\d.,])");
  }

  /** What the first rows show. */
  static DecimalMark of(List<Rows.Row> rows, char separator) {
    boolean commas = rows.stream().anyMatch(row -> shows(row, COMMA));
    boolean points = rows.stream().anyMatch(row -> shows(row, POINT));
    return new DecimalMark(commas, points, separator == ',');
  }

  private static boolean shows(Rows.Row row, Pattern mark) {
    return row.cells().stream().anyMatch(cell -> mark.matcher(cell).find());
  }

  /** Whether that mark before three digits is doubtful. */
  boolean doubtful(String mark) {
    return mark.equals(",") ? points || (commasPartCells && !commas) : commas && !points;
  }
}
