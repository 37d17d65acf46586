package plainscale.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import plainscale.algebra.Budget;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.Relation;
import plainscale.algebra.Solver;
import plainscale.notation.Expr;
import plainscale.notation.Names;
import plainscale.notation.Notation;

/** Milliseconds for a derivation with all its checks on one core. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Threads(1)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class DerivationBenchmark {
  private static final Set<String> UNKNOWN =
      Set.of("q", "T", "θ", "I_1", "I_2", "I_3", "a");

  private static final List<Relation> HANGING =
      relations("k_e q^2/d^2 = T sin(θ)", "m g_n = T cos(θ)", "sin(θ) = d/(2*s)");
  private static final List<Relation> KIRCHHOFF =
      relations(
          "I_1 = I_2 + I_3", "E_1 = R_1 I_1 + R_3 I_3", "E_2 = R_2 I_2 - R_3 I_3");
  private static final List<Relation> ATWOOD =
      relations("m_1 g_n - T = m_1 a", "T - m_2 g_n = m_2 a");

  private static final Known KNOWN =
      new Known() {
        @Override
        public boolean isKnown(String name) {
          return !UNKNOWN.contains(name);
        }

        @Override
        public OptionalDouble value(String name) {
          return OptionalDouble.empty();
        }
      };

  private static List<Relation> relations(String... texts) {
    List<Relation> relations = new ArrayList<>();
    for (String text : texts) {
      String[] sides = text.split(" = ", 2);
      Equation equation = new Equation(expression(sides[0]), expression(sides[1]));
      relations.add(new Relation("", equation, ""));
    }
    return relations;
  }

  private static Expr expression(String text) {
    return Notation.parseExpression(text, new EveryName()).value();
  }

  @Benchmark
  public Derivation hangingCharges() {
    return Solver.solve(HANGING, "q", KNOWN, Budget.usual());
  }

  @Benchmark
  public Derivation atwood() {
    return Solver.solve(ATWOOD, "a", KNOWN, Budget.usual());
  }

  @Benchmark
  public Derivation threeCurrents() {
    return Solver.solve(KIRCHHOFF, "I_3", KNOWN, Budget.usual());
  }

  /** Every name but the functions is a quantity. */
  private static final class EveryName implements Names {
    @Override
    public boolean isQuantity(String name) {
      return !Set.of("sin", "cos").contains(name);
    }

    @Override
    public boolean isDefined(String name) {
      return isQuantity(name);
    }

    @Override
    public boolean isSameAsUnit(String name) {
      return false;
    }

    @Override
    public String meaning(String name) {
      return "a quantity";
    }

    @Override
    public Collection<String> all() {
      return List.of();
    }
  }
}
