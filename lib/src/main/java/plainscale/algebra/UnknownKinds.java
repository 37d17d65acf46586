package plainscale.algebra;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.fraction.Fraction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;
import plainscale.units.Exponents;
import plainscale.units.Kind;

/**
 * The kinds that unknowns must have for the units of some equations to agree: in {@code m g = k x}
 * with a mass m, an acceleration g and a length x, k is a force by length. Each equation, each sum
 * and each argument of a function gives linear conditions on the exponents of the base units; they
 * are solved by least squares and must then hold. A zero that stands as a side or as a term has any
 * unit.
 */
public final class UnknownKinds {
  private static final double HOLDS = 1e-9;
  private static final int LARGEST_DENOMINATOR = 6;

  private final Function<String, Optional<Kind>> known;
  private final Function<String, OptionalDouble> numbers;
  private final Set<String> unknowns = new LinkedHashSet<>();
  private final List<Condition> conditions = new ArrayList<>();

  private UnknownKinds(
      Function<String, Optional<Kind>> known, Function<String, OptionalDouble> numbers) {
    this.known = known;
    this.numbers = numbers;
  }

  /**
   * What was found: the kinds of those unknowns that have no choice, and the first equation whose
   * units cannot agree, counted from 0.
   */
  public record Found(Map<String, Kind> kinds, Optional<Integer> disagreement) {}

  /** Exponents of base units, and of the unknowns' own kinds. */
  private record Exponent(RealVector base, Map<String, Double> unknown) {
    static final Exponent NONE = new Exponent(new ArrayRealVector(Exponents.BASES), Map.of());

    Exponent plus(Exponent other, double factor) {
      Map<String, Double> names = new LinkedHashMap<>(unknown);
      other.unknown.forEach((name, e) -> names.merge(name, factor * e, Double::sum));
      return new Exponent(base.combine(1, factor, other.base), names);
    }
  }

  /** Exponents that must all be zero, and the equation that says so. */
  private record Condition(Exponent exponent, int equation) {}

  /** The kinds of the unknown names in the equations. */
  public static Found of(List<Equation> equations, Function<String, Optional<Kind>> known) {
    return of(equations, known, name -> OptionalDouble.empty());
  }

  /** The same where {@code numbers} has the values of names that may be exponents. */
  public static Found of(
      List<Equation> equations,
      Function<String, Optional<Kind>> known,
      Function<String, OptionalDouble> numbers) {
    UnknownKinds kinds = new UnknownKinds(known, numbers);
    for (int i = 0; i < equations.size(); i++) {
      kinds.new Walk(i).same(equations.get(i).left(), equations.get(i).right());
    }
    return kinds.solved();
  }

  private void require(Exponent exponent, int equation) {
    conditions.add(new Condition(exponent, equation));
  }

  private Found solved() {
    List<String> names = List.copyOf(unknowns);
    if (names.isEmpty()) {
      return new Found(Map.of(), disagreement(names, new Array2DRowRealMatrix(1, Exponents.BASES)));
    }
    SingularValueDecomposition svd = new SingularValueDecomposition(coefficients(names));
    RealMatrix solution = svd.getSolver().solve(constants());
    Map<String, Kind> kinds = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      if (isSettled(svd, i)) {
        kinds.put(names.get(i), Exponents.kind(fractions(solution.getRow(i))));
      }
    }
    return new Found(kinds, disagreement(names, solution));
  }

  /**
   * Whether the conditions leave an unknown no choice, though they may leave others one: its axis
   * then lies in the space that their rows span.
   */
  private static boolean isSettled(SingularValueDecomposition svd, int unknown) {
    double within = 0;
    for (int j = 0; j < svd.getRank(); j++) {
      within += Math.pow(svd.getV().getEntry(unknown, j), 2);
    }
    return Math.abs(within - 1) < HOLDS;
  }

  private RealMatrix coefficients(List<String> names) {
    RealMatrix matrix = new Array2DRowRealMatrix(conditions.size(), names.size());
    for (int row = 0; row < conditions.size(); row++) {
      for (int column = 0; column < names.size(); column++) {
        Map<String, Double> unknown = conditions.get(row).exponent().unknown();
        matrix.setEntry(row, column, unknown.getOrDefault(names.get(column), 0.0));
      }
    }
    return matrix;
  }

  private RealMatrix constants() {
    RealMatrix matrix = new Array2DRowRealMatrix(conditions.size(), Exponents.BASES);
    for (int row = 0; row < conditions.size(); row++) {
      for (int base = 0; base < Exponents.BASES; base++) {
        matrix.setEntry(row, base, -conditions.get(row).exponent().base().getEntry(base));
      }
    }
    return matrix;
  }

  private Optional<Integer> disagreement(List<String> names, RealMatrix solution) {
    for (Condition condition : conditions) {
      for (int base = 0; base < Exponents.BASES; base++) {
        double sum = condition.exponent().base().getEntry(base);
        for (int i = 0; i < names.size(); i++) {
          double factor = condition.exponent().unknown().getOrDefault(names.get(i), 0.0);
          sum += factor * solution.getEntry(i, base);
        }
        if (Math.abs(sum) > HOLDS) {
          return Optional.of(condition.equation());
        }
      }
    }
    return Optional.empty();
  }

  private static List<Fraction> fractions(double[] exponents) {
    List<Fraction> fractions = new ArrayList<>();
    for (double exponent : exponents) {
      fractions.add(new Fraction(exponent, LARGEST_DENOMINATOR));
    }
    return fractions;
  }

  /** The exponents of an expression of one equation. */
  private final class Walk implements Expr.Visitor<Exponent> {
    private final int equation;

    Walk(int equation) {
      this.equation = equation;
    }

    @Override
    public Exponent literal(Expr.Literal literal) {
      return literal.unit().map(unit -> of(unit.kind())).orElse(Exponent.NONE);
    }

    private Exponent of(Kind kind) {
      return new Exponent(new ArrayRealVector(Exponents.of(kind)), Map.of());
    }

    @Override
    public Exponent name(Expr.Name name) {
      Optional<Kind> kind = known.apply(name.text());
      if (kind.isPresent()) {
        return of(kind.get());
      }
      unknowns.add(name.text());
      return new Exponent(Exponent.NONE.base(), Map.of(name.text(), 1.0));
    }

    @Override
    public Exponent negation(Expr.Negation negation) {
      return negation.operand().accept(this);
    }

    @Override
    public Exponent binary(Expr.Binary binary) {
      Expr left = binary.left();
      Expr right = binary.right();
      return switch (binary.operator()) {
        case TIMES -> left.accept(this).plus(right.accept(this), 1);
        case OVER -> left.accept(this).plus(right.accept(this), -1);
        case PLUS, MINUS -> same(left, right);
        case POWER -> power(left.accept(this), right.accept(this), right);
      };
    }

    /** What stands on both sides of =, + or −; zero metres are zero, too. */
    Exponent same(Expr one, Expr other) {
      Exponent left = one.accept(this);
      Exponent right = other.accept(this);
      if (isZero(one)) {
        return right;
      }
      if (!isZero(other)) {
        require(left.plus(right, -1), equation);
      }
      return left;
    }

    private boolean isZero(Expr expr) {
      return Constants.of(expr, name -> OptionalDouble.empty()).filter(x -> x == 0).isPresent();
    }

    /** A power that is not a plain number can only be one of a plain number. */
    private Exponent power(Exponent base, Exponent exponent, Expr written) {
      require(exponent, equation);
      Optional<Double> number = Constants.of(written, numbers);
      if (number.isEmpty()) {
        require(base, equation);
        return Exponent.NONE;
      }
      return Exponent.NONE.plus(base, number.get());
    }

    @Override
    public Exponent call(Expr.Call call) {
      Exponent argument = call.argument().accept(this);
      if (call.function() == ElementaryFunction.SQRT) {
        return Exponent.NONE.plus(argument, 1.0 / 2);
      }
      if (call.function() == ElementaryFunction.CBRT) {
        return Exponent.NONE.plus(argument, 1.0 / 3);
      }
      if (call.function() == ElementaryFunction.ABS) {
        return argument;
      }
      require(argument, equation);
      return Exponent.NONE;
    }

    @Override
    public Exponent inUnits(Expr.InUnits inUnits) {
      return inUnits.operand().accept(this).plus(of(inUnits.unit().kind()), 1);
    }

    @Override
    public Exponent conversion(Expr.Conversion conversion) {
      return conversion.operand().accept(this);
    }
  }

  /** Expressions of numbers alone, as in {@code x^(3/2)} or in {@code V^κ} with a given κ. */
  private static final class Constants {
    private Constants() {}

    static Optional<Double> of(Expr expr, Function<String, OptionalDouble> numbers) {
      if (expr instanceof Expr.Literal literal && literal.unit().isEmpty()) {
        return Optional.of(literal.value().doubleValue());
      }
      if (expr instanceof Expr.Name name) {
        OptionalDouble value = numbers.apply(name.text());
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
      }
      if (expr instanceof Expr.Negation negation) {
        return of(negation.operand(), numbers).map(x -> -x);
      }
      if (expr instanceof Expr.Binary binary) {
        return of(binary.left(), numbers)
            .flatMap(x -> of(binary.right(), numbers).map(y -> joined(binary, x, y)));
      }
      return Optional.empty();
    }

    private static double joined(Expr.Binary binary, double x, double y) {
      return switch (binary.operator()) {
        case PLUS -> x + y;
        case MINUS -> x - y;
        case TIMES -> x * y;
        case OVER -> x / y;
        case POWER -> Math.pow(x, y);
      };
    }
  }
}
