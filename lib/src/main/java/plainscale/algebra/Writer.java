package plainscale.algebra;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;

/**
 * The normal form back to an expression as it is written on a board: numbers first, then the names
 * in the order in which the relations have them; negative exponents below a line; roots last.
 */
final class Writer {
  private static final Span NOWHERE = new Span(0, 0);
  private static final int LARGEST_PLAIN_DENOMINATOR = 20;

  private final List<String> order;

  /** A writer that puts names in this order, others after them. */
  Writer(List<String> order) {
    this.order = List.copyOf(order);
  }

  String text(Sum sum) {
    return Printer.print(write(sum));
  }

  String text(Term term) {
    return text(Sum.of(term));
  }

  Equation equation(Sum left, Sum right) {
    return new Equation(write(left), write(right));
  }

  Expr write(Sum sum) {
    if (sum.isZero()) {
      return number(BigInteger.ZERO);
    }
    List<Term> terms = new ArrayList<>(sum.terms());
    terms.sort(
        Comparator.comparing((Term t) -> t.coefficient().doubleValue() < 0)
            .thenComparing(this::place)
            .thenComparing(Term::key));
    Expr result = write(terms.get(0));
    for (Term term : terms.subList(1, terms.size())) {
      boolean minus = term.coefficient().doubleValue() < 0;
      Expr next = write(minus ? term.times(BigFraction.MINUS_ONE) : term);
      result = binary(minus ? Expr.Operator.MINUS : Expr.Operator.PLUS, result, next);
    }
    return result;
  }

  private int place(Term term) {
    return term.factors().keySet().stream().mapToInt(this::place).min().orElse(Integer.MAX_VALUE);
  }

  private int place(Atom atom) {
    return atom.names().stream().mapToInt(this::place).min().orElse(-1);
  }

  private int place(String name) {
    int index = order.indexOf(name);
    return index < 0 ? order.size() : index;
  }

  private Expr write(Term written) {
    Term term = Signs.tidy(written);
    if (term.coefficient().doubleValue() < 0) {
      return negative(term);
    }
    Fraction fraction = new Fraction();
    Term tidy = rootsBelow(term);
    SortedMap<BigInteger, Term> roots = new TreeMap<>();
    for (Atom atom : sorted(tidy)) {
      BigFraction exponent = tidy.exponent(atom);
      if (isHighRoot(atom, exponent)) {
        fraction.add(atom, exponent);
        continue;
      }
      int whole = exponent.intValue(); // towards zero: x^(3/2) is x sqrt(x)
      BigFraction rest = exponent.subtract(whole);
      fraction.add(atom, whole);
      if (!rest.equals(BigFraction.ZERO)) {
        BigInteger degree = rest.getDenominator();
        Term under = Term.of(atom, rest.multiply(degree));
        roots.merge(degree, under, Term::times);
      }
    }
    roots.forEach((degree, under) -> fraction.add(degree, under));
    return fraction.of(tidy.coefficient());
  }

  /** (z² + d²)^(3/2) is written so. */
  private static boolean isHighRoot(Atom atom, BigFraction exponent) {
    boolean root = !Rationals.isWhole(exponent);
    return root && atom instanceof Atom.Group && Math.abs(exponent.doubleValue()) > 1;
  }

  private Expr negative(Term term) {
    return negated(write(term.times(BigFraction.MINUS_ONE)));
  }

  /** The sign stands above the line and before the first factor, unless that is a number. */
  private static Expr negated(Expr expr) {
    if (expr instanceof Expr.Binary b) {
      boolean inside =
          b.operator() == Expr.Operator.OVER
              || (b.operator() == Expr.Operator.TIMES && !(first(b) instanceof Expr.Literal));
      return inside
          ? binary(b.operator(), negated(b.left()), b.right())
          : new Expr.Negation(NOWHERE, expr);
    }
    return new Expr.Negation(NOWHERE, expr);
  }

  private static Expr first(Expr expr) {
    boolean product = expr instanceof Expr.Binary b && b.operator() == Expr.Operator.TIMES;
    return product ? first(((Expr.Binary) expr).left()) : expr;
  }

  /** sqrt(2)/2 becomes sqrt(1/2), so that what is under one root stays together. */
  private static Term rootsBelow(Term term) {
    Term result = term;
    for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
      if (factor.getKey() instanceof Atom.Whole whole
          && term.coefficient().getDenominator().mod(whole.number()).signum() == 0) {
        SortedMap<Atom, BigFraction> factors = new TreeMap<>(result.factors());
        factors.put(whole, factor.getValue().subtract(1));
        BigFraction number = result.coefficient().multiply(whole.number());
        result = new Term(number, factors);
      }
    }
    return result;
  }

  private List<Atom> sorted(Term term) {
    List<Atom> atoms = new ArrayList<>(term.factors().keySet());
    atoms.sort(
        Comparator.comparingInt(Writer::rank).thenComparing(this::place).thenComparing(Atom::key));
    return atoms;
  }

  private static int rank(Atom atom) {
    if (atom instanceof Atom.Whole || atom instanceof Atom.Constant) {
      return 0;
    }
    return atom instanceof Atom.Symbol ? 1 : atom instanceof Atom.Group ? 3 : 2;
  }

  private Expr root(BigInteger degree, Term under) {
    Expr inner = write(Sum.of(under));
    if (degree.equals(BigInteger.TWO)) {
      return new Expr.Call(NOWHERE, ElementaryFunction.SQRT, inner);
    }
    if (degree.equals(BigInteger.valueOf(3))) {
      return new Expr.Call(NOWHERE, ElementaryFunction.CBRT, inner);
    }
    Expr exponent = binary(Expr.Operator.OVER, number(BigInteger.ONE), number(degree));
    return binary(Expr.Operator.POWER, inner, exponent);
  }

  private Expr write(Atom atom) {
    if (atom instanceof Atom.Symbol symbol) {
      return new Expr.Name(NOWHERE, symbol.name());
    }
    if (atom instanceof Atom.Constant constant) {
      return constant.written();
    }
    if (atom instanceof Atom.Whole whole) {
      return number(whole.number());
    }
    if (atom instanceof Atom.Applied applied) {
      return new Expr.Call(NOWHERE, applied.function(), write(applied.argument()));
    }
    if (atom instanceof Atom.Exponential e) {
      return binary(Expr.Operator.POWER, write(e.base()), write(e.exponent()));
    }
    return write(((Atom.Group) atom).sum());
  }

  private static Expr number(BigInteger number) {
    return new Expr.Literal(NOWHERE, new BigDecimal(number), null, true);
  }

  private static Expr binary(Expr.Operator operator, Expr left, Expr right) {
    return new Expr.Binary(NOWHERE, operator, left, right, NOWHERE);
  }

  /** What stands above and below the line. */
  private final class Fraction {
    private final List<Expr> above = new ArrayList<>();
    private final List<Expr> below = new ArrayList<>();

    void add(Atom atom, int exponent) {
      if (exponent == 0) {
        return;
      }
      Expr base = write(atom);
      int size = Math.abs(exponent);
      Expr power =
          size == 1 ? base : binary(Expr.Operator.POWER, base, number(BigInteger.valueOf(size)));
      (exponent > 0 ? above : below).add(power);
    }

    void add(Atom atom, BigFraction exponent) {
      Expr numerator = number(exponent.abs().getNumerator());
      Expr fraction = binary(Expr.Operator.OVER, numerator, number(exponent.getDenominator()));
      Expr power = binary(Expr.Operator.POWER, write(atom), fraction);
      (exponent.doubleValue() > 0 ? above : below).add(power);
    }

    void add(BigInteger degree, Term under) {
      boolean reciprocal =
          under.factors().values().stream().allMatch(exponent -> exponent.doubleValue() < 0);
      Term inside = reciprocal ? under.power(BigFraction.MINUS_ONE) : under;
      (reciprocal ? below : above).add(root(degree, inside));
    }

    Expr of(BigFraction coefficient) {
      BigInteger numerator = coefficient.getNumerator();
      BigInteger denominator = coefficient.getDenominator();
      boolean plain = denominator.bitLength() <= Integer.SIZE && isSmall(denominator);
      List<Expr> over = new ArrayList<>(above);
      List<Expr> under = new ArrayList<>(below);
      if (!plain && isDecimal(denominator)) {
        BigDecimal decimal = new BigDecimal(numerator).divide(new BigDecimal(denominator));
        over.add(0, new Expr.Literal(NOWHERE, decimal, null, true));
      } else {
        if (!numerator.equals(BigInteger.ONE) || over.isEmpty()) {
          over.add(0, number(numerator));
        }
        if (!denominator.equals(BigInteger.ONE)) {
          under.add(0, number(denominator));
        }
      }
      return under.isEmpty()
          ? product(over)
          : binary(Expr.Operator.OVER, product(over), product(under));
    }

    private boolean isSmall(BigInteger denominator) {
      return denominator.intValue() <= LARGEST_PLAIN_DENOMINATOR;
    }

    /** Whether a fraction with that denominator ends as a decimal. */
    private boolean isDecimal(BigInteger denominator) {
      BigInteger power = BigInteger.TEN.pow(15);
      return power.mod(denominator).signum() == 0;
    }

    private Expr product(List<Expr> factors) {
      return factors.stream().reduce((a, b) -> binary(Expr.Operator.TIMES, a, b)).orElseThrow();
    }
  }
}
