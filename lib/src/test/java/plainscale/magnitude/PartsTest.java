package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartsTest {
  // 1.43E-11: 1/1.43 = 0.6993; 1.8E-14 is the penny of OpenStax University Physics 2 (m58412),
  // electrons added to electrons there, one in 5.5E+13.
  @ParameterizedTest
  @CsvSource({
    "1, 100 %",
    "0.25, 25 %",
    "0.0200, 2.00 %",
    "0.001, 0.1 %",
    "0.00099, 990 parts per million",
    "3.4E-5, 34 parts per million",
    "0.000001, 1 part per million",
    "9.9E-7, one part in 1.0 million",
    "1.4E-11, one part in 71 billion",
    "1.43E-11, one part in 69.9 billion",
    "1.8E-14, one part in 56 trillion",
    "1.9E+12, 1.9 trillion to one"
  })
  void eachShareIsSaidAsItReadsBest(String share, String phrase) {
    assertEquals(phrase, Parts.of(new BigDecimal(share)).text(Words.ENGLISH));
  }

  @Test
  void onePartInSoManyCanBeAskedForWhateverTheSize() {
    assertEquals("one part in 4.0", Parts.oneIn(new BigDecimal("0.25")).text(Words.ENGLISH));
    assertEquals("one part in 1", Parts.oneIn(BigDecimal.ONE).text(Words.ENGLISH));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-0.1", "1.1"})
  void refusesWhatIsNoFraction(String number) {
    BigDecimal value = new BigDecimal(number);
    assertThrows(IllegalArgumentException.class, () -> Parts.oneIn(value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-0.1"})
  void nothingAndLessThanNothingAreNoShare(String number) {
    BigDecimal value = new BigDecimal(number);
    assertThrows(IllegalArgumentException.class, () -> Parts.of(value));
  }
}
