package plainscale.data;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plainscale.text.Printable;

/**
 * The rows of a text, one after the other, cells stripped: quoting is RFC 4180's, blank lines and
 * lines that start with {@code #} are stepped over.
 */
final class Rows implements AutoCloseable {
  private static final CsvFactory FACTORY =
      CsvFactory.builder()
          .enable(CsvParser.Feature.ALLOW_COMMENTS)
          .enable(CsvParser.Feature.TRIM_SPACES)
          .streamReadConstraints(
              StreamReadConstraints.builder().maxStringLength(Limits.CELL).build())
          .build();

  /** What is left of a blank line that a spreadsheet filled with separators. */
  private static final Pattern ONLY_SEPARATORS = Pattern.compile("[,;\\s]+");

  private final CsvParser parser;

  /** Cells, and the line of the file on which the row starts. */
  record Row(List<String> cells, long line) {
    Row {
      cells = List.copyOf(cells);
    }

    /** The cell at that place, counted from 0; empty beyond the last. */
    String cell(int place) {
      return place < cells.size() ? cells.get(place) : "";
    }

    /** How many cells there are up to the last that is not empty. */
    int width() {
      int width = cells.size();
      while (width > 0 && cells.get(width - 1).isEmpty()) {
        width--;
      }
      return width;
    }
  }

  Rows(Reader reader, char separator) {
    try {
      parser = FACTORY.createParser(reader);
      parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next row that holds something, or nothing at the end. */
  Optional<Row> next() {
    try {
      Row row = read();
      while (row != null && row.width() == 0) {
        row = read();
      }
      return Optional.ofNullable(row);
    } catch (StreamConstraintsException e) {
      throw new DataException(
          "The cell in line %d is longer than %d characters; is a quotation mark missing?"
              .formatted(line(), Limits.CELL));
    } catch (StreamReadException e) {
      throw new DataException(
          "In line %d a quotation mark is open or stands in the middle.".formatted(line()),
          "write a quotation mark within quotes twice: \"\"");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private @Nullable Row read() throws IOException {
    if (parser.nextToken() != JsonToken.START_ARRAY) {
      return null;
    }
    List<String> cells = new ArrayList<>();
    JsonToken token = parser.nextToken();
    long line = line();
    while (token != null && token != JsonToken.END_ARRAY) {
      cells.add(cell(cells.size()));
      token = parser.nextToken();
    }
    return new Row(cells, line);
  }

  private String cell(int place) throws IOException {
    if (place >= Limits.COLUMNS) {
      throw new DataException("Line %d has more than %d cells.".formatted(line(), Limits.COLUMNS));
    }
    String text = parser.getText();
    return ONLY_SEPARATORS.matcher(text).matches() ? "" : Printable.of(text).strip();
  }

  private long line() {
    return parser.currentTokenLocation().getLineNr();
  }

  @Override
  public void close() {
    try {
      parser.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
