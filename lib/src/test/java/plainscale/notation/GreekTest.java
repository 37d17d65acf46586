package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A name has one form, however it is written. */
class GreekTest {
  @ParameterizedTest
  @CsvSource({
    "theta, θ", "θ, θ", "epsilon_0, ε_0", "ε_0, ε_0", "ε₀, ε_0", "Delta_t, Δ_t", "Omega, Ω",
    "\u2126, Ω", "µ, μ", "mu_0, μ_0", "µ₀, μ_0", "x₁₂, x_12", "x_₁₂, x_12", "F_theta, F_θ",
    "thetas, thetas", "atheta, atheta", "m_moved, m_moved", "e\u0301, é", "q, q", "x1, x1", "pi, π"
  })
  void wordsLettersAndSubscriptsAreOne(String written, String normal) {
    assertEquals(normal, Greek.normal(written));
    assertEquals(normal, Greek.normal(normal), "a second time");
  }

  @ParameterizedTest
  @CsvSource({"theta = 2, θ", "epsilon_0 = 2, ε_0", "ε₀ = 2, ε_0", "given µ = 2, μ"})
  void definitionsDefineTheOneForm(String source, String normal) {
    Statement statement = Notation.parse(source, KnownNames.of()).get(0);
    String name =
        statement instanceof Statement.Given given
            ? given.name()
            : ((Statement.Definition) statement).name();
    assertEquals(normal, name);
  }

  @ParameterizedTest
  @CsvSource({"theta", "θ"})
  void usesMeanTheOneForm(String source) {
    Expr value = Notation.parseExpression(source, KnownNames.of("θ")).value();
    assertEquals("θ", Printer.print(value));
  }

  @Test
  void everyLetterHasAWordAndBack() {
    Map<String, String> letters = Greek.letters();
    assertTrue(letters.size() >= 24, letters.toString()); // the Greek alphabet has 24 letters
    Greek.words().forEach((letter, word) -> assertEquals(letter, letters.get(word)));
  }
}
