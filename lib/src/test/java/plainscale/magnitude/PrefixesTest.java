package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PrefixesTest {
  static List<Fixture> rows() {
    return Fixture.rows("prefixes.tsv", 18);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void bringsTheNumberBelowAThousand(Fixture row) {
    Prefix prefix = Prefixes.choose(row.number("value"));
    assertEquals(row.text("symbol"), prefix.symbol());
    if (!row.text("mantissa").isEmpty()) {
      String mantissa = Digits.of(prefix.mantissa(row.number("value"))).plain();
      assertEquals(row.text("mantissa"), mantissa);
    }
  }

  @Test
  void thereAreTwentyFourEachWithItsOwnSymbolPowerAndName() {
    assertEquals(24, Prefixes.all().size());
    assertEquals(24, Prefixes.all().stream().map(Prefix::symbol).distinct().count());
    assertEquals(24, Prefixes.all().stream().map(Prefix::name).distinct().count());
    assertEquals(0, Prefixes.all().stream().mapToInt(Prefix::power).sum());
  }
}
