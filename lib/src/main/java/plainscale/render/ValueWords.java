package plainscale.render;

import java.math.BigDecimal;
import java.util.Optional;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Approximation;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Parts;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/**
 * A rounded value in words with its unit: "8.7 trillion", "67 billionths of a coulomb", "3.9
 * million metres per second". Units have names in English; beside other words they keep their
 * symbols.
 */
final class ValueWords {
  private static final String ENGLISH = "en";

  private ValueWords() {}

  /** The number in the form of words that was asked for; digits count as words here. */
  static Spelling of(Result.Numeral number) {
    Words words = number.writing().words();
    BigDecimal value = number.shown().value();
    return switch (number.style()) {
      case NUMBER, DIGITS, WORDS -> of(number.shown(), number.exact(), number.writing());
      case FULL_WORDS -> spelled(number.shown(), number.writing());
      case PARTS -> new Spelling(Parts.of(value).text(words), Optional.empty());
      case ORDERS -> new Spelling(order(number), Optional.empty());
      case ROUGHLY -> roughly(number);
    };
  }

  /** Digits and a named power; the zeros of an exact number are not said after a decimal point. */
  static Spelling of(Shown shown, boolean exact, Writing writing) {
    BigDecimal value = exact ? shown.value().stripTrailingZeros() : shown.value();
    return withUnit(writing.words().mixed(value), shown, writing);
  }

  /** All in words, with the unit. */
  static Spelling spelled(Shown shown, Writing writing) {
    return withUnit(writing.words().spelled(shown.value()), shown, writing);
  }

  private static String order(Result.Numeral number) {
    Orders orders = single(number.writing());
    String power = PowerOfTen.power(orders.of(number.unrounded()));
    String unit = number.shown().unit().text();
    String said = unit.isEmpty() ? power : power + " " + unit;
    return number.writing().phrases().say("orders.one", said);
  }

  /** A ratio's definition says nothing of one number alone. */
  static Orders single(Writing writing) {
    return writing.orders() == Orders.RATIO ? Orders.NEAREST : writing.orders();
  }

  private static Spelling roughly(Result.Numeral number) {
    Approximation about =
        number.figures() > 0
            ? Approximation.of(number.unrounded(), number.figures())
            : Approximation.of(number.unrounded());
    Words words = number.writing().words();
    Spelling spelling = new Spelling(about.text(words), words.mixed(about.round()).remark());
    Shown round = new Shown(about.upper(), null, number.shown().unit());
    return withUnit(spelling, round, number.writing());
  }

  private static Spelling withUnit(Spelling number, Shown shown, Writing writing) {
    if (shown.unit().equals(UnitOfMeasure.ONE)) {
      return number;
    }
    boolean fraction =
        shown.value().abs().compareTo(BigDecimal.ONE) < 0 && shown.value().signum() != 0;
    boolean named =
        fraction
            && number.inWords()
            && !Character.isDigit(number.text().charAt(number.text().length() - 1));
    boolean english = writing.words().language().locale().getLanguage().equals(ENGLISH);
    String said =
        english
            ? number.text() + " " + inEnglish(shown, fraction, named)
            : withSymbol(number.text(), shown, named, writing);
    return new Spelling(said, number.remark());
  }

  private static String inEnglish(Shown shown, boolean fraction, boolean named) {
    boolean one = shown.value().compareTo(BigDecimal.ONE) == 0;
    String unit = shown.unit().words(one || fraction);
    return named ? "of " + article(unit) + unit : unit;
  }

  private static String withSymbol(String number, Shown shown, boolean named, Writing writing) {
    String unit = shown.unit().text();
    if (named) {
      return number + " " + writing.words().ofOne() + " 1 " + unit;
    }
    Agreement agreement = Agreement.of(number, shown.value(), writing.words());
    return writing.phrases().say("quantity", number, unit, agreement);
  }

  private static String article(String noun) {
    boolean vowel = "aeiou".indexOf(noun.charAt(0)) >= 0 || noun.startsWith("hour");
    return vowel ? "an " : "a ";
  }
}
