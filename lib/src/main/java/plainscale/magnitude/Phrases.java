package plainscale.magnitude;

import static java.util.stream.Collectors.toMap;

import com.ibm.icu.text.MessageFormat;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plainscale.table.Table;

/**
 * The sentences around numbers in the reader's language, from the tables in {@code phrases}:
 * patterns of ICU's message format, which know the plurals. {@code
 * Phrases.of(Language.ENGLISH).say("figures", 3)} is "3 significant figures". A sentence that a
 * language lacks is said in English.
 */
public final class Phrases {
  private static final String FALLBACK = "en";
  private static final Map<String, Phrases> LOADED = new ConcurrentHashMap<>();

  private final Locale locale;
  private final Map<String, String> patterns;

  private Phrases(Locale locale, Map<String, String> patterns) {
    this.locale = locale;
    this.patterns = patterns;
  }

  /** The sentences of a language. */
  public static Phrases of(Language language) {
    // By the whole tag: plurals differ between Brazil and Portugal, groups between India and the
    // US.
    return LOADED.computeIfAbsent(language.tag(), tag -> load(language.locale()));
  }

  private static Phrases load(Locale locale) {
    Map<String, String> patterns = new HashMap<>(read(FALLBACK));
    if (Phrases.class.getResource(resource(locale.getLanguage())) != null) {
      patterns.putAll(read(locale.getLanguage()));
    }
    return new Phrases(locale, patterns);
  }

  private static Map<String, String> read(String language) {
    return Table.read(Phrases.class, resource(language)).stream()
        .collect(toMap(row -> row.get("key"), row -> row.get("pattern")));
  }

  private static String resource(String language) {
    return "phrases/" + language + ".tsv";
  }

  /** A sentence with its arguments; numbers that are not counted come as text. */
  public String say(String key, Object... arguments) {
    String pattern = patterns.get(key);
    if (pattern == null) {
      throw new IllegalArgumentException("There is no phrase " + key + ".");
    }
    return new MessageFormat(pattern, locale).format(arguments);
  }
}
