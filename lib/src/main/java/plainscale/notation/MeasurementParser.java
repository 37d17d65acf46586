package plainscale.notation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Distribution;
import plainscale.units.UnitOfMeasure;

/**
 * The right side of a given: readings, as {@code 5.007, 4.994, 5.005 V}, or one value, {@code 2.70
 * g}, {@code 2.70 ± 0.05 g}, {@code (2.70 ± 0.05) g}, {@code 2.70 g ± 0.05 g}, {@code 2.70(5) g},
 * {@code 14.0 cm ± 2 %}; {@code +-} and {@code +/-} stand for ±. The ± is a standard uncertainty
 * (JCGM 100, 7.2.4 asks to say so; the guide does), unless the word {@code rectangular} or {@code
 * triangular} follows: then it is the half-width of the limits (4.3.7 and 4.3.9).
 */
final class MeasurementParser {
  private static final Map<String, Distribution> DISTRIBUTIONS =
      Map.of(
          "rectangular", Distribution.RECTANGULAR,
          "triangular", Distribution.TRIANGULAR);

  private final Tokens tokens;
  private final UnitReader units;
  private boolean limits;

  MeasurementParser(Tokens tokens, UnitReader units) {
    this.tokens = tokens;
    this.units = units;
  }

  Measurement measurement() {
    boolean bracket = tokens.peek().is("(");
    Measurement measurement = bracket ? bracketed() : bare();
    Token word = tokens.peek();
    Distribution distribution = DISTRIBUTIONS.get(word.text());
    if (distribution == null) {
      return measurement;
    }
    if (!limits) {
      String sentence = "“%s” tells how ± is meant, and here is no ±.".formatted(word.text());
      throw tokens.fault(sentence, word.span(), "2.70 ± 0.05 g " + word.text());
    }
    tokens.next();
    return new Measurement(
        measurement.value(),
        measurement.uncertain(),
        measurement.unit(),
        false,
        distribution,
        List.of());
  }

  private Measurement bare() {
    Token number = tokens.peek().is("-") ? tokens.peek(1) : tokens.peek();
    Span from = tokens.peek().span();
    BigDecimal value = unnoted();
    BigDecimal concise = number.type() == Token.Type.NUMBER ? number.number().concise() : null;
    if (concise != null) {
      tokens.part(Line.What.CONCISE, from);
      return new Measurement(value, concise, unit(), false);
    }
    tokens.part(Line.What.VALUE, from);
    if (tokens.peek().is(",")) {
      return readings(value);
    }
    if (plusMinus()) {
      BigDecimal uncertainty = uncertainty();
      refusePercent(value);
      return new Measurement(value, uncertainty, unit(), false);
    }
    UnitOfMeasure unit = unit();
    if (plusMinus()) {
      return new Measurement(value, uncertaintyAfterUnit(value, unit), unit, false);
    }
    boolean whole = number.type() == Token.Type.NUMBER && number.number().whole();
    boolean count = whole && unit.equals(UnitOfMeasure.ONE);
    return new Measurement(value, null, unit, count);
  }

  private BigDecimal signed() {
    Span from = tokens.peek().span();
    BigDecimal value = unnoted();
    tokens.part(Line.What.VALUE, from);
    return value;
  }

  private BigDecimal unnoted() {
    BigDecimal sign = tokens.accept("-") ? BigDecimal.ONE.negate() : BigDecimal.ONE;
    return amount(Open.Asked.VALUE).multiply(sign);
  }

  /** What follows ±. */
  private BigDecimal uncertainty() {
    Span from = tokens.peek().span();
    BigDecimal uncertainty = amount(Open.Asked.UNCERTAINTY);
    tokens.part(Line.What.UNCERTAINTY, from);
    return uncertainty;
  }

  /** A number; for a blank another one stands in, which is never used. */
  private BigDecimal amount(Open.Asked asked) {
    return tokens.acceptBlank(asked) ? BigDecimal.ONE : number().number().value();
  }

  /** Two readings at least, since the first comma has been seen; their unit stands at the end. */
  private Measurement readings(BigDecimal first) {
    List<BigDecimal> readings = new ArrayList<>(List.of(first));
    while (tokens.accept(",")) {
      readings.add(reading());
    }
    if (plusMinus()) {
      throw tokens.fault(
          "Readings have no ±: their scatter tells how uncertain the mean is.",
          tokens.last(),
          "5.007, 4.994, 5.005 V");
    }
    return new Measurement(first, null, unit(), false, Distribution.NORMAL, readings);
  }

  private BigDecimal reading() {
    if (tokens.acceptBlank(Open.Asked.READING)) {
      return BigDecimal.ONE;
    }
    Token next = tokens.peek().is("-") ? tokens.peek(1) : tokens.peek();
    if (next.type() != Token.Type.NUMBER || next.number().concise() != null) {
      throw tokens.fault(
          "After the comma comes another reading, a plain number.",
          next.span(),
          "5.007, 4.994, 5.005 V");
    }
    return signed();
  }

  private Measurement bracketed() {
    tokens.next();
    BigDecimal value = signed();
    if (!plusMinus()) {
      throw tokens.fault(
          "A bracket in a given holds a value and its uncertainty.",
          tokens.peek().span(),
          "(2.70 ± 0.05) g");
    }
    BigDecimal uncertainty = uncertainty();
    if (!tokens.accept(")")) {
      throw tokens.unexpected("a closing bracket belongs here");
    }
    return new Measurement(value, uncertainty, unit(), false);
  }

  private BigDecimal uncertaintyAfterUnit(BigDecimal value, UnitOfMeasure unit) {
    Span number = tokens.peek().span();
    BigDecimal amount = uncertainty();
    Span from = tokens.peek().span();
    UnitOfMeasure other = unit();
    if (other.text().equals("%") && !unit.text().equals("%")) {
      return value.abs().multiply(amount).movePointLeft(2).round(MathContext.DECIMAL128);
    }
    if (!other.kind().equals(unit.kind()) || unit.isScale() || other.isScale()) {
      throw tokens.fault(
          Problem.Kind.UNIT,
          "Value and uncertainty are written in units of the same kind.",
          from,
          List.of("… ± " + tokens.text(number) + " " + unit.text()));
    }
    return other.equals(unit)
        ? amount
        : amount
            .multiply(other.factor())
            .divide(unit.factor(), MathContext.DECIMAL64)
            .stripTrailingZeros();
  }

  private void refusePercent(BigDecimal value) {
    if (tokens.peek().isWord("%")) {
      throw tokens.fault(
          "A relative uncertainty follows the unit.",
          tokens.peek().span(),
          value.toPlainString() + " [unit] ± … %");
    }
  }

  /** Steps over ±, +- or +/-. */
  private boolean plusMinus() {
    boolean there = tokens.accept("±") || signs();
    limits |= there;
    return there;
  }

  private boolean signs() {
    if (!tokens.peek().is("+")) {
      return false;
    }
    int sign = tokens.peek(1).is("/") ? 2 : 1;
    if (!tokens.peek(sign).is("-")) {
      return false;
    }
    for (int i = 0; i <= sign; i++) {
      tokens.next();
    }
    return true;
  }

  private Token number() {
    if (tokens.peek().type() != Token.Type.NUMBER) {
      throw notMeasured();
    }
    return tokens.next();
  }

  /** {@code given x = 3 + 4}: what goes on after the number is a formula. */
  void refuseFormula() {
    if (tokens.peek().type() == Token.Type.SYMBOL) {
      throw formula();
    }
  }

  private ProblemException notMeasured() {
    boolean formula = tokens.peek().type() == Token.Type.NAME;
    return formula ? formula() : tokens.unexpected("a measured number belongs here");
  }

  private ProblemException formula() {
    return tokens.fault(
        "A given is a measured number; what is computed is defined without the word given.",
        tokens.peek().span(),
        "name = formula");
  }

  private UnitOfMeasure unit() {
    @Nullable Token next = tokens.peek();
    boolean none =
        tokens.atEnd()
            || next.type() == Token.Type.STRING
            || next.is("±")
            || next.is("+")
            || DISTRIBUTIONS.containsKey(next.text());
    if (none) {
      return UnitOfMeasure.ONE;
    }
    if (next.is("[")) {
      return units.bracketed();
    }
    boolean times = next.isWord("x") || next.is("*");
    if (times && tokens.peek(1).type() == Token.Type.NUMBER && tokens.peek(1).text().equals("10")) {
      throw tokens.fault(
          "A power of ten is written with × or with e.", next.span(), "3×10^8", "3e8");
    }
    if (next.is("*") || next.is("/") || next.is("-") || next.is("^")) {
      throw formula();
    }
    if (next.type() == Token.Type.NUMBER && next.text().matches("\\d{3}(\\.\\d+)?")) {
      throw tokens.fault(
          "A number is written without spaces.", next.span(), "1000 instead of 1 000");
    }
    return units.untilEnd(List.copyOf(DISTRIBUTIONS.keySet()));
  }
}
