package plainscale.render;

import java.util.List;
import java.util.stream.Collectors;
import plainscale.units.UnitOfMeasure;

/**
 * How mathematics is written in one markup language. Every method gives a fragment to be put into
 * others.
 */
interface MathMarkup {
  /** Digits with their separators. */
  String number(String digits);

  /** A quantity's name in one form; what follows {@code _} is a subscript. */
  String name(String name);

  /** The symbol of one unit, upright. */
  String symbol(String symbol);

  /** The solidus of a unit. */
  String solidus();

  /** A unit, upright, with one solidus at most: kg·m/s², 1/mol, N·m²/C². */
  default String unit(UnitOfMeasure unit) {
    String above = unitSide(unit, 1);
    String below = unitSide(unit, -1);
    if (below.isEmpty()) {
      return above;
    }
    long factorsBelow = unit.factors().stream().filter(f -> f.exponent() < 0).count();
    String denominator = factorsBelow > 1 ? brackets(below) : below;
    return row(List.of(above.isEmpty() ? number("1") : above, solidus(), denominator));
  }

  private String unitSide(UnitOfMeasure unit, int sign) {
    return unit.factors().stream()
        .filter(f -> f.exponent() * sign > 0)
        .map(f -> raised(symbol(f.symbol().text()), Math.abs(f.exponent())))
        .collect(Collectors.joining(gap()));
  }

  private String raised(String symbol, int exponent) {
    return exponent == 1 ? symbol : power(symbol, number(Integer.toString(exponent)));
  }

  /** Fragments side by side. */
  String row(List<String> parts);

  /** A sign between two fragments: {@code = + − · ± ×}. */
  String sign(String sign);

  /** The thin space that multiplies, and that parts a value from its unit. */
  String gap();

  /** Numerator over denominator. */
  String fraction(String above, String below);

  /** A base with an exponent. */
  String power(String base, String exponent);

  /** The square root, or the third. */
  String root(String of, int degree);

  /** In round brackets. */
  String brackets(String inner);

  /** A function's name, upright. */
  String function(String name);
}
