package plainscale.algebra;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.quantity.Source;

/**
 * An expression as a function of its sources of uncertainty, in doubles and coherent SI units: what
 * the sheet defines is followed down to givens and constants, and each of these moves with its
 * sources. The operations stand in one row, each value computed once; a value that does not exist
 * is not a number.
 *
 * <p>One object computes for one thread at a time.
 */
public final class Compiled {

  /** One operation, on the values before it and the deviations of the sources. */
  private interface Operation {
    double at(double[] values, double[] deviations);
  }

  private final List<Source> sources;
  private final Operation[] operations;
  private final int result;
  private final double[] values;

  private Compiled(Compiler compiler, int result) {
    this.sources = List.copyOf(compiler.sources.keySet());
    this.operations = compiler.operations.toArray(new Operation[0]);
    this.result = result;
    this.values = new double[operations.length];
  }

  /** The expression with its names followed down to their sources. */
  public static Compiled of(Expr expr, Formulas formulas) {
    Compiler compiler = new Compiler(formulas);
    compiler.prepare(expr);
    return new Compiled(compiler, expr.accept(compiler));
  }

  /** The sources, in the order in which the expression meets them. */
  public List<Source> sources() {
    return sources;
  }

  /**
   * The value where each source is off its estimate by that many of its standard uncertainties; not
   * a number where there is none.
   */
  public double at(double[] deviations) {
    for (int i = 0; i < operations.length; i++) {
      values[i] = operations[i].at(values, deviations);
    }
    return Double.isFinite(values[result]) ? values[result] : Double.NaN;
  }

  /** Writes operations; each method gives the place of its value in the row. */
  private static final class Compiler implements Expr.Visitor<Integer> {
    private final Formulas formulas;
    private final Map<Source, Integer> sources = new LinkedHashMap<>();
    private final Map<String, Integer> names = new HashMap<>();
    private final List<Operation> operations = new ArrayList<>();

    Compiler(Formulas formulas) {
      this.formulas = formulas;
    }

    private int add(Operation operation) {
      operations.add(operation);
      return operations.size() - 1;
    }

    private int constant(BigDecimal value) {
      double number = value.doubleValue();
      return add((values, deviations) -> number);
    }

    @Override
    public Integer literal(Expr.Literal literal) {
      BigDecimal value = literal.value();
      return constant(literal.unit().map(unit -> unit.toCoherent(value)).orElse(value));
    }

    /** What a formula leans on comes first: a chain of definitions may be longer than a stack. */
    private void prepare(Expr expr) {
      Deque<String> open = new ArrayDeque<>(mentioned(expr));
      while (!open.isEmpty()) {
        String name = open.peek();
        Optional<Expr> formula =
            names.containsKey(name) ? Optional.empty() : formulas.formula(name);
        Set<String> missing = formula.map(this::mentioned).orElse(Set.of());
        if (missing.isEmpty()) {
          open.pop();
          names.computeIfAbsent(
              name, n -> formula.map(f -> f.accept(this)).orElseGet(() -> leaf(n)));
        } else {
          missing.forEach(open::push);
        }
      }
    }

    /** The names in an expression that have no place yet. */
    private Set<String> mentioned(Expr expr) {
      Set<String> mentioned = new TreeSet<>(Mentions.of(List.of(new Equation(expr, expr))).names());
      mentioned.removeAll(names.keySet());
      return mentioned;
    }

    @Override
    public Integer name(Expr.Name name) {
      Integer place = names.get(name.text());
      if (place == null) {
        throw new IllegalStateException("not prepared: " + name.text());
      }
      return place;
    }

    private int leaf(String name) {
      Quantity quantity = formulas.value(name);
      int[] of = new int[quantity.uncertainty().derivatives().size()];
      double[] steps = new double[of.length];
      int i = 0;
      for (Map.Entry<Source, Double> part : quantity.uncertainty().derivatives().entrySet()) {
        Integer next = sources.size();
        Integer known = sources.putIfAbsent(part.getKey(), next);
        of[i] = known == null ? next : known;
        steps[i++] = part.getValue() * part.getKey().standard();
      }
      double estimate = quantity.value().doubleValue();
      return add((values, deviations) -> moved(estimate, of, steps, deviations));
    }

    private static double moved(double estimate, int[] of, double[] steps, double[] deviations) {
      double value = estimate;
      for (int i = 0; i < of.length; i++) {
        value += steps[i] * deviations[of[i]];
      }
      return value;
    }

    /** −40 °C is one reading, as for the evaluator. */
    @Override
    public Integer negation(Expr.Negation negation) {
      if (negation.operand() instanceof Expr.Literal literal) {
        BigDecimal opposite = literal.value().negate();
        return constant(literal.unit().map(unit -> unit.toCoherent(opposite)).orElse(opposite));
      }
      int operand = negation.operand().accept(this);
      return add((values, deviations) -> -values[operand]);
    }

    @Override
    public Integer binary(Expr.Binary binary) {
      int x = binary.left().accept(this);
      int y = binary.right().accept(this);
      return switch (binary.operator()) {
        case PLUS -> add((values, deviations) -> values[x] + values[y]);
        case MINUS -> add((values, deviations) -> values[x] - values[y]);
        case TIMES -> add((values, deviations) -> values[x] * values[y]);
        case OVER -> add((values, deviations) -> quotient(values[x], values[y]));
        case POWER -> add((values, deviations) -> power(values[x], values[y]));
      };
    }

    private static double quotient(double x, double y) {
      return y == 0 ? Double.NaN : x / y;
    }

    private static double power(double x, double y) {
      return x == 0 && y <= 0 ? Double.NaN : Math.pow(x, y);
    }

    @Override
    public Integer call(Expr.Call call) {
      ElementaryFunction function = call.function();
      int x = call.argument().accept(this);
      return add(
          (values, deviations) ->
              function.defined(values[x]) ? function.value(values[x]) : Double.NaN);
    }

    @Override
    public Integer inUnits(Expr.InUnits inUnits) {
      int x = inUnits.operand().accept(this);
      double factor = inUnits.unit().toCoherent(BigDecimal.ONE).doubleValue();
      return add((values, deviations) -> values[x] * factor);
    }

    /** The same quantity in another unit has the same coherent value. */
    @Override
    public Integer conversion(Expr.Conversion conversion) {
      return conversion.operand().accept(this);
    }
  }
}
