package plainscale.algebra;

import java.util.List;
import plainscale.notation.Expr;

/** What came of looking for an unknown. */
public sealed interface Outcome {

  /** A root that was not taken, and why, in words. */
  record Other(Expr root, String why) {
    /** Why a root is none: it comes from squaring or the like. */
    public static final String MISFIT = "it does not fit the relations.";
  }

  /** The answer, in known names only, and the roots that were not taken. */
  record Solved(Expr answer, List<Other> rejected) implements Outcome {
    /** Keeps its own copy of the list. */
    public Solved {
      rejected = List.copyOf(rejected);
    }
  }

  /** Several answers, and nothing that tells which of them is meant. */
  record Several(List<Expr> answers) implements Outcome {
    /** Keeps its own copy of the list. */
    public Several {
      answers = List.copyOf(answers);
    }
  }

  /** No closed form was found: one equation with no other unknown, to be solved by numbers. */
  record Numeric(Equation equation) implements Outcome {}

  /** No closed form was found, and as many equations as unknowns remain. */
  record NumericSystem(List<Equation> equations, List<String> unknowns) implements Outcome {
    /** Keeps its own copies of the lists. */
    public NumericSystem {
      equations = List.copyOf(equations);
      unknowns = List.copyOf(unknowns);
    }
  }

  /** Too few relations: these quantities are still free. */
  record Free(List<String> names) implements Outcome {
    /** Keeps its own copy of the list. */
    public Free {
      names = List.copyOf(names);
    }
  }

  /** The relations lead to an equation that cannot hold, such as 2 = 3. */
  record Contradiction(Equation equation) implements Outcome {}

  /** The unknown drops out: the relations hold, or not, whatever its value. */
  record Cancelled(String unknown) implements Outcome {}

  /** After the step of that number no real number is left. */
  record NoRealSolution(int step, String why) implements Outcome {}

  /**
   * The search was stopped; the steps are as far as it came. {@code left} are the numbers of the
   * equations that they leave, {@code open} the other unknowns in them.
   */
  record Bounded(String why, List<Integer> left, List<String> open) implements Outcome {
    /** Keeps its own copies of the lists. */
    public Bounded {
      left = List.copyOf(left);
      open = List.copyOf(open);
    }

    /** Stopped before it came anywhere. */
    public Bounded(String why) {
      this(why, List.of(), List.of());
    }
  }
}
