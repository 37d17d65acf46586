package plainscale.magnitude;

import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.number.Precision;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What ICU4J knows of a language: small numbers and plurals. Made when a number is first spelled in
 * the language, because the rules take a while to parse.
 */
final class IcuRules {
  private static final Map<Language, IcuRules> LOADED = new ConcurrentHashMap<>();

  private final PluralRules plurals;
  private final Map<Form, SmallNumbers> small = new EnumMap<>(Form.class);

  private IcuRules(Grammar grammar) {
    Locale locale = grammar.icuLocale();
    plurals = PluralRules.forLocale(locale);
    RuleBasedNumberFormat format =
        new RuleBasedNumberFormat(locale, RuleBasedNumberFormat.SPELLOUT);
    for (Form form : Form.values()) {
      small.put(form, new SmallNumbers(number -> spell(format, number, grammar, form)));
    }
  }

  static IcuRules of(Language language) {
    return LOADED.computeIfAbsent(language, l -> new IcuRules(Grammar.of(l)));
  }

  private static String spell(
      RuleBasedNumberFormat format, long number, Grammar grammar, Form form) {
    String words;
    // One format serves all threads, and ICU4J does not promise that it may be shared.
    synchronized (format) {
      words = format.format(number, grammar.ruleSet(form));
    }
    return grammar.mend(words.replace("\u00ad", ""));
  }

  /** A number below a million in words. */
  String spell(int number, Form form) {
    return Objects.requireNonNull(small.get(form)).spell(number);
  }

  /**
   * Whether a number, with its decimals as they are seen, takes the singular: 1 in all languages,
   * 1.0 in some, 1.5 in French.
   */
  boolean takesSingular(BigDecimal count) {
    if (count.scale() <= 0) {
      // The other whole number that some languages put in the singular, 0, never counts a name.
      return count.compareTo(BigDecimal.ONE) == 0;
    }
    return plurals
        .select(
            NumberFormatter.withLocale(Locale.ROOT)
                .precision(Precision.fixedFraction(count.scale()))
                .format(count))
        .equals(PluralRules.KEYWORD_ONE);
  }
}
