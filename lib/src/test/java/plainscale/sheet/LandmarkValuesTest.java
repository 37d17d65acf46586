package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.sheet.Cells.run;
import static plainscale.sheet.Cells.value;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.laws.Codata;
import plainscale.magnitude.Known;
import plainscale.magnitude.Landmark;
import plainscale.magnitude.Landmarks;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * The landmarks against what the rest of the library knows: their units, the constants among them,
 * and those that follow from other numbers.
 */
class LandmarkValuesTest {
  private static final String FROM_CODATA = "CODATA 2022: ";
  private static final String COMPUTED = "computed from ";

  /** Too long for the 34 digits of a cell. */
  private static final String PACK = "orders of a pack of 52 cards";

  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final double FACTOR_OF_AN_ORDER = 2;

  private static final Map<String, Landmark> BY_NAME =
      Table.read(Landmarks.class, "landmarks.tsv").stream()
          .map(row -> row.get("quantity"))
          .distinct()
          .flatMap(quantity -> Landmarks.of(quantity).stream())
          .collect(Collectors.toMap(Landmark::name, Function.identity()));

  static List<Landmark> all() {
    return List.copyOf(BY_NAME.values());
  }

  static List<Landmark> constants() {
    return all().stream().filter(l -> l.source().startsWith(FROM_CODATA)).toList();
  }

  static List<Table.Row> cells() {
    return Table.read(LandmarkValuesTest.class, "/plainscale/fixtures/landmark-cells.tsv");
  }

  @ParameterizedTest
  @MethodSource("all")
  void theUnitIsTheCoherentOneOfTheKindThatIsNamed(Landmark landmark) {
    UnitOfMeasure unit = UnitParser.parse(landmark.unit());
    assertEquals(landmark.quantity(), Kinds.of(unit.kind()).name());
    assertEquals(0, unit.factor().compareTo(BigDecimal.ONE));
    assertTrue(!unit.isScale());
  }

  @Test
  void severalConstantsAreAmongThem() {
    assertTrue(constants().size() >= 10, constants().size() + " constants");
  }

  @ParameterizedTest
  @MethodSource("constants")
  void aConstantIsTheOneOfTheTableOfConstants(Landmark landmark) {
    String name = landmark.source().substring(FROM_CODATA.length());
    Codata.Row row = Objects.requireNonNull(Codata.rows().get(name), name);
    assertEquals(0, row.value().compareTo(landmark.value()), row::toString);
    assertTrue(!row.truncated(), row::toString);
    if (landmark.known() instanceof Known.Within within) {
      assertEquals(0, row.uncertainty().compareTo(within.uncertainty()), row::toString);
    } else {
      assertEquals(Known.Roughly.EXACT, landmark.known());
      assertTrue(row.exact(), row::toString);
    }
  }

  @Test
  void whateverIsComputedHasACell() {
    Set<String> computed =
        all().stream()
            .filter(l -> l.source().startsWith(COMPUTED) || l.source().matches(".*°[CF]\\)"))
            .map(Landmark::name)
            .collect(Collectors.toCollection(TreeSet::new));
    computed.remove(PACK);
    cells().forEach(row -> computed.remove(row.get("name")));
    assertEquals(Set.of(), computed);
  }

  @ParameterizedTest
  @MethodSource("cells")
  void aCellGivesTheLandmark(Table.Row row) {
    Landmark landmark = Objects.requireNonNull(BY_NAME.get(row.get("name")), row::toString);
    Sheet sheet = new Sheet();
    run(sheet, "cell", row.get("cell"));
    Quantity x = value(sheet, "x");
    assertEquals(UnitParser.parse(landmark.unit()).kind(), x.kind());
    assertAgrees(landmark, x);
  }

  private static void assertAgrees(Landmark landmark, Quantity x) {
    BigDecimal off = x.value().subtract(landmark.value()).abs();
    if (landmark.known() instanceof Known.Within within) {
      assertTrue(off.compareTo(within.uncertainty().multiply(HALF)) <= 0, () -> "is " + x.value());
      double u = x.uncertainty().standard();
      double stated = within.uncertainty().doubleValue();
      assertTrue(u == 0 || Math.abs(u - stated) <= 0.05 * stated, () -> "uncertainty is " + u);
    } else if (landmark.known() == Known.Roughly.ORDER) {
      double ratio = x.value().divide(landmark.value(), MathContext.DECIMAL64).doubleValue();
      assertTrue(ratio <= FACTOR_OF_AN_ORDER && ratio >= 1 / FACTOR_OF_AN_ORDER, "off by " + ratio);
    } else if (landmark.known() == Known.Roughly.EXACT) {
      assertEquals(0, off.signum(), () -> "is " + x.value());
    } else {
      BigDecimal half = landmark.value().ulp().multiply(HALF);
      assertTrue(off.compareTo(half) <= 0, () -> "is " + x.value());
    }
  }

  @Test
  void aPackOfCardsHasTheFactorialOf52Orders() {
    BigInteger orders =
        IntStream.rangeClosed(1, 52)
            .mapToObj(BigInteger::valueOf)
            .reduce(BigInteger.ONE, BigInteger::multiply);
    assertEquals(new BigDecimal(orders), Objects.requireNonNull(BY_NAME.get(PACK)).value());
  }
}
