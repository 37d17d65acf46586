package plainscale.magnitude;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plainscale.table.Table;

/**
 * Reads number words of a language and a scale, for tests of the speller, which it does not call:
 * at each place it takes the longest word that it knows. It knows the numbers below a thousand and
 * the thousands as ICU4J says them, in all its forms, and the names of powers in the tables, which
 * the fixtures check one by one. Accents, hyphens and commas make no difference, nor do "and", "e",
 * "de" and "di".
 */
final class WordReader {
  private static final Set<String> LITTLE_WORDS = Set.of("and", "e", "de", "di");

  private enum Kind {
    /** A number below a million. */
    NUMBER,
    /** Multiplies the digits before it, before which it is no number by itself: "1.5 mil". */
    THOUSAND,
    /** A name that multiplies the group before it: "million". */
    NAME,
    /** A name that multiplies all that was said before it: "crore" of "lakh crore". */
    ALL,
    /** The name of a fraction, which ends the number. */
    PART,
    DECIMAL
  }

  private record Word(Kind kind, BigDecimal size) {}

  private final Map<String, Word> numbers = new HashMap<>();
  private final Map<String, Word> names = new HashMap<>();
  private final String minus;
  private final boolean glued;
  private final int longest;

  WordReader(Language language, Scale scale) {
    Table.Row row = rows("languages.tsv", "tag", language.tag()).get(0);
    RuleBasedNumberFormat icu =
        new RuleBasedNumberFormat(
            Locale.forLanguageTag(row.get("icu")), RuleBasedNumberFormat.SPELLOUT);
    addNumbers(icu, scale == Scale.INDIAN ? 99 : 999);
    for (Table.Row name : rows("scale-names.tsv", "names", row.get("names"))) {
      if (Arrays.asList(name.get("scales").split(" ")).contains(scale.word())) {
        addName(name, scale);
      }
    }
    put(numbers, row.get("decimal"), new Word(Kind.DECIMAL, BigDecimal.ONE));
    minus = plain(row.get("minus"));
    glued = !icu.format(100_001).contains(" ");
    names.forEach(numbers::putIfAbsent);
    longest = numbers.keySet().stream().mapToInt(String::length).max().orElseThrow();
  }

  private static List<Table.Row> rows(String table, String column, String text) {
    return Table.read(Grammar.class, table).stream()
        .filter(row -> row.get(column).equals(text))
        .toList();
  }

  private void addNumbers(RuleBasedNumberFormat icu, int thousands) {
    for (String rules : icu.getRuleSetNames()) {
      for (int n = 0; n < 1000 && rules.matches("%spellout-(cardinal|numbering).*"); n++) {
        put(numbers, icu.format(n, rules), new Word(Kind.NUMBER, BigDecimal.valueOf(n)));
        if (n > 0 && n <= thousands) {
          long number = 1000L * n;
          put(numbers, icu.format(number, rules), new Word(Kind.NUMBER, new BigDecimal(number)));
        }
      }
    }
  }

  private void addName(Table.Row row, Scale scale) {
    int power = Integer.parseInt(row.get("power"));
    boolean all = (scale == Scale.INDIAN && power == 7) || (scale == Scale.REPEATED && power == 6);
    BigDecimal size = BigDecimal.ONE.scaleByPowerOfTen(power);
    if (power > 2) {
      Kind kind = power == 3 ? Kind.THOUSAND : all ? Kind.ALL : Kind.NAME;
      put(names, row.get("one"), new Word(kind, size));
      put(names, row.get("other"), new Word(kind, size));
    }
    BigDecimal part = BigDecimal.ONE.scaleByPowerOfTen(-power);
    put(names, row.get("part"), new Word(Kind.PART, part));
    put(names, row.get("parts"), new Word(Kind.PART, part));
  }

  private static void put(Map<String, Word> words, String text, Word word) {
    if (!text.isEmpty()) {
      words.putIfAbsent(plain(text), word);
    }
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("[\u0300-\u036f\u00ad,]", "")
        .replace('-', ' ')
        .strip();
  }

  /** Reads all in words. */
  BigDecimal read(String text) {
    String plain = plain(text);
    return plain.startsWith(minus + " ")
        ? read(plain.substring(minus.length() + 1), BigDecimal.ZERO, numbers).negate()
        : read(plain, BigDecimal.ZERO, numbers);
  }

  /** Reads digits in SI style with what follows them. */
  BigDecimal readMixed(String text) {
    int end = text.indexOf(' ') < 0 ? text.length() : text.indexOf(' ');
    String digits =
        text.substring(0, end).replace(DigitStyle.THIN_SPACE, "").replace('\u2212', '-');
    return read(plain(text.substring(end)), new BigDecimal(digits), names);
  }

  private BigDecimal read(String text, BigDecimal before, Map<String, Word> words) {
    BigDecimal total = BigDecimal.ZERO;
    BigDecimal group = before;
    BigDecimal decimal = BigDecimal.ZERO;
    String rest = text;
    while (!rest.isEmpty()) {
      String found = first(rest, words);
      Word word = words.getOrDefault(found, new Word(Kind.NUMBER, BigDecimal.ZERO));
      switch (word.kind()) {
        case NUMBER -> {
          group = group.add(decimal.signum() > 0 ? word.size().multiply(decimal) : word.size());
          decimal = decimal.movePointLeft(1);
        }
        case DECIMAL -> decimal = new BigDecimal("0.1");
        case THOUSAND -> group = group.multiply(word.size());
        case NAME -> {
          total = total.add(group.multiply(word.size()));
          group = BigDecimal.ZERO;
          decimal = BigDecimal.ZERO;
        }
        case ALL, PART -> {
          total = total.add(group).multiply(word.size());
          group = BigDecimal.ZERO;
          decimal = BigDecimal.ZERO;
        }
      }
      rest = rest.substring(found.length()).strip();
    }
    return total.add(group);
  }

  private String first(String text, Map<String, Word> words) {
    for (int end = Math.min(text.length(), longest); end > 0; end--) {
      boolean boundary = end == text.length() || text.charAt(end) == ' ';
      String candidate = boundary || glued ? text.substring(0, end) : "";
      if (words.containsKey(candidate) || (boundary && LITTLE_WORDS.contains(candidate))) {
        return candidate;
      }
    }
    throw new IllegalArgumentException("Not a number word: " + text);
  }
}
