package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellReaderTest {
  private static final DecimalMark UNKNOWN = new DecimalMark(false, false, false);
  private static final DecimalMark POINTS = new DecimalMark(false, true, true);
  private static final DecimalMark COMMAS = new DecimalMark(true, false, false);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "14.0|14.0|",
        "14,0|14.0|",
        "+14.0|14.0|",
        "-14.0|-14.0|",
        "−14.0|-14.0|",
        "14|14|",
        ".5|0.5|",
        "5.|5|",
        "0,123|0.123|",
        "14.0 ± 0.5|14.0|0.5",
        "14.0±0.5|14.0|0.5",
        "14,0 ± 0,5|14.0|0.5",
        "14.0 +- 0.5|14.0|0.5",
        "14.0 +/- 0.5|14.0|0.5",
        "(14.0 ± 0.5)|14.0|0.5",
        "14.0(5)|14.0|0.5",
        "6.67430(15)e-11|6.67430E-11|1.5E-15",
        "1.40e1|14.0|",
        "1.4×10^3|1.4E+3|",
        "1.4 x 10^3|1.4E+3|",
        "1 000|1000|",
        "8 700 000|8700000|",
        "1e-30|1E-30|",
        "1e300|1E+300|",
      })
  void numbers(String text, BigDecimal value, BigDecimal uncertainty) {
    Cell cell = new CellReader(UNKNOWN).read(text);
    assertEquals(value, cell.value());
    if (uncertainty == null) {
      assertNull(cell.uncertainty());
    } else {
      assertEquals(uncertainty, cell.uncertainty());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", "–", "n/a", "N/A", "NA", "?", "NaN", "nan"})
  void missing(String text) {
    assertTrue(new CellReader(UNKNOWN).read(text).isMissing());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=A1+B2",
        "@SUM(A1)",
        "+cmd|' /C calc'!A0",
        "-2+3",
        "=1",
        "+A1",
        "-HYPERLINK(\"x\")"
      })
  void formulasAreNotComputed(String text) {
    Cell.Fault fault = new CellReader(UNKNOWN).read(text).fault();
    assertNotNull(fault);
    assertEquals(Remark.Kind.FORMULA, fault.kind());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.234,5|1234.5",
        "1,234.5|1234.5",
        "14.0 cm|14.0",
        "14.0*|14.0",
        "about ten|write a number, or leave the cell empty",
        "1e301|1e301 is not between 10⁻³⁰⁰ and 10³⁰⁰",
        "inf|write a number, or leave the cell empty",
        "1..2|1.2",
        "14.0 ± -0.5|14.0",
      })
  void unreadable(String text, String repair) {
    Cell cell = new CellReader(UNKNOWN).read(text);
    assertNull(cell.value());
    assertNotNull(cell.fault());
    assertEquals(Remark.Kind.UNREADABLE, cell.fault().kind());
    if (!text.equals("1e301")) {
      assertEquals(List.of(repair), cell.fault().repairs());
    }
  }

  @Test
  void threeDigitsBehindAMarkAreDoubtfulUnlessOtherNumbersTell() {
    Cell doubtful = new CellReader(POINTS).read("1,234");
    assertNotNull(doubtful.fault());
    assertEquals(List.of("1234", "1.234"), doubtful.fault().repairs());
    assertEquals(new BigDecimal("1.234"), new CellReader(COMMAS).read("1,234").value());
    assertNotNull(new CellReader(COMMAS).read("1.234").fault());
    assertEquals(new BigDecimal("1.234"), new CellReader(POINTS).read("1.234").value());
  }

  @Test
  void aLongRowOfDigitsIsRefusedQuickly() {
    assertNull(new CellReader(UNKNOWN).read("9".repeat(9_999)).value());
    assertNull(new CellReader(UNKNOWN).read("1 ".repeat(4_999)).value());
    assertNull(new CellReader(UNKNOWN).read("1e999999").value());
    assertNull(new CellReader(UNKNOWN).read("(".repeat(5_000) + "1").value());
  }
}
