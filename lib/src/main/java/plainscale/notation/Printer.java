package plainscale.notation;

import java.math.BigDecimal;
import plainscale.units.Superscripts;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * Expressions back to text that the parser reads as the same expression (in a sheet where no unit
 * symbol is also a name). Brackets stand only where they are needed.
 */
public final class Printer implements Expr.Visitor<String> {
  private static final Printer ONLY = new Printer();
  private static final int PLAIN_DIGITS = 15;

  /** Zeros after the decimal point from which a power of ten is used. */
  private static final int SMALL = 4;

  private Printer() {}

  /** The text of an expression. */
  public static String print(Expr expr) {
    return expr.accept(ONLY);
  }

  /** Binding strength: sums, products, signs, powers, what cannot be split. */
  private enum Level {
    SUM,
    PRODUCT,
    POWER,
    ATOM
  }

  private static Level level(Expr expr) {
    if (expr instanceof Expr.Binary binary) {
      return switch (binary.operator()) {
        case PLUS, MINUS -> Level.SUM;
        case TIMES, OVER -> Level.PRODUCT;
        case POWER -> Level.POWER;
      };
    }
    if (expr instanceof Expr.Negation) {
      return Level.SUM;
    }
    boolean measured =
        expr instanceof Expr.InUnits || (expr instanceof Expr.Literal l && l.unit().isPresent());
    return measured ? Level.POWER : Level.ATOM;
  }

  private static String above(Level least, Expr expr) {
    String text = print(expr);
    return level(expr).compareTo(least) >= 0 ? text : "(" + text + ")";
  }

  @Override
  public String literal(Expr.Literal literal) {
    return number(literal.value()) + literal.unit().map(Printer::unit).orElse("");
  }

  private static String number(BigDecimal value) {
    boolean plain =
        value.scale() >= 0
            && value.scale() - value.precision() < SMALL
            && value.precision() <= PLAIN_DIGITS;
    return plain ? value.toPlainString() : value.toString().replace("E+", "e").replace('E', 'e');
  }

  private static String unit(UnitOfMeasure unit) {
    String text = unit.text();
    if (text.equals("°")) {
      return text;
    }
    boolean simple = !text.isEmpty() && text.codePoints().allMatch(Printer::isUnitWord);
    return simple ? " " + text : " [" + bracketed(unit) + "]";
  }

  private static boolean isUnitWord(int c) {
    return UnitParser.isSymbolPart(c) || Superscripts.digit(c) >= 0;
  }

  private static String bracketed(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "1" : unit.text();
  }

  @Override
  public String name(Expr.Name name) {
    return name.text();
  }

  @Override
  public String negation(Expr.Negation negation) {
    return "-" + above(Level.POWER, negation.operand());
  }

  @Override
  public String binary(Expr.Binary binary) {
    Expr left = binary.left();
    Expr right = binary.right();
    return switch (binary.operator()) {
      case PLUS -> print(left) + " + " + unsigned(above(Level.PRODUCT, right));
      case MINUS -> print(left) + " - " + unsigned(above(Level.PRODUCT, right));
      case TIMES -> product(left, right);
      case OVER -> dividend(left, right) + "/" + divisor(right);
      case POWER -> above(Level.ATOM, left) + "^" + exponent(right);
    };
  }

  private static String exponent(Expr expr) {
    boolean negative =
        expr instanceof Expr.Negation n && Solidus.isPlainNumber(n.operand()); // x^-2
    return negative ? print(expr) : above(Level.ATOM, expr);
  }

  /** A quotient inside a product is bracketed, since nothing may follow a solidus. */
  private static String factor(Expr expr) {
    boolean quotient = expr instanceof Expr.Binary b && b.operator() == Expr.Operator.OVER;
    return quotient ? "(" + print(expr) + ")" : above(Level.PRODUCT, expr);
  }

  /** The first factor may keep its sign: {@code -a b} is read as {@code (-a) b}. */
  private static String leading(Expr expr) {
    return expr instanceof Expr.Negation ? print(expr) : factor(expr);
  }

  private static String second(Expr expr) {
    return isProduct(expr) ? "(" + print(expr) + ")" : unsigned(factor(expr));
  }

  private static String unsigned(String text) {
    return text.startsWith("-") ? "(" + text + ")" : text;
  }

  /**
   * A unit next to a solidus would run on into it, and in {@code x*2/3} the fraction would be a
   * factor.
   */
  private static String dividend(Expr expr, Expr divisor) {
    boolean fraction =
        isProduct(expr)
            && Solidus.isPlainNumber(lastFactor(expr))
            && Solidus.isPlainNumber(divisor);
    return fraction || hasUnit(expr) ? "(" + print(expr) + ")" : leading(expr);
  }

  private static boolean isProduct(Expr expr) {
    return expr instanceof Expr.Binary binary && binary.operator() == Expr.Operator.TIMES;
  }

  private static Expr lastFactor(Expr expr) {
    return isProduct(expr) ? ((Expr.Binary) expr).right() : expr;
  }

  private static String divisor(Expr expr) {
    return hasUnit(expr) ? "(" + print(expr) + ")" : above(Level.POWER, expr);
  }

  private static boolean hasUnit(Expr expr) {
    return expr instanceof Expr.Literal literal && literal.unit().isPresent();
  }

  /**
   * Each side is printed once: printing it again to look at its ends would double the work at every
   * level.
   */
  private static String product(Expr left, Expr right) {
    String second = second(right);
    boolean star = endsInNumber(left) || Character.isDigit(second.charAt(0));
    return leading(left) + (star ? "*" : " ") + second;
  }

  /** A name right after a number could be its unit. */
  private static boolean endsInNumber(Expr expr) {
    return expr instanceof Expr.Negation negation
        ? endsInNumber(negation.operand())
        : lastFactor(expr) instanceof Expr.Literal;
  }

  @Override
  public String call(Expr.Call call) {
    return call.function().text() + "(" + print(call.argument()) + ")";
  }

  @Override
  public String inUnits(Expr.InUnits inUnits) {
    Expr operand = inUnits.operand();
    // Without brackets the unit would be the number's own, and the figures as written would count.
    boolean number = Solidus.isPlainNumber(operand);
    String text = number ? "(" + print(operand) + ")" : above(Level.ATOM, operand);
    return text + " [" + bracketed(inUnits.unit()) + "]";
  }

  @Override
  public String conversion(Expr.Conversion conversion) {
    return "(" + print(conversion.operand()) + " in " + bracketed(conversion.unit()) + ")";
  }
}
