package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.magnitude.DigitStyle;

/** Boxes do not tell how many digits there are. */
class BoxCountTest {
  private static BoxCount of(DigitStyle style, String... numbers) {
    List<BigDecimal> values = Stream.of(numbers).map(BigDecimal::new).toList();
    return BoxCount.of(values, style).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "7,       6,  0",
    "999,     6,  0",
    "1000,    12, 0",
    "4.19E11, 18, 0",
    "8.13E23, 30, 0",
    "0.25,    6,  6",
    "6.7E-8,  6,  12"
  })
  void threeAreToSpareAndTheCountIsAMultipleOfSix(String number, int whole, int part) {
    BoxCount count = of(DigitStyle.SI, number);
    assertEquals(whole, count.whole());
    assertEquals(part, count.part());
  }

  @Test
  void allNumbersOfAColumnHaveTheCountOfTheLongest() {
    assertEquals(of(DigitStyle.SI, "8.13E23"), of(DigitStyle.SI, "4.19E11", "8.13E23", "3"));
  }

  @Test
  void aNumberTooLongForAPageHasNoBoxes() {
    assertEquals(Optional.empty(), BoxCount.of(List.of(new BigDecimal("1E90")), DigitStyle.SI));
  }

  @ParameterizedTest
  @CsvSource({"1, 0", "11, 0", "25, 0", "40, 0", "3, 8", "2, 30", "20, 20"})
  void everyBoxStandsInALineThatFitsOnPaper(int whole, int part) {
    BoxCount count = new BoxCount(whole, part, DigitStyle.SI);
    List<BoxCount.Line> lines = count.lines();
    assertEquals(whole, sum(lines.stream().flatMap(line -> line.whole().stream())));
    assertEquals(part, sum(lines.stream().flatMap(line -> line.part().stream())));
    for (BoxCount.Line line : lines) {
      int boxes = sum(Stream.concat(line.whole().stream(), line.part().stream()));
      assertTrue(boxes <= BoxCount.IN_A_LINE, line.toString());
      assertTrue(IntStream.of(boxes).allMatch(n -> n > 0), line.toString());
    }
  }

  private static int sum(Stream<Integer> groups) {
    return groups.mapToInt(Integer::intValue).sum();
  }

  @Test
  void groupsAreThoseOfTheReader() {
    BoxCount si = of(DigitStyle.SI, "1234567");
    assertEquals(List.of(3, 3, 3, 3), si.lines().get(0).whole());
    BoxCount india = of(DigitStyle.of(Locale.forLanguageTag("en-IN")), "1234567");
    assertEquals(List.of(1, 2, 2, 2, 2, 3), india.lines().get(0).whole());
  }
}
