package plainscale.data;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import plainscale.units.UnitParser;

/** Tables and columns for tests. */
final class Tables {
  private Tables() {}

  static DataTable read(String... lines) {
    return DataTable.read("t.csv", new StringReader(String.join("\n", lines) + "\n"));
  }

  static DataTable bytes(String text) {
    return DataTable.read("t.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  static Numbers numbers(String spaced) {
    return Numbers.of(Arrays.stream(spaced.strip().split(" +")).map(BigDecimal::new).toList());
  }

  static NumberColumn column(String name, String unit, String values) {
    Numbers numbers = numbers(values);
    List<BigDecimal> none = Collections.nCopies(numbers.size(), null);
    return new NumberColumn(name, name, UnitParser.parse(unit), numbers, Numbers.of(none));
  }

  static NumberColumn column(String name, String unit, String values, String uncertainties) {
    return new NumberColumn(
        name, name, UnitParser.parse(unit), numbers(values), numbers(uncertainties));
  }

  static NumberColumn plain(String name, String values) {
    return column(name, "1", values);
  }

  static Points points(String x, String y) {
    return Points.of(plain("x", x), plain("y", y));
  }

  static double[] doubles(String spaced) {
    return Arrays.stream(spaced.strip().split(" +")).mapToDouble(Double::parseDouble).toArray();
  }
}
