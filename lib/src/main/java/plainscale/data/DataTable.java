package plainscale.data;

import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.text.Near;

/**
 * A table of measured values: columns of the same number of rows, and what the reader has to say
 * about the file. Rows are counted from 1, below the heading.
 *
 * <pre>{@code
 * DataTable table = DataTable.read("balls.csv", bytes);
 * Statistics distance = Statistics.of(Sample.of(table.numbers("d")));
 * Fit line = Fits.line(Points.of(table.numbers("d"), table.numbers("T")));
 * }</pre>
 */
public record DataTable(String name, List<Column> columns, int rows, Remarks remarks) {

  /** Keeps its own copy. */
  public DataTable {
    columns = List.copyOf(columns);
  }

  /**
   * Reads the bytes of a file: UTF-8, UTF-16 with a byte-order mark, or else Windows-1252 with a
   * remark. Bad cells are remarks; {@link DataException} where there is no table.
   */
  public static DataTable read(String name, byte[] bytes) {
    return read(name, bytes, () -> {});
  }

  /**
   * The same; {@code pause} is called every few thousand rows, and stops the reading by what it
   * throws.
   */
  public static DataTable read(String name, byte[] bytes, Runnable pause) {
    if (bytes.length > Limits.BYTES) {
      throw new DataException("This file is larger than %d MB.".formatted(Limits.BYTES >> 20));
    }
    Decoding decoding = Decoding.of(bytes);
    return new TableReader(name, decoding.remark(), pause).read(decoding.reader());
  }

  /** Reads a text, row by row; its closing is the caller's. */
  public static DataTable read(String name, Reader text) {
    return new TableReader(name, Optional.empty(), () -> {}).read(text);
  }

  /** The column of that name. */
  public Column column(String column) {
    return columns.stream()
        .filter(c -> c.name().equals(column))
        .findFirst()
        .orElseThrow(() -> unknown(column));
  }

  private DataException unknown(String column) {
    List<String> names = columns.stream().map(Column::name).toList();
    List<String> near = Near.to(column, names, 3);
    return new DataException(
        "“%s” has no column “%s”; it has %s."
            .formatted(name, column, names.stream().limit(20).collect(Collectors.joining(", "))),
        near);
  }

  /** The column of numbers of that name. */
  public NumberColumn numbers(String column) {
    return column(column)
        .accept(
            new Column.Visitor<NumberColumn>() {
              @Override
              public NumberColumn numbers(NumberColumn numbers) {
                return numbers;
              }

              @Override
              public NumberColumn texts(TextColumn texts) {
                throw new DataException(
                    "The column “%s” holds words, not numbers.".formatted(column));
              }
            });
  }
}
