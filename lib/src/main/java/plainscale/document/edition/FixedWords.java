package plainscale.document.edition;

import static java.util.stream.Collectors.toMap;

import com.ibm.icu.text.MessageFormat;
import java.util.ArrayList;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plainscale.magnitude.Language;
import plainscale.magnitude.Words;
import plainscale.table.Table;

/**
 * The fixed words of a page in the language of its lesson, from the table {@code editions.tsv}:
 * patterns of ICU's message format. Words that a language lacks are said in English. Where a
 * sentence has a gap, the table has four underscores.
 */
final class FixedWords {
  /** What stands for a gap in a sentence. */
  static final String GAP = "____";

  private static final String FALLBACK = "en";
  private static final Locale ENGLISH = Locale.ENGLISH;

  /** Loaded when the first word is asked for. */
  private static final class Loaded {
    static final Map<String, Table.Row> ROWS =
        Table.read(FixedWords.class, "editions.tsv").stream()
            .collect(toMap(row -> row.get("key"), row -> row));
  }

  private final Locale locale;

  private FixedWords(Locale locale) {
    this.locale = locale;
  }

  /** The words for a lesson that names that locale; English if it names none. */
  static FixedWords of(Optional<String> tag) {
    return new FixedWords(tag.map(FixedWords::locale).orElse(ENGLISH));
  }

  private static Locale locale(String tag) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(tag).build();
      return locale.getLanguage().isEmpty() ? ENGLISH : locale;
    } catch (IllformedLocaleException notATag) {
      return ENGLISH;
    }
  }

  /** The language of the page, as HTML has it: “de-CH”. */
  String tag() {
    return locale.toLanguageTag();
  }

  /** The words under a key. */
  String say(String key, Object... arguments) {
    return new MessageFormat(pattern(key), locale).format(arguments);
  }

  private String pattern(String key) {
    Table.Row row = Loaded.ROWS.get(key);
    if (row == null) {
      throw new IllegalArgumentException("There are no words for " + key + ".");
    }
    String own = row.cells().getOrDefault(locale.getLanguage(), "");
    return own.isEmpty() ? row.get(FALLBACK) : own;
  }

  /** The words under a key as pieces of a line; each gap is of that kind. */
  List<Piece> line(String key, Piece.Gap gap, Object... arguments) {
    List<Piece> pieces = new ArrayList<>();
    String rest = say(key, arguments);
    for (int at = rest.indexOf(GAP); at >= 0; at = rest.indexOf(GAP)) {
      pieces.add(new Piece.Words(rest.substring(0, at)));
      pieces.add(gap);
      rest = rest.substring(at + GAP.length());
    }
    pieces.add(new Piece.Words(rest));
    return pieces;
  }

  /**
   * Before room for a number in words: “In words:”, and in which language and by which names of
   * powers if these are not the ones of the page.
   */
  String inWords(Words words) {
    Language own = Language.of(locale).orElse(Language.ENGLISH);
    String language =
        words.language().locale().getLanguage().equals(own.locale().getLanguage())
            ? ""
            : words.language().locale().getDisplayLanguage(locale);
    String scale =
        words.scale() == words.language().defaultScale() ? "" : say("scale." + words.scale());
    List<String> said = List.of(language, scale).stream().filter(s -> !s.isEmpty()).toList();
    return said.isEmpty() ? say("in-words") : say("in-words.of", String.join(", ", said));
  }
}
