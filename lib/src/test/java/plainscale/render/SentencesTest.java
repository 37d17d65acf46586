package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.sheet.Sheet;

/** What a sheet says of numbers in the reader's language, worked out by hand. */
class SentencesTest {
  /** The lines of a contrast that are sentences: after the last empty line, not set in further. */
  private static List<String> sentences(String locale, String contrast) {
    Sheet sheet = new Sheet();
    String text = Renderers.text(sheet.run("a", "locale " + locale + "\n" + contrast).results());
    return Arrays.stream(text.substring(text.lastIndexOf("\n\n") + 2).split("\n", -1))
        .map(line -> line.substring(2))
        .filter(line -> !line.startsWith(" "))
        .map(line -> line.replace('\u00a0', ' ').replace('\u202f', ' '))
        .toList();
  }

  @Test
  void inGerman() {
    // 8.13E+23 / 4.19E+11 = 1.940E+12; log₁₀ = 12.29; 8.13E+20 m / 9.4607E+15 m = 85 934
    assertEquals(
        List.of(
            "Der zweite Wert ist 1,94 Billionen Mal so groß wie der erste: etwa 12 Größenordnungen"
                + " (Verhältnis in Zehnerpotenzen).",
            "Verhältnis:",
            "Auf je 1 der ersten Anzahl kommen etwa 1,94 Billionen der zweiten.",
            "Um sich den zweiten Wert vorzustellen (als Länge): Aneinandergereiht, je 1 mm lang,"
                + " reichen sie etwa 85,9 Tausend Lichtjahre weit."),
        sentences("de", "contrast 4.19e11 with 8.13e23"));
  }

  @Test
  void inSpanish() {
    // Exact numbers: 6E+9 / 3E+3 = 2E+6; log₁₀ = 6.30; 6E+9 s / 31 557 600 s =
    // 190
    assertEquals(
        List.of(
            "La segunda cantidad es 2 millones de veces la primera: aproximadamente 6 órdenes de"
                + " magnitud (razón en potencias de diez).",
            "Razón:",
            "Por cada unidad de la primera cantidad hay aproximadamente 2 millones de unidades de"
                + " la segunda.",
            "Para imaginar la segunda cantidad (contando): contar uno por segundo llevaría"
                + " aproximadamente 190 años."),
        sentences("es", "contrast 3.0e3 with 6.0e9"));
  }

  @Test
  void inFrench() {
    // 3.0 N / 2.0E-6 N = 1.5E+6; log₁₀ = 6.18; 1.5E+6 / 62 370 dots on a sheet = 24.05 sheets
    assertEquals(
        List.of(
            "La première valeur vaut 1,5 million de fois la deuxième : environ 6 ordres de grandeur"
                + " (rapport en puissances de dix).",
            "Rapport :",
            "La première valeur divisée par 1,5 million donne à peu près la deuxième.",
            "Pour se représenter ce rapport (en feuilles de papier) : sous forme de points, un par"
                + " millimètre carré de papier A4, ils rempliraient environ 24 feuilles."),
        sentences("fr", "contrast 3.0 [N] with 2.0e-6 [N] by pages"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pt-BR | 2.0 [m] with 3.0 [m]  | O segundo valor é 1,5 vez o primeiro: menos de uma ordem de grandeza (razão em potências de dez).",
        "pt-PT | 2.0 [m] with 3.0e9 [m]| O segundo valor é 1,5 mil milhões de vezes o primeiro: cerca de 9 ordens de grandeza (razão em potências de dez).",
        "it    | 2.0 [m] with 8.0e4 [m]| Il secondo valore è pari a 40 mila volte il primo: circa 5 ordini di grandezza (rapporto in potenze di dieci).",
        "hi    | 2.0 [m] with 4.0e7 [m]| दूसरी राशि पहली राशि की 2.0 करोड़ गुनी है: परिमाण की लगभग 7 कोटियाँ (अनुपात 10 की घातों में)।",
        "en-GB | 2.0 [m] with 3.0e9 [m]| The second is 1.5 billion times the first: about 9 orders of magnitude (ratio in powers of ten)."
      })
  void theNounAgreesWithTheNumber(String locale, String sides, String sentence) {
    assertEquals(sentence, sentences(locale, "contrast " + sides).get(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "es | show 8.7e12 [kg] in words      | 8,7 billones de kg",
        "es | show 8.7e12 [kg] in full words | ocho billones setecientos mil millones de kg",
        "es | show 6.5e4 [kg] in words       | 65 mil kg",
        "de | show 8.7e12 [kg] in words      | 8,7 Billionen kg",
        "it | show 3.0e6 [kg] roughly        | circa 3 milioni di kg"
      })
  void aUnitStandsAfterItsNumberAsTheLanguageAsks(String locale, String cell, String words) {
    Sheet sheet = new Sheet();
    String text = Renderers.text(sheet.run("a", "locale " + locale + "\n" + cell).results());
    assertEquals(1, text.lines().filter(line -> line.strip().equals(words)).count(), text);
  }
}
