package plainscale.magnitude;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import plainscale.magnitude.ScaleNames.Name;

/**
 * English number words, American style without "and". {@code Words.of(Scale.SHORT)} turns 8.7E+12
 * into "8.7 trillion" ({@link #mixed}) or "eight trillion seven hundred billion" ({@link
 * #spelled}), and 3.05E-16 into "305 quintillionths". A number that has no name is written as a
 * power of ten, with a remark.
 */
public final class Words {
  /** The short scale with digits in SI style. */
  public static final Words ENGLISH = new Words(Language.ENGLISH, Scale.SHORT, DigitStyle.SI);

  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  /** Nobody reads more figures than this in words. */
  private static final int MOST_FIGURES = 100;

  private final Language language;
  private final Scale scale;
  private final DigitStyle style;

  private Words(Language language, Scale scale, DigitStyle style) {
    this.language = language;
    this.scale = scale;
    this.style = style;
  }

  /** English words of a scale. */
  public static Words of(Scale scale) {
    return of(Language.ENGLISH, scale);
  }

  /** Words of a language and a scale. */
  public static Words of(Language language, Scale scale) {
    return new Words(language, scale, DigitStyle.SI);
  }

  public static Optional<Words> of(java.util.Locale locale) {
    return Optional.of(ENGLISH);
  }

  public static java.util.List<String> locales() {
    return java.util.List.of("en-US");
  }

  public Words in(Scale other) {
    return new Words(language, other, style);
  }

  public String ofOne() {
    return "of 1";
  }

  /** The language of the words. */
  public Language language() {
    return language;
  }

  /** The names of powers of ten that are used. */
  public Scale scale() {
    return scale;
  }

  /** A number in the digits of the mixed form. */
  public Digits digits(BigDecimal value) {
    return Digits.of(value, style);
  }

  /** The same words with the digits of the mixed form in another style. */
  public Words with(DigitStyle digitStyle) {
    return new Words(language, scale, digitStyle);
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
    if (power < 0 && !scale.fractions()) {
      return Optional.empty();
    }
    return names().exactly(Math.abs(power)).map(n -> n.word() + (power < 0 ? "th" : ""));
  }

  private Spelling spelling(BigDecimal value, boolean inWords) {
    BigDecimal size = Digits.tame(value).abs();
    Optional<String> refusal = refusal(size);
    if (refusal.isPresent()) {
      return new Spelling(PowerOfTen.of(value).text(style), refusal);
    }
    String minus = inWords ? "minus " : DigitWriter.MINUS;
    String body = isFraction(size) ? parts(size, inWords) : whole(size, inWords);
    return Spelling.of(value.signum() < 0 ? minus + body : body);
  }

  private Optional<String> refusal(BigDecimal size) {
    if (size.precision() > MOST_FIGURES) {
      return Optional.of("Nobody reads that many figures in words.");
    }
    if (PowerOfTen.of(size).exponent() >= scale.reach()) {
      return Optional.of("There is no name for a number as large as this.");
    }
    if (isFraction(size) && !(scale.fractions() && names().forFraction(size).isPresent())) {
      return Optional.of("There is no name for a fraction as small as this.");
    }
    return Optional.empty();
  }

  private static boolean isFraction(BigDecimal size) {
    return size.signum() > 0 && size.compareTo(BigDecimal.ONE) < 0;
  }

  private ScaleNames names() {
    return ScaleNames.of(scale);
  }

  private String parts(BigDecimal size, boolean inWords) {
    Name name = names().forFraction(size).orElseThrow();
    BigDecimal parts = name.partsOf(size);
    // Only "1" is singular: it is one trillionth, but 1.0 trillionths.
    boolean one = parts.scale() == 0 && parts.compareTo(BigDecimal.ONE) == 0;
    String ending = one ? "th" : "ths";
    return mantissa(parts, inWords) + " " + name.word() + ending;
  }

  private String whole(BigDecimal size, boolean inWords) {
    return inWords && scale != Scale.REPEATED ? fullWords(size) : named(size, inWords);
  }

  /** Takes named powers off until the mantissa is below all of them: "1.56 lakh crore crore". */
  private String named(BigDecimal value, boolean inWords) {
    Optional<Name> name = names().under(value).filter(n -> !isPlainThousands(n, value));
    return name.map(n -> named(n.mantissaOf(value), inWords) + " " + n.word())
        .orElseGet(() -> mantissa(value, inWords));
  }

  /** 1836 is clearer than "1.836 thousand"; 276E+3 is "276 thousand". */
  private static boolean isPlainThousands(Name name, BigDecimal value) {
    return name.power() == 3 && value.scale() >= 0;
  }

  private String mantissa(BigDecimal value, boolean inWords) {
    return inWords ? fullWords(value) : Digits.of(value, style).text();
  }

  private String fullWords(BigDecimal value) {
    String whole = integerWords(value.toBigInteger());
    if (value.scale() <= 0) {
      return whole;
    }
    String plain = value.toPlainString();
    return plain
        .substring(plain.indexOf('.') + 1)
        .chars()
        .mapToObj(digit -> SmallNumbers.spell(digit - '0'))
        .collect(joining(" ", whole + " point ", ""));
  }

  private String integerWords(BigInteger number) {
    if (number.compareTo(THOUSAND) < 0) {
      return SmallNumbers.spell(number.intValueExact());
    }
    Name name = names().under(new BigDecimal(number)).orElseThrow();
    BigInteger[] parts = number.divideAndRemainder(name.size());
    String rest = parts[1].signum() == 0 ? "" : " " + integerWords(parts[1]);
    return integerWords(parts[0]) + " " + name.word() + rest;
  }
}
