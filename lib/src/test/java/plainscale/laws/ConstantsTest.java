package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.notation.Greek;
import plainscale.quantity.Quantity;

class ConstantsTest {

  static Collection<String> symbols() {
    return Constants.CODATA.symbols();
  }

  private static Quantity codata(String symbol) {
    return Constants.CODATA.find(symbol).orElseThrow().quantity();
  }

  private static Quantity textbook(String symbol) {
    return Constants.TEXTBOOK.find(symbol).orElseThrow().quantity();
  }

  private static Quantity number(int value) {
    return Quantity.number(BigDecimal.valueOf(value));
  }

  @Test
  void noSymbolIsLost() {
    assertTrue(symbols().size() >= 40, symbols()::toString);
    assertEquals(List.copyOf(symbols()), List.copyOf(Constants.TEXTBOOK.symbols()));
  }

  @ParameterizedTest
  @MethodSource("symbols")
  void everySymbolHasAValueAMeaningAndASourceInBothSets(String symbol) {
    for (Constants set : List.of(Constants.CODATA, Constants.TEXTBOOK)) {
      assertTrue(set.has(symbol));
      Constant constant = set.find(symbol).orElseThrow();
      assertEquals(symbol, constant.symbol());
      assertEquals(1, constant.quantity().value().signum());
      assertFalse(constant.meaning().isBlank());
      assertFalse(constant.source().isBlank());
      assertEquals(symbol, Greek.normal(symbol), "a cell could not name it");
    }
    assertEquals(codata(symbol).kind(), textbook(symbol).kind());
  }

  @ParameterizedTest
  @MethodSource("symbols")
  void theTextbookValueIsTheRoundedOne(String symbol) {
    double exact = codata(symbol).value().doubleValue();
    double rounded = textbook(symbol).value().doubleValue();
    // The coarsest, g_n = 9.80 for 9.80665, k_e and μ_0, are off by less than three in a thousand.
    assertEquals(exact, rounded, 0.003 * exact);
  }

  /** CODATA 2022; k_e from ε_0: 8.987 551 786e9 computed with 50 digits. */
  @ParameterizedTest
  @CsvSource({
    "c, 299792458, 0",
    "h, 6.62607015e-34, 0",
    "ħ, 1.054571817e-34, 0",
    "e, 1.602176634e-19, 0",
    "k_B, 1.380649e-23, 0",
    "N_A, 6.02214076e23, 0",
    "R, 8.314462618, 0",
    "F_N, 96485.33212, 0",
    "σ_SB, 5.670374419e-8, 0",
    "b_W, 2.897771955e-3, 0",
    "g_n, 9.80665, 0",
    "Φ_0, 2.067833848e-15, 0",
    "K_J, 483597.8484e9, 0",
    "R_K, 25812.80745, 0",
    "G, 6.67430e-11, 0.00015e-11",
    "ε_0, 8.8541878188e-12, 0.0000000014e-12",
    "μ_0, 1.25663706127e-6, 0.00000000020e-6",
    "k_e, 8.987551786e9, 1.4",
    "m_e, 9.1093837139e-31, 0.0000000028e-31",
    "m_p, 1.67262192595e-27, 0.00000000052e-27",
    "m_n, 1.67492750056e-27, 0.00000000085e-27",
    "m_u, 1.66053906892e-27, 0.00000000052e-27",
    "u, 1.66053906892e-27, 0.00000000052e-27",
    "α_fs, 7.2973525643e-3, 0.0000000011e-3",
    "r_p, 8.4075e-16, 0.0064e-16"
  })
  void theValuesAreThoseOfCodata(String symbol, String value, double u) {
    BigDecimal expected = new BigDecimal(value);
    BigDecimal off = codata(symbol).value().subtract(expected).abs();
    // The table cuts endless values off, so up to one unit of the last digit is missing.
    assertTrue(off.compareTo(expected.ulp()) < 0, codata(symbol).value()::toString);
    assertEquals(u, codata(symbol).uncertainty().standard(), 0.05 * u);
  }

  @ParameterizedTest
  @ValueSource(strings = {"k_e", "ε_0", "μ_0", "Z_0", "α_fs", "G", "m_e", "u"})
  void whatIsMeasuredIsNotExact(String symbol) {
    assertNotEquals(0.0, codata(symbol).uncertainty().standard());
  }

  @Test
  void coulombsConstantSharesTheSourceOfTheElectricConstant() {
    Quantity one = codata("k_e").times(codata("ε_0")).times(number(4)).times(codata("π"));
    assertTrue(one.kind().isNumber());
    assertEquals(
        0,
        one.value()
            .subtract(BigDecimal.ONE)
            .setScale(30, java.math.RoundingMode.HALF_EVEN)
            .signum());
    assertEquals(0.0, one.uncertainty().standard(), 1e-25);
    assertEquals("1", one.shown().value().toPlainString());
  }

  @Test
  void theAtomicMassConstantHasTwoNamesAndOneSource() {
    assertEquals(0.0, codata("m_u").minus(codata("u")).uncertainty().standard());
  }

  @Test
  void askingTwiceGivesTheSameSource() {
    for (String symbol : symbols()) {
      assertSame(codata(symbol), codata(symbol));
      assertEquals(0.0, codata(symbol).minus(codata(symbol)).uncertainty().standard(), symbol);
    }
  }

  @Test
  void bothSetsShareWhatNoBookRounds() {
    assertSame(codata("a_0"), textbook("a_0"));
    assertEquals(
        "CODATA 2022, “Bohr radius”", Constants.TEXTBOOK.find("a_0").orElseThrow().source());
  }

  /** Relations among constants that CODATA 2022 has as rows of their own, exact since 2019. */
  @Test
  void exactConstantsSatisfyTheirRelations() {
    Quantity product = codata("N_A").times(codata("k_B"));
    assertEquals(0, product.value().compareTo(codata("R").value()));
    Quantity flux = codata("h").over(number(2).times(codata("e")));
    assertEquals(0.0, flux.minus(codata("Φ_0")).value().doubleValue(), 1e-45);
    assertEquals(0.0, flux.times(codata("K_J")).value().doubleValue() - 1, 1e-15);
  }

  /** The values of separate rows agree with each other within their uncertainties. */
  @Test
  void measuredConstantsSatisfyTheirRelations() {
    Quantity light = codata("ε_0").times(codata("μ_0")).times(codata("c").power(number(2)));
    assertEquals(1.0, light.value().doubleValue(), 4e-10);
    Quantity impedance = codata("μ_0").times(codata("c"));
    assertEquals(codata("Z_0").value().doubleValue(), impedance.value().doubleValue(), 1e-7);
  }

  /** College Physics 2e, Useful Information (m42720), and falling objects (m42102) for g. */
  @ParameterizedTest
  @CsvSource({
    "c, 3.00e8",
    "G, 6.67e-11",
    "N_A, 6.02e23",
    "k_B, 1.38e-23",
    "R, 8.31",
    "σ_SB, 5.67e-8",
    "k_e, 8.99e9",
    "e, 1.60e-19",
    "ε_0, 8.85e-12",
    "μ_0, 1.26e-6",
    "h, 6.63e-34",
    "m_e, 9.11e-31",
    "m_p, 1.6726e-27",
    "m_n, 1.6749e-27",
    "u, 1.6605e-27",
    "g_n, 9.80"
  })
  void textbookValuesHaveTheFiguresOfTheBook(String symbol, String printed) {
    BigDecimal shown = textbook(symbol).shown().value();
    assertEquals(new BigDecimal(printed), shown);
    assertEquals(new BigDecimal(printed).precision(), textbook(symbol).figures().count());
    assertEquals(0.0, textbook(symbol).uncertainty().standard());
    assertTrue(
        Constants.TEXTBOOK.find(symbol).orElseThrow().source().startsWith("College Physics"));
  }

  @ParameterizedTest
  @CsvSource({"pi, π", "hbar, ħ", "epsilon_0, ε_0", "mu_0, μ_0", "sigma_SB, σ_SB", "m_alpha, m_α"})
  void aConstantIsFoundByItsAsciiName(String ascii, String symbol) {
    Optional<Constant> found = Constants.CODATA.find(Greek.normal(ascii));
    assertEquals(symbol, found.orElseThrow().symbol());
    assertTrue(Constants.CODATA.has(Greek.normal(ascii)));
  }

  @Test
  void whatIsNoConstantIsNotFound() {
    List<String> wrong = new ArrayList<>(List.of("", "-", "x", "C", "k"));
    wrong.removeIf(name -> Constants.CODATA.find(name).isEmpty() && !Constants.CODATA.has(name));
    assertEquals(List.of(), wrong);
  }
}
