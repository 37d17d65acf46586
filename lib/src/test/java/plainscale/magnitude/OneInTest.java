package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OneInTest {
  // 1.43E-11: 1/1.43 = 0.6993; 1.8E-14 is the penny of OpenStax University Physics 2 (m58412),
  // electrons added to electrons there, one in 5.5E+13.
  @ParameterizedTest
  @CsvSource({
    "1.4E-11, one part in 71 billion",
    "1.43E-11, one part in 69.9 billion",
    "1.8E-14, one part in 56 trillion",
    "0.25, one part in 4.0",
    "0.5, one part in 2",
    "1, one part in 1"
  })
  void turnsAFractionOver(String fraction, String phrase) {
    assertEquals(phrase, OneIn.of(new BigDecimal(fraction)).phrase(Words.ENGLISH));
  }

  @Test
  void knowsWhenItWasRounded() {
    assertTrue(OneIn.of(new BigDecimal("0.25")).exact());
    assertFalse(OneIn.of(new BigDecimal("0.3")).exact());
  }

  @Test
  void comparesOneWithMany() {
    Ratio ratio = Ratio.of(new BigDecimal("6.87E+23"), new BigDecimal("1.248E+10"), 2);
    assertEquals(
        "for every one electron that was added there are about 55 trillion electrons that were there",
        OneIn.of(ratio)
            .forEveryOne("electron that was added", "electrons that were there", Words.ENGLISH));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-0.1", "1.1"})
  void refusesWhatIsNoFraction(String number) {
    BigDecimal value = new BigDecimal(number);
    assertThrows(IllegalArgumentException.class, () -> OneIn.of(value));
  }
}
