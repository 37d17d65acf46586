package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.sheet.Result;

class TextRendererTest {
  static Stream<Samples.Sample> samples() {
    return Samples.all();
  }

  @Test
  void theSamplesShowEveryKindOfResult() {
    Set<Class<?>> shown =
        Samples.all()
            .flatMap(s -> s.results().stream())
            .map(Object::getClass)
            .collect(Collectors.toSet());
    assertEquals(kinds(Result.class).collect(Collectors.toSet()), shown);
  }

  private static Stream<Class<?>> kinds(Class<?> sealed) {
    return sealed.isSealed()
        ? Arrays.stream(sealed.getPermittedSubclasses()).flatMap(TextRendererTest::kinds)
        : Stream.of(sealed);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyResultIsPrintableText(Samples.Sample sample) {
    String text = Renderers.text(sample.results());
    assertFalse(sample.results().isEmpty());
    assertTrue(text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n'), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w = m g_n \"weight\"     | w = m g_n = (0.0265 ± 0.0005) N = (26.5 ± 0.5) mN    (weight)",
        "2*d                      | 2*d = 28.0 cm",
        "2 + 3                    | 5",
        "6.71e-8 [C]              | 6.71 × 10⁻⁸ C",
        "6.71e-8 [C]*2            | 1.34 × 10⁻⁷ C",
        "-2.5e12                  | −2.5 × 10¹²",
        "30°                      | 30°",
        "5 [N·m²/C²]              | 5 N·m²/C²",
        "show m in kg             | m = (0.002 70 ± 0.000 05) kg    (mass of one ball)",
        "say \"{n} balls, {{n}}\" | 12 balls, {n}",
        "say \"{n_moved in words} and {n_there in digits}\" | 419 billion and [813] 000 000 000 000 000 000 000",
        "constants codata         | Note: Constants: CODATA 2022, with uncertainties."
      })
  void aResultIsOneLine(String cell, String line) {
    assertEquals(line, Renderers.text(Samples.results(cell)).replace('\u202f', ' '));
  }

  @Test
  void hostileWordsStandAsTheyAre() {
    String text = Renderers.text(Samples.results("x = 1 \"<b> $x$ \\\\( {\""));
    assertEquals("x = 1    (<b> $x$ \\\\( {)", text);
  }
}
