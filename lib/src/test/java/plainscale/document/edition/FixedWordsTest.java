package plainscale.document.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessagePattern;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.magnitude.Language;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.table.Table;

/** The fixed words of handouts. */
class FixedWordsTest {
  private static final List<String> LANGUAGES = List.of("en", "de", "es", "fr", "it", "pt", "hi");

  static List<Table.Row> rows() {
    return Table.read(FixedWords.class, "editions.tsv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyLanguageHasTheSameGapsAndArguments(Table.Row row) {
    assertFalse(row.get("en").isEmpty(), row::toString);
    for (String language : LANGUAGES) {
      String pattern = row.get(language);
      if (!pattern.isEmpty()) {
        assertEquals(gaps(row.get("en")), gaps(pattern), pattern);
        assertEquals(arguments(row.get("en")), arguments(pattern), pattern);
      }
    }
  }

  private static int gaps(String pattern) {
    return pattern.split(FixedWords.GAP, -1).length - 1;
  }

  private static List<Integer> arguments(String pattern) {
    MessagePattern parsed = new MessagePattern(pattern);
    return IntStream.range(0, parsed.countParts())
        .mapToObj(parsed::getPart)
        .filter(part -> part.getType() == MessagePattern.Part.Type.ARG_NUMBER)
        .map(MessagePattern.Part::getValue)
        .sorted()
        .toList();
  }

  @Test
  void noKeyStandsThereTwice() {
    List<String> keys = rows().stream().map(row -> row.get("key")).toList();
    assertEquals(keys.stream().distinct().toList(), keys);
  }

  @ParameterizedTest
  @CsvSource({
    "de,    de,    Datum",
    "de-CH, de-CH, Datum",
    "pt-BR, pt-BR, Data",
    "sv,    sv,    Date",
    "x_y,   en,    Date",
    "'',    en,    Date"
  })
  void thePageIsInTheLanguageOfTheLesson(String locale, String tag, String date) {
    FixedWords words = FixedWords.of(Optional.of(locale));
    assertEquals(tag, words.tag());
    assertEquals(date, words.say("date"));
  }

  @Test
  void withoutALocaleItIsEnglish() {
    assertEquals("en", FixedWords.of(Optional.empty()).tag());
  }

  @Test
  void aGapIsAPieceOfItsLine() {
    List<Piece> line = FixedWords.of(Optional.empty()).line("contrast.times", Piece.Gap.VALUE);
    assertEquals(
        List.of(
            new Piece.Words("The larger is "),
            Piece.Gap.VALUE,
            new Piece.Words(" times the smaller.")),
        line);
  }

  @Test
  void anotherLanguageOrScaleIsSaid() {
    FixedWords german = FixedWords.of(Optional.of("de"));
    assertEquals("In Worten:", german.inWords(Words.of(Language.GERMAN, Scale.MILLIARD)));
    assertEquals("In Worten (Englisch):", german.inWords(Words.ENGLISH));
    FixedWords english = FixedWords.of(Optional.empty());
    assertEquals("In words (lakh and crore):", english.inWords(Words.ENGLISH.in(Scale.INDIAN)));
  }

  @Test
  void anUnknownKeyIsAMistakeOfOurs() {
    FixedWords words = FixedWords.of(Optional.empty());
    Exception e = assertThrows(IllegalArgumentException.class, () -> words.say("nothing"));
    assertTrue(String.valueOf(e.getMessage()).contains("nothing"));
  }
}
