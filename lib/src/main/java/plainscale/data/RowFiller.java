package plainscale.data;

import java.util.List;
import java.util.Locale;

/** Hands the cells of each row to their columns, and counts the rows. */
final class RowFiller {
  private static final int PAUSE_EVERY = 4096;
  private final List<ColumnCells> columns;
  private final Remarks.Builder remarks;
  private final Runnable pause;
  private int rows;

  RowFiller(List<ColumnCells> columns, Remarks.Builder remarks, Runnable pause) {
    this.columns = columns;
    this.remarks = remarks;
    this.pause = pause;
  }

  /** How many rows there were. */
  int rows() {
    return rows;
  }

  void add(Rows.Row row) {
    if (rows == Limits.ROWS) {
      throw new DataException(
          String.format(
              Locale.ROOT,
              "This table has more than 10⁶ rows, beginning with line %d.",
              row.line()),
          "keep every tenth row");
    }
    rows++;
    if (rows % PAUSE_EVERY == 0) {
      pause.run();
    }
    for (int i = 0; i < columns.size(); i++) {
      columns.get(i).add(row.cell(i), rows, row.line());
    }
    if (row.width() > columns.size()) {
      remarks.add(tooWide(row));
    }
  }

  private Remark tooWide(Rows.Row row) {
    String extra = String.join(" | ", row.cells().subList(columns.size(), row.width()));
    String sentence =
        "This row has %d cells for %d headings; the last were left out."
            .formatted(row.width(), columns.size());
    return new Remark(
        Remark.Kind.ROW,
        rows,
        row.line(),
        "",
        Shortened.of(extra),
        sentence,
        List.of("a number with a decimal comma stands in quotes: \"14,0\""));
  }
}
