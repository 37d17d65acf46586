package plainscale.render;

import java.util.function.UnaryOperator;
import plainscale.algebra.Equation;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/**
 * Single pieces of mathematics as MathML, for pages that are put together from pieces: {@code
 * PageMath.unit(unit)}.
 */
public final class PageMath {
  private static final MathMarkup MARKUP = Medium.PAGE.markup();
  private static final UnaryOperator<String> MATH = Medium.PAGE.mathematics()::apply;

  private PageMath() {}

  /** An equation. */
  public static String of(Equation equation, Writing writing) {
    return MATH.apply(new FormulaWriter(MARKUP, writing.digits()).write(equation));
  }

  /** A formula. */
  public static String of(Expr formula, Writing writing) {
    return MATH.apply(new FormulaWriter(MARKUP, writing.digits()).write(formula));
  }

  /** A quantity's name. */
  public static String name(String name) {
    return MATH.apply(MARKUP.name(name));
  }

  /** A unit; nothing for the unit one. */
  public static String unit(UnitOfMeasure unit) {
    return unit.equals(UnitOfMeasure.ONE) ? "" : MATH.apply(MARKUP.unit(unit));
  }

  /** A value with its uncertainty, power of ten and unit. */
  public static String value(Shown shown, Writing writing) {
    return MATH.apply(new ValueLine(MARKUP, writing).value(shown));
  }
}
