package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import plainscale.magnitude.ScaleNames.Name;

/**
 * Number words of a language and a scale. {@code Words.ENGLISH} turns 8.7E+12 into "8.7 trillion"
 * ({@link #mixed}) or "eight trillion seven hundred billion" ({@link #spelled}), and 3.05E-16 into
 * "305 quintillionths"; {@code Words.of(Locale.GERMANY)} into "8,7 Billionen" and "305
 * Trillionstel". A number that has no name is written as a power of ten, with a remark.
 */
public record Words(Language language, Scale scale, DigitStyle style) {
  /** American English, the short scale and digits in SI style. */
  public static final Words ENGLISH = of(Scale.SHORT);

  /** Nobody reads more figures than this in words. */
  private static final int MOST_FIGURES = 100;

  private static final BigDecimal TEN_THOUSAND = BigDecimal.TEN.pow(4);

  /** The words of a place, in the scale and with the digits that are usual there. */
  public static Optional<Words> of(Locale locale) {
    return Language.of(locale).map(l -> new Words(l, l.defaultScale(), DigitStyle.of(locale)));
  }

  /** English words of a scale. */
  public static Words of(Scale scale) {
    return of(Language.ENGLISH, scale);
  }

  /** Words of a language and a scale. */
  public static Words of(Language language, Scale scale) {
    return new Words(language, scale, DigitStyle.SI);
  }

  /** The same language and digits with the names of another scale. */
  public Words in(Scale otherScale) {
    return new Words(language, otherScale, style);
  }

  /** The same words with the digits of the mixed form in another style. */
  public Words with(DigitStyle digitStyle) {
    return new Words(language, scale, digitStyle);
  }

  /** A number in digits of the same style. */
  public Digits digits(BigDecimal value) {
    return Digits.of(value, style);
  }

  /** Digits and a named power: "8.7 trillion", "53 thousandths", "999.5". */
  public Spelling mixed(BigDecimal value) {
    return spelling(value, false);
  }

  /** All in words: "eight trillion seven hundred billion", "five tenths", "minus twelve". */
  public Spelling spelled(BigDecimal value) {
    return spelling(value, true);
  }

  /** The name of a power of ten alone: "one", "trillion", "trillionth". */
  public Optional<String> nameOf(long power) {
    return names()
        .exactly(Math.abs(power))
        .map(name -> power < 0 ? name.part() : alone(name))
        .filter(word -> !word.isEmpty());
  }

  /** The name as it stands after a number of them: "trillion", "Billionen", "trillionths". */
  public Optional<String> nameOf(long power, BigDecimal count) {
    return names()
        .exactly(Math.abs(power))
        .map(name -> power < 0 ? name.part(isOne(count)) : name.word(isOne(count)))
        .filter(word -> !word.isEmpty());
  }

  /** Italian has "276 mila", but not "1 mila": by itself the name is a number, "mille". */
  private String alone(Name name) {
    return name.one().isEmpty() && !name.other().isEmpty()
        ? mantissa(BigDecimal.ONE.scaleByPowerOfTen(name.power()), Form.ALONE, true)
        : name.one();
  }

  /**
   * The word between a fraction and its unit: "of" for "67 billionths of 1 C". Empty in a language
   * that has no words for fractions here.
   */
  public String ofOne() {
    return grammar().ofOne();
  }

  private Spelling spelling(BigDecimal value, boolean inWords) {
    BigDecimal size = Digits.tame(value).abs();
    Optional<String> refusal = refusal(size);
    if (refusal.isPresent()) {
      return new Spelling(PowerOfTen.of(value).text(style), refusal);
    }
    String minus = inWords ? grammar().minus() : DigitWriter.MINUS;
    String body = isFraction(size) ? parts(size, inWords) : whole(size, inWords);
    return Spelling.of(value.signum() < 0 ? minus + body : body);
  }

  private Optional<String> refusal(BigDecimal size) {
    if (size.precision() > MOST_FIGURES) {
      return Optional.of("Nobody reads that many figures in words.");
    }
    if (names().isEmpty()) {
      return Optional.of("The language has no words of this scale.");
    }
    if (PowerOfTen.of(size).exponent() >= scale.reach()) {
      return Optional.of("There is no name for a number as large as this.");
    }
    if (isFraction(size) && names().forFraction(size).isEmpty()) {
      return Optional.of(
          names().hasFractions()
              ? "There is no name for a fraction as small as this."
              : "The language has no words for fractions here.");
    }
    return Optional.empty();
  }

  private static boolean isFraction(BigDecimal size) {
    return size.signum() > 0 && size.compareTo(BigDecimal.ONE) < 0;
  }

  private Grammar grammar() {
    return Grammar.of(language);
  }

  private ScaleNames names() {
    return grammar().names(scale);
  }

  private String parts(BigDecimal size, boolean inWords) {
    Name name = names().forFraction(size).orElseThrow();
    BigDecimal parts = name.partsOf(size);
    return mantissa(parts, Form.PARTS, inWords) + " " + name.part(isOne(parts));
  }

  private String whole(BigDecimal size, boolean inWords) {
    return inWords && scale != Scale.REPEATED
        ? mantissa(size, Form.ALONE, true)
        : named(size, Optional.empty(), inWords);
  }

  /**
   * Takes named powers off until the mantissa is below all of them: "1.56 lakh crore crore". {@code
   * outer} is the name that was taken off just before.
   */
  private String named(BigDecimal value, Optional<Name> outer, boolean inWords) {
    Optional<Name> fitting = names().under(value).filter(n -> suits(n, value, outer, inWords));
    if (fitting.isEmpty()) {
      return outer.isEmpty()
          ? mantissa(value, Form.ALONE, inWords)
          : mantissa(value, Form.COUNT, inWords) + " ";
    }
    Name name = fitting.get();
    BigDecimal count = name.mantissaOf(value);
    String joint = outer.isEmpty() ? "" : outer.equals(fitting) ? grammar().repeated() : " ";
    return named(count, fitting, inWords) + name.word(isOne(count)) + joint;
  }

  private boolean suits(Name name, BigDecimal value, Optional<Name> outer, boolean inWords) {
    if (name.power() > 3) {
      return true;
    }
    // 1836 and 3120 are clearer than "1.836 thousand" and "3.12 thousand"; 276E+3 is "276
    // thousand".
    boolean endsInThousands =
        value.scale() <= -3
            || (value.scale() < 0 && (outer.isPresent() || value.compareTo(TEN_THOUSAND) >= 0));
    boolean named = outer.isEmpty() || grammar().namesThousandsOfNames();
    boolean hasWord = !name.word(isOne(name.mantissaOf(value))).isEmpty();
    return endsInThousands && named && hasWord && !inWords;
  }

  private boolean isOne(BigDecimal count) {
    return IcuRules.of(language).takesSingular(count);
  }

  private String mantissa(BigDecimal value, Form form, boolean inWords) {
    return inWords
        ? new Speller(language, names()).spell(value, form)
        : Digits.of(value, style).text();
  }
}
