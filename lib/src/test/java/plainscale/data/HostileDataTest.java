package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class HostileDataTest {

  /** A text of as many rows as wanted, made while it is read. */
  private static final class Endless extends Reader {
    private final int rows;
    private final String row;
    private String line = "x (cm),y (s)\n";
    private int at;
    private int made;

    Endless(int rows, String row) {
      this.rows = rows;
      this.row = row;
    }

    @Override
    public int read(char[] into, int from, int most) {
      if (at == line.length()) {
        if (made == rows) {
          return -1;
        }
        made++;
        line = row.formatted(made % 1000, made % 7);
        at = 0;
      }
      int count = Math.min(most, line.length() - at);
      line.getChars(at, at + count, into, from);
      at += count;
      return count;
    }

    @Override
    public void close() {}
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }

  @Test
  void aMillionRowsFit() {
    long before = used();
    DataTable table = DataTable.read("big.csv", new Endless(Limits.ROWS, "%d.25 ± 0.01,1.%d\n"));
    long megabytes = (used() - before) >> 20;
    assertEquals(Limits.ROWS, table.rows());
    assertEquals("999.25", table.numbers("x").value(999).orElseThrow().toString());
    assertTrue(megabytes <= 35, megabytes + " MB");
    Fit fit = Fits.line(Points.of(table.numbers("x"), table.numbers("y")));
    assertEquals(Limits.ROWS - 2, fit.quality().freedom());
  }

  @Test
  void oneRowMoreIsOneSentence() {
    Endless rows = new Endless(2 * Limits.ROWS, "%d,%d\n");
    DataException e = assertThrows(DataException.class, () -> DataTable.read("big.csv", rows));
    assertEquals("This table has more than 10⁶ rows, beginning with line 1000002.", e.sentence());
    assertTrue(rows.made < Limits.ROWS + 20_000, "the rest is not read");
  }

  @Test
  void aMillionBadCellsKeepAHundredRemarks() {
    DataTable table = DataTable.read("big.csv", new Endless(100_000, "bad%d,=%d\n"));
    assertEquals(100_000, table.remarks().count(Remark.Kind.UNREADABLE));
    assertEquals(2 * Remarks.KEPT, table.remarks().first().size());
  }

  @Test
  void tooManyColumns() {
    DataException e =
        assertThrows(DataException.class, () -> Tables.read("a,".repeat(300), "1,".repeat(300)));
    assertEquals("Line 1 has more than 200 cells.", e.sentence());
  }

  @Test
  void aCellWithoutEnd() {
    String cell = "x".repeat(Limits.CELL + 5000);
    DataException e = assertThrows(DataException.class, () -> Tables.read("a,b", "1," + cell));
    assertTrue(e.sentence().contains("longer than 10000 characters"), e.sentence());
    DataException open =
        assertThrows(DataException.class, () -> Tables.read("a,b", "1,\"open", "2,3"));
    assertTrue(open.sentence().contains("quotation mark"), open.sentence());
    DataException inHeading =
        assertThrows(DataException.class, () -> Tables.read("a,\"b", "1,2", "3,4"));
    assertTrue(inHeading.sentence().contains("quotation mark"), inHeading.sentence());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only\n#comments\n", "\uFEFF", ",,,\n,,\n"})
  void nothing(String text) {
    DataException e = assertThrows(DataException.class, () -> Tables.bytes(text));
    assertEquals("There is nothing in this file.", e.sentence());
  }

  @Test
  void noHeading() {
    DataException e = assertThrows(DataException.class, () -> Tables.read("1.0,2.0", "3.0,4.0"));
    assertTrue(e.sentence().contains("should name the columns"), e.sentence());
  }

  @Test
  void aHeadingAlone() {
    DataTable table = Tables.read("d (cm),T (s)");
    assertEquals(0, table.rows());
    DataException e = assertThrows(DataException.class, () -> Sample.of(table.numbers("d")));
    assertEquals("There is no number in the column “d”.", e.sentence());
  }

  @ParameterizedTest
  @ValueSource(strings = {"PK\u0003\u0004rest", "%PDF-1.7", "a,b\n1,\u00002\n"})
  void otherFiles(String text) {
    DataException e =
        assertThrows(
            DataException.class,
            () -> DataTable.read("t", text.getBytes(StandardCharsets.ISO_8859_1)));
    assertTrue(e.sentence().contains("plain text"), e.sentence());
  }

  @Test
  void anyBytesGiveATableOrASentence() {
    Random random = new Random(7);
    String alphabet = "abd,;\t\"\n\r#=±()[]/.,0123456789eE-+ \u00B5%\uFEFF\u0000\u202E";
    for (int i = 0; i < 3000; i++) {
      byte[] bytes = new byte[random.nextInt(80)];
      StringBuilder text = new StringBuilder();
      for (int k = 0; k < bytes.length; k++) {
        bytes[k] = (byte) random.nextInt(256);
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      tableOrSentence(bytes);
      tableOrSentence(text.toString().getBytes(StandardCharsets.UTF_8));
    }
  }

  private static void tableOrSentence(byte[] bytes) {
    try {
      DataTable table = DataTable.read("t", bytes);
      table.columns().forEach(column -> assertEquals(table.rows(), column.rows()));
    } catch (DataException sentence) {
      assertTrue(sentence.sentence().endsWith(".") || sentence.sentence().endsWith("?"));
    }
  }
}
