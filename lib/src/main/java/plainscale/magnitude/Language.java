package plainscale.magnitude;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A language that numbers can be spelled in: {@code Language.of(Locale.forLanguageTag("es-MX"))} is
 * {@link #SPANISH}. What a language says is in languages.tsv and scale-names.tsv; nothing is read
 * from there before it is asked for.
 */
public enum Language {
  /** American English: no "and". */
  ENGLISH("en-US"),
  /** British English and all that says "one hundred and one". */
  BRITISH("en-GB"),
  /** Indian English: as British, with lakh and crore. */
  INDIAN_ENGLISH("en-IN"),
  SPANISH("es"),
  FRENCH("fr"),
  GERMAN("de"),
  /** Portuguese of Brazil: um bilhão is 10⁹. */
  BRAZILIAN("pt-BR"),
  /** Portuguese of Portugal: um bilião is 10¹². */
  PORTUGUESE("pt-PT"),
  ITALIAN("it"),
  HINDI("hi");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** The language in which numbers are said in a place; none if it is not known here. */
  public static Optional<Language> of(Locale locale) {
    String language = locale.getLanguage();
    List<String> fromNearToFar =
        locale.getCountry().isEmpty()
            ? List.of(language)
            : List.of(language + "-" + locale.getCountry(), language + "-*", language);
    return fromNearToFar.stream().flatMap(Language::speaking).findFirst();
  }

  private static Stream<Language> speaking(String place) {
    return Arrays.stream(values()).filter(l -> Grammar.of(l).locales().contains(place));
  }

  /** The BCP 47 tag, for marking text: "pt-BR". */
  public String tag() {
    return tag;
  }

  /** The locale of the tag. */
  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** The scale that the language uses unless told otherwise. */
  public Scale defaultScale() {
    return Grammar.of(this).scale();
  }
}
