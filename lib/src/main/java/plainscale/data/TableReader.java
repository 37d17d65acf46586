package plainscale.data;

import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a table in one pass: the first rows decide what the columns are, then all rows follow. */
final class TableReader {
  private static final int START = 1 << 16;
  private static final int DECIDING_ROWS = 100;
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String name;
  private final Runnable pause;
  private final Remarks.Builder remarks = new Remarks.Builder();

  TableReader(String name, Optional<Remark> first, Runnable pause) {
    this.name = name;
    this.pause = pause;
    first.ifPresent(remarks::add);
  }

  /** The table that the text holds. */
  DataTable read(Reader text) {
    PushbackReader reader = new PushbackReader(text, START);
    String start = start(reader);
    char separator = Separator.of(start);
    try (Rows rows = new Rows(reader, separator)) {
      return read(rows, separator);
    }
  }

  /** Looks at the first characters and puts them back; a byte-order mark goes. */
  private static String start(PushbackReader reader) {
    char[] start = new char[START];
    try {
      int length = 0;
      int got = reader.read(start, 0, START);
      while (got > 0) {
        length += got;
        got = reader.read(start, length, START - length);
      }
      int from = length > 0 && start[0] == BYTE_ORDER_MARK ? 1 : 0;
      reader.unread(start, from, length - from);
      String text = new String(start, from, length - from);
      refuseBinary(text);
      return length < START ? text : text.substring(0, Math.max(0, text.lastIndexOf('\n')));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refuseBinary(String text) {
    if (text.indexOf('\0') >= 0) {
      throw new DataException("This file is not a table in plain text.", "save it as CSV UTF-8");
    }
  }

  private DataTable read(Rows rows, char separator) {
    Rows.Row first =
        rows.next().orElseThrow(() -> new DataException("There is nothing in this file."));
    List<Rows.Row> next = firstRows(rows);
    CellReader reader = new CellReader(DecimalMark.of(next, separator));
    HeadingRow row = HeadingRow.of(first, next, reader);
    List<Heading> headings = named(row);
    List<ColumnCells> cells = cells(headings, row.numeric(), reader);
    RowFiller filler = new RowFiller(cells, remarks, pause);
    next.subList(row.unitRow() ? 1 : 0, next.size()).forEach(filler::add);
    for (Optional<Rows.Row> more = rows.next(); more.isPresent(); more = rows.next()) {
      filler.add(more.get());
    }
    List<Column> columns = cells.stream().map(ColumnCells::build).toList();
    List<Column> joined = new PairedUncertainties(headings, columns, remarks).join();
    return new DataTable(name, joined, filler.rows(), remarks.build());
  }

  private static List<Rows.Row> firstRows(Rows rows) {
    List<Rows.Row> next = new ArrayList<>();
    while (next.size() < DECIDING_ROWS) {
      Optional<Rows.Row> row = rows.next();
      if (row.isEmpty()) {
        break;
      }
      next.add(row.get());
    }
    return next;
  }

  /** Every name once, and told where it is not what the heading says. */
  private List<Heading> named(HeadingRow row) {
    ColumnNames names = new ColumnNames();
    List<Heading> named = new ArrayList<>();
    for (Heading heading : row.headings()) {
      String valid = heading.uncertainty() ? "u_" + heading.name() : heading.name();
      String once = names.once(valid);
      boolean changed = !heading.quantity().equals(heading.name());
      if (!heading.uncertainty() && (changed || !once.equals(valid))) {
        remarks.add(renamed(heading.named(once), changed));
      }
      named.add(heading.named(once));
    }
    return named;
  }

  private static Remark renamed(Heading heading, boolean changed) {
    String sentence =
        changed
            ? "This column is called %s.".formatted(heading.name())
            : "“%s” stands twice; this column is called %s."
                .formatted(heading.quantity(), heading.name());
    return Remark.ofHeading(Remark.Kind.NAME, heading, sentence);
  }

  private List<ColumnCells> cells(
      List<Heading> headings, List<Boolean> numeric, CellReader reader) {
    List<ColumnCells> cells = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      Heading heading = headings.get(i);
      boolean numbers = numeric.get(i);
      boolean unitless = numbers && !heading.wrongUnit().isEmpty();
      if (unitless) {
        remarks.add(wrongUnit(heading));
      }
      cells.add(
          numbers && !unitless
              ? new ColumnCells.OfNumbers(heading, reader, remarks)
              : new ColumnCells.OfTexts(heading, remarks));
    }
    return cells;
  }

  private static Remark wrongUnit(Heading heading) {
    String sentence =
        "I do not know the unit “%s”, so the numbers of this column stay words."
            .formatted(Shortened.of(heading.wrongUnit()));
    List<String> repairs =
        heading.nearUnits().stream().map(unit -> heading.quantity() + " (" + unit + ")").toList();
    return new Remark(
        Remark.Kind.UNIT, 0, heading.line(), heading.name(), heading.text(), sentence, repairs);
  }
}
