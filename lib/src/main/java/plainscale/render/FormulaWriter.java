package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plainscale.algebra.Equation;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;

/**
 * An expression in two-dimensional notation, in whichever markup: quotients as fractions, roots as
 * roots.
 */
final class FormulaWriter implements Expr.Visitor<String> {
  private static final int PLAIN = 6;

  private final MathMarkup markup;
  private final DigitStyle style;

  FormulaWriter(MathMarkup markup, DigitStyle style) {
    this.markup = markup;
    this.style = style;
  }

  String write(Equation equation) {
    return markup.row(List.of(write(equation.left()), markup.sign("="), write(equation.right())));
  }

  String write(Expr expr) {
    return expr.accept(this);
  }

  @Override
  public String literal(Expr.Literal literal) {
    List<String> parts = new ArrayList<>();
    BigDecimal value = literal.value();
    int exponent = value.precision() - value.scale() - 1;
    boolean plain = value.signum() == 0 || (value.scale() >= 0 && Math.abs(exponent) <= PLAIN);
    if (plain) {
      parts.add(markup.number(Digits.of(value, style).text()));
    } else {
      parts.add(markup.number(Digits.of(value.scaleByPowerOfTen(-exponent), style).text()));
      parts.add(markup.sign("×"));
      parts.add(markup.power(markup.number("10"), markup.number(minus(exponent))));
    }
    literal.unit().ifPresent(unit -> parts.addAll(List.of(markup.gap(), markup.unit(unit))));
    return parts.size() == 1 ? parts.get(0) : markup.row(parts);
  }

  /** An integer with a true minus sign. */
  static String minus(int number) {
    return Integer.toString(number).replace('-', '−');
  }

  @Override
  public String name(Expr.Name name) {
    return markup.name(name.text());
  }

  @Override
  public String negation(Expr.Negation negation) {
    return markup.row(List.of(markup.sign("−"), bracketedSum(negation.operand())));
  }

  @Override
  public String binary(Expr.Binary binary) {
    Expr left = binary.left();
    Expr right = binary.right();
    return switch (binary.operator()) {
      case PLUS -> markup.row(List.of(write(left), markup.sign("+"), write(right)));
      case MINUS -> markup.row(List.of(write(left), markup.sign("−"), bracketedSum(right)));
      case TIMES ->
          markup.row(List.of(bracketedSum(left), times(left, right), bracketedSum(right)));
      case OVER -> markup.fraction(write(left), write(right));
      case POWER -> markup.power(base(left), write(right));
    };
  }

  private String times(Expr left, Expr right) {
    boolean dot =
        startsWithDigit(right) || (left instanceof Expr.Literal l && l.unit().isPresent());
    return dot ? markup.sign("·") : markup.gap();
  }

  private static boolean startsWithDigit(Expr expr) {
    if (expr instanceof Expr.Binary binary && binary.operator() != Expr.Operator.OVER) {
      return startsWithDigit(binary.left());
    }
    return expr instanceof Expr.Literal;
  }

  private String bracketedSum(Expr expr) {
    boolean sum =
        expr instanceof Expr.Negation
            || (expr instanceof Expr.Binary b
                && (b.operator() == Expr.Operator.PLUS || b.operator() == Expr.Operator.MINUS));
    return sum ? markup.brackets(write(expr)) : write(expr);
  }

  private String base(Expr expr) {
    boolean simple =
        expr instanceof Expr.Name || (expr instanceof Expr.Literal l && l.unit().isEmpty());
    return simple ? write(expr) : markup.brackets(write(expr));
  }

  @Override
  public String call(Expr.Call call) {
    String argument = write(call.argument());
    if (call.function() == ElementaryFunction.SQRT) {
      return markup.root(argument, 2);
    }
    if (call.function() == ElementaryFunction.CBRT) {
      return markup.root(argument, 3);
    }
    return markup.row(List.of(markup.function(call.function().text()), markup.brackets(argument)));
  }

  @Override
  public String inUnits(Expr.InUnits inUnits) {
    return markup.row(
        List.of(
            base(inUnits.operand()),
            markup.sign("·"),
            markup.number("1"),
            markup.gap(),
            markup.unit(inUnits.unit())));
  }

  @Override
  public String conversion(Expr.Conversion conversion) {
    return bracketedSum(conversion.operand());
  }
}
