package plainscale.render;

import java.util.List;
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

  /** A unit, upright. */
  String unit(UnitOfMeasure unit);

  /** Words, upright. */
  String words(String words);

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
