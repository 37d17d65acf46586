package plainscale.notation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * The right side of a given: {@code 2.70 g}, {@code 2.70 ± 0.05 g}, {@code (2.70 ± 0.05) g}, {@code
 * 2.70 g ± 0.05 g}, {@code 2.70(5) g}, {@code 14.0 cm ± 2 %}; {@code +-} and {@code +/-} stand for
 * ±. The ± is a standard uncertainty (JCGM 100, 7.2.4 asks to say so; the guide does).
 */
final class MeasurementParser {
  private final Tokens tokens;
  private final UnitReader units;

  MeasurementParser(Tokens tokens, UnitReader units) {
    this.tokens = tokens;
    this.units = units;
  }

  Statement.Measurement measurement() {
    boolean bracket = tokens.accept("(");
    BigDecimal sign = tokens.accept("-") ? BigDecimal.ONE.negate() : BigDecimal.ONE;
    Token number = number();
    BigDecimal value = number.number().value().multiply(sign);
    BigDecimal concise = number.number().concise();
    if (bracket) {
      return bracketed(value);
    }
    if (concise != null) {
      return new Statement.Measurement(value, concise, unit(), false);
    }
    if (plusMinus()) {
      BigDecimal uncertainty = number().number().value();
      refusePercent(value);
      return new Statement.Measurement(value, uncertainty, unit(), false);
    }
    UnitOfMeasure unit = unit();
    if (plusMinus()) {
      return new Statement.Measurement(value, uncertaintyAfterUnit(value, unit), unit, false);
    }
    boolean count = number.number().whole() && unit.equals(UnitOfMeasure.ONE);
    return new Statement.Measurement(value, null, unit, count);
  }

  private Statement.Measurement bracketed(BigDecimal value) {
    if (!plusMinus()) {
      throw tokens.fault(
          "A bracket in a given holds a value and its uncertainty.",
          tokens.peek().span(),
          "(2.70 ± 0.05) g");
    }
    BigDecimal uncertainty = number().number().value();
    if (!tokens.accept(")")) {
      throw tokens.unexpected("a closing bracket belongs here");
    }
    return new Statement.Measurement(value, uncertainty, unit(), false);
  }

  private BigDecimal uncertaintyAfterUnit(BigDecimal value, UnitOfMeasure unit) {
    Token number = number();
    BigDecimal amount = number.number().value();
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
          List.of("… ± " + number.text() + " " + unit.text()));
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
    if (tokens.accept("±")) {
      return true;
    }
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
        tokens.atEnd() || next.type() == Token.Type.STRING || next.is("±") || next.is("+");
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
    return units.untilEnd(List.of());
  }
}
