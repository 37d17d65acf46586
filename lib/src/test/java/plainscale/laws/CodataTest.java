package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.laws.Codata.Row;

/**
 * The table against values of CODATA 2022 (NIST, Fundamental Physical Constants, as in
 * scipy.constants of SciPy 1.17.1), written here a second time in the short form value(u).
 */
class CodataTest {

  private static Row row(String name) {
    return Objects.requireNonNull(Codata.rows().get(name), name);
  }

  @Test
  void theTableIsWhole() {
    assertEquals(355, Codata.rows().size());
  }

  @Test
  void noRowHasANegativeUncertaintyOrNoUnit() {
    for (Row row : Codata.rows().values()) {
      assertTrue(row.uncertainty().signum() >= 0, row::toString);
      assertFalse(row.unit().isBlank(), row::toString);
      assertTrue(!row.truncated() || row.exact(), row::toString);
      // From the Planck length (1e-5) to the Josephson constant: nothing is known worse than 1 %.
      BigDecimal relative = row.value().abs().movePointLeft(2);
      assertTrue(row.uncertainty().compareTo(relative) <= 0, row::toString);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "speed of light in vacuum, 299792458, m s^-1",
    "Planck constant, 6.62607015e-34, J Hz^-1",
    "elementary charge, 1.602176634e-19, C",
    "Boltzmann constant, 1.380649e-23, J K^-1",
    "Avogadro constant, 6.02214076e23, mol^-1",
    "hyperfine transition frequency of Cs-133, 9192631770, Hz",
    "luminous efficacy, 683, lm W^-1",
    "standard acceleration of gravity, 9.80665, m s^-2",
    "standard atmosphere, 101325, Pa",
    "standard-state pressure, 100000, Pa"
  })
  void whatDefinesUnitsIsExactAndWhole(String name, String value, String unit) {
    assertEquals(0, new BigDecimal(value).compareTo(row(name).value()));
    assertEquals(unit, row(name).unit());
    assertTrue(row(name).exact());
    assertFalse(row(name).truncated());
  }

  @ParameterizedTest
  @CsvSource({
    "reduced Planck constant, 1.054571817e-34",
    "molar gas constant, 8.314462618",
    "Faraday constant, 96485.33212",
    "Stefan-Boltzmann constant, 5.670374419e-8",
    "Wien wavelength displacement law constant, 2.897771955e-3",
    "'molar volume of ideal gas (273.15 K, 101.325 kPa)', 22.41396954e-3",
    "'molar volume of ideal gas (273.15 K, 100 kPa)', 22.71095464e-3",
    "'Loschmidt constant (273.15 K, 101.325 kPa)', 2.686780111e25",
    "Josephson constant, 483597.8484e9",
    "von Klitzing constant, 25812.80745",
    "mag. flux quantum, 2.067833848e-15",
    "Boltzmann constant in eV/K, 8.617333262e-5",
    "Planck constant in eV/Hz, 4.135667696e-15",
    "conductance quantum, 7.748091729e-5",
    "first radiation constant, 3.741771852e-16",
    "second radiation constant, 1.438776877e-2"
  })
  void whatFollowsFromThemIsExactButCutOff(String name, String value) {
    assertEquals(0, new BigDecimal(value).compareTo(row(name).value()), row(name)::toString);
    assertTrue(row(name).exact());
    assertTrue(row(name).truncated());
  }

  @ParameterizedTest
  @CsvSource({
    "Newtonian constant of gravitation, 6.67430(15)e-11",
    "vacuum electric permittivity, 8.8541878188(14)e-12",
    "vacuum mag. permeability, 1.25663706127(20)e-6",
    "characteristic impedance of vacuum, 376.730313412(59)",
    "fine-structure constant, 7.2973525643(11)e-3",
    "inverse fine-structure constant, 137.035999177(21)",
    "Rydberg constant, 10973731.568157(12)",
    "Rydberg constant times hc in eV, 13.605693122990(15)",
    "Bohr radius, 5.29177210544(82)e-11",
    "electron mass, 9.1093837139(28)e-31",
    "electron mass energy equivalent in MeV, 0.51099895069(16)",
    "proton mass, 1.67262192595(52)e-27",
    "proton mass energy equivalent in MeV, 938.27208943(29)",
    "neutron mass, 1.67492750056(85)e-27",
    "neutron mass energy equivalent in MeV, 939.56542194(48)",
    "muon mass, 1.883531627(42)e-28",
    "deuteron mass, 3.3435837768(10)e-27",
    "triton mass, 5.0073567512(16)e-27",
    "helion mass, 5.0064127862(16)e-27",
    "alpha particle mass, 6.6446573450(21)e-27",
    "proton-electron mass ratio, 1836.152673426(32)",
    "atomic mass constant, 1.66053906892(52)e-27",
    "atomic mass constant energy equivalent in MeV, 931.49410372(29)",
    "molar mass constant, 1.00000000105(31)e-3",
    "molar mass of carbon-12, 12.0000000126(37)e-3",
    "electron charge to mass quotient, -1.75882000838(55)e11",
    "proton charge to mass quotient, 9.5788331430(30)e7",
    "classical electron radius, 2.8179403205(13)e-15",
    "Compton wavelength, 2.42631023538(76)e-12",
    "Thomson cross section, 6.6524587051(62)e-29",
    "proton rms charge radius, 8.4075(64)e-16",
    "Bohr magneton, 9.2740100657(29)e-24",
    "nuclear magneton, 5.0507837393(16)e-27",
    "electron g factor, -2.00231930436092(36)",
    "Planck mass, 2.176434(24)e-8",
    "Planck length, 1.616255(18)e-35",
    "Planck time, 5.391247(60)e-44"
  })
  void aMeasuredConstantHasItsUncertainty(String name, String printed) {
    int open = printed.indexOf('(');
    int close = printed.indexOf(')');
    String exponent = printed.substring(close + 1);
    BigDecimal number = new BigDecimal(printed.substring(0, open));
    BigDecimal power = new BigDecimal("1" + exponent);
    BigDecimal last = new BigDecimal(printed.substring(open + 1, close));
    BigDecimal u = last.multiply(number.ulp()).multiply(power);
    assertEquals(0, number.multiply(power).compareTo(row(name).value()), row(name)::toString);
    assertEquals(0, u.compareTo(row(name).uncertainty()), row(name)::toString);
  }
}
