package plainscale.notation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.ElementaryFunction;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Expressions such as a parser can give, at random, with or without units. */
final class RandomExpressions {
  /** None of them is a unit. */
  static final List<String> NAMES = List.of("x", "y", "θ", "ε_0", "q_1");

  private static final Span NOWHERE = new Span(0, 0);
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "2",
          "3",
          "10",
          "0.5",
          "2.0",
          "2.70",
          "1E-10",
          "6.7E+3",
          "0.00001",
          "123456789");
  private static final List<UnitOfMeasure> UNITS =
      List.of(
              "m", "kg", "s", "m/s²", "N·m", "°", "km/h", "°C", "%", "m²", "1/mol", "[lb_av]",
              "kg.m/s2", "1")
          .stream()
          .map(UnitParser::parse)
          .toList();

  private final Random random;
  private final boolean units;

  RandomExpressions(Random random, boolean units) {
    this.random = random;
    this.units = units;
  }

  Expr next(int depth) {
    int kind = random.nextInt(depth <= 0 ? 4 : units ? 16 : 14);
    return switch (kind) {
      case 0, 1 -> literal();
      case 2, 3 -> new Expr.Name(NOWHERE, one(NAMES));
      case 4 -> new Expr.Negation(NOWHERE, next(depth - 1));
      case 5 -> new Expr.Call(NOWHERE, one(List.of(ElementaryFunction.values())), next(depth - 1));
      case 14 -> new Expr.InUnits(NOWHERE, next(depth - 1), one(UNITS));
      case 15 -> new Expr.Conversion(NOWHERE, next(depth - 1), one(UNITS));
      default -> binary(depth);
    };
  }

  private Expr binary(int depth) {
    Expr.Operator operator = one(List.of(Expr.Operator.values()));
    Expr right =
        operator == Expr.Operator.POWER && random.nextBoolean() ? raised() : next(depth - 1);
    return new Expr.Binary(NOWHERE, operator, next(depth - 1), right, NOWHERE);
  }

  /** The raised exponents ² and ⁻¹ are plain numbers, which may be negative. */
  private Expr raised() {
    BigDecimal value = BigDecimal.valueOf(random.nextInt(5) - 2);
    return new Expr.Literal(NOWHERE, value, null, true);
  }

  private Expr literal() {
    String text = one(NUMBERS);
    BigDecimal value = new BigDecimal(text);
    @Nullable UnitOfMeasure unit = units && random.nextInt(3) == 0 ? one(UNITS) : null;
    boolean whole = text.chars().allMatch(Character::isDigit);
    return new Expr.Literal(NOWHERE, value, unit, whole || unit == null);
  }

  private <T> T one(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
