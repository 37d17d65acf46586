package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.table.Table;

class LandmarksTest {
  private static final int FEWEST = 150;
  private static final int FEWEST_OF_A_KIND = 6;

  static List<String> quantities() {
    return rows().map(row -> row.get("quantity")).distinct().toList();
  }

  static List<Landmark> all() {
    return quantities().stream().flatMap(quantity -> Landmarks.of(quantity).stream()).toList();
  }

  private static Stream<Table.Row> rows() {
    return Table.read(Landmarks.class, "landmarks.tsv").stream();
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  private static List<String> names(List<Landmark> landmarks) {
    return landmarks.stream().map(Landmark::name).toList();
  }

  @Test
  void everyRowIsFound() {
    assertTrue(all().size() >= FEWEST, all().size() + " landmarks");
    assertEquals(rows().count(), all().size());
  }

  @Test
  void atMostATenthComesFromMemory() {
    long memory = all().stream().filter(l -> l.source().contains("memory")).count();
    assertTrue(10 * memory <= all().size(), memory + " of " + all().size());
    all().stream()
        .filter(l -> l.source().contains("memory"))
        .forEach(l -> assertTrue(l.source().startsWith("value from memory: "), l::toString));
  }

  @ParameterizedTest
  @MethodSource("all")
  void aLandmarkIsAPositiveSizeWithANameAndASource(Landmark landmark) {
    assertEquals(1, landmark.value().signum());
    assertFalse(landmark.unit().isEmpty());
    assertFalse(landmark.source().isEmpty());
    assertTrue(landmark.name().matches("[\\p{L}0-9].*[^.]"), landmark::name);
    assertTrue(landmark.name().length() <= 64, landmark::name);
    if (landmark.known() instanceof Known.Within within) {
      assertTrue(within.uncertainty().compareTo(landmark.value()) < 0);
    }
  }

  @Test
  void noTwoHaveTheSameName() {
    Set<String> seen = new HashSet<>();
    all().forEach(landmark -> assertTrue(seen.add(landmark.name()), landmark::name));
  }

  @ParameterizedTest
  @MethodSource("quantities")
  void aKindHasSeveralFromSmallToLargeInOneUnit(String quantity) {
    List<Landmark> of = Landmarks.of(quantity);
    assertTrue(of.size() >= FEWEST_OF_A_KIND, of.size() + " of " + quantity);
    for (int i = 1; i < of.size(); i++) {
      assertTrue(of.get(i - 1).value().compareTo(of.get(i).value()) < 0, of.get(i)::name);
      assertEquals(of.get(0).unit(), of.get(i).unit());
      assertEquals(quantity, of.get(i).quantity());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "length, -15, 26",
    "mass, -30, 52",
    "time, -23, 17",
    "energy, -23, 43",
    "electric charge, -18, 9",
    "plain number, 1, 79"
  })
  void theGreatKindsSpanTheWorldWithoutWideGaps(String quantity, int lowest, int highest) {
    List<Landmark> of = Landmarks.of(quantity);
    assertTrue(log10(of.get(0)) <= lowest + 1, of.get(0)::name);
    assertTrue(log10(of.get(of.size() - 1)) >= highest, of.get(of.size() - 1)::name);
    for (int i = 1; i < of.size(); i++) {
      double gap = log10(of.get(i)) - log10(of.get(i - 1));
      assertTrue(gap <= 17, gap + " decades below the " + of.get(i).name());
    }
  }

  private static double log10(Landmark landmark) {
    return PowerOfTen.of(landmark.value()).log10();
  }

  @Test
  void theNearestComeFirstOnEitherSide() {
    Landmarks.Neighbours near = Landmarks.near("electric charge", number("6.0E-8"), 2);
    assertEquals(
        List.of(
            "charge of a pith ball in a classroom",
            "charge of a piece of sticky tape pulled off its roll"),
        names(near.below()));
    assertEquals(
        List.of(
            "charge of a glass rod rubbed with silk",
            "charge of a classroom Van de Graaff generator"),
        names(near.above()));
  }

  @Test
  void aSignDoesNotCount() {
    assertEquals(
        Landmarks.near("electric charge", number("6.0E-8"), 3),
        Landmarks.near("electric charge", number("-6.0E-8"), 3));
  }

  @ParameterizedTest
  @MethodSource("all")
  void aLandmarkOfJustThatSizeIsTheFirstBelow(Landmark landmark) {
    // Twice: as it stands in the table, and with more figures.
    for (BigDecimal size : List.of(landmark.value(), landmark.value().multiply(number("1.000")))) {
      Landmarks.Neighbours near = Landmarks.near(landmark.quantity(), size, 1);
      assertEquals(List.of(landmark), near.below());
      assertFalse(near.above().contains(landmark));
    }
  }

  @ParameterizedTest
  @MethodSource("quantities")
  void smallerThanAllHasNoneBelowAndLargerThanAllNoneAbove(String quantity) {
    List<Landmark> of = Landmarks.of(quantity);
    Landmarks.Neighbours small = Landmarks.near(quantity, number("1E-1000000000"), 2);
    assertEquals(List.of(), small.below());
    assertEquals(of.subList(0, 2), small.above());
    Landmarks.Neighbours large = Landmarks.near(quantity, number("1E+1000000000"), 1000);
    assertEquals(of.size(), large.below().size());
    assertEquals(of.get(of.size() - 1), large.below().get(0));
    assertEquals(List.of(), large.above());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0.000", "0E+20"})
  void zeroHasNoNeighbours(String zero) {
    Landmarks.Neighbours none = new Landmarks.Neighbours(List.of(), List.of());
    assertEquals(none, Landmarks.near("length", number(zero), 2));
  }

  @Test
  void aKindWithoutLandmarksHasNoNeighbours() {
    Landmarks.Neighbours none = new Landmarks.Neighbours(List.of(), List.of());
    assertEquals(List.of(), Landmarks.of("magnetic flux"));
    assertEquals(none, Landmarks.near("magnetic flux", number("2.5"), 2));
  }

  @Test
  void noneAreGivenWhenNoneAreAskedFor() {
    Landmarks.Neighbours none = new Landmarks.Neighbours(List.of(), List.of());
    assertEquals(none, Landmarks.near("length", number("2.5"), 0));
    assertThrows(IllegalArgumentException.class, () -> Landmarks.near("length", number("2.5"), -1));
  }

  @Test
  void howWellAValueIsKnownIsReadFromAWordOrAnUncertainty() {
    assertEquals(Known.Roughly.EXACT, Known.parse("exact"));
    assertEquals(Known.Roughly.ROUNDED, Known.parse("rounded"));
    assertEquals(Known.Roughly.ORDER, Known.parse("order"));
    assertEquals(new Known.Within(number("1.3E+20")), Known.parse("1.3E+20"));
    assertThrows(IllegalArgumentException.class, () -> Known.parse("roughly"));
    assertThrows(IllegalArgumentException.class, () -> Known.parse("0"));
    assertThrows(IllegalArgumentException.class, () -> Known.parse("-2E+3"));
  }
}
