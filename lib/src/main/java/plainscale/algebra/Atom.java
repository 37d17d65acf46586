package plainscale.algebra;

import java.math.BigInteger;
import java.util.Set;
import java.util.TreeSet;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.quantity.ElementaryFunction;

/**
 * What products are made of. Two atoms are the same if their keys are; a key is also how sums and
 * products get one order, and is made once, since it is asked for at every comparison.
 */
sealed interface Atom extends Comparable<Atom> {

  /** A text that is the same for equal atoms only. */
  String key();

  /** The names that occur in it. */
  Set<String> names();

  /** Whether it cannot be negative. */
  boolean positive();

  default boolean contains(String name) {
    return names().contains(name);
  }

  @Override
  default int compareTo(Atom other) {
    return key().compareTo(other.key());
  }

  /** A quantity. */
  record Symbol(String name) implements Atom {
    @Override
    public String key() {
      return name;
    }

    @Override
    public Set<String> names() {
      return Set.of(name);
    }

    @Override
    public boolean positive() {
      return name.equals("π");
    }
  }

  /** A number with a unit, as it was written. */
  record Constant(String key, Expr written, boolean positive) implements Atom {
    static Constant of(Expr written, boolean positive) {
      return new Constant("{" + Printer.print(written) + "}", written, positive);
    }

    @Override
    public Set<String> names() {
      return Set.of();
    }
  }

  /** A whole number under a root. */
  record Whole(BigInteger number) implements Atom {
    @Override
    public String key() {
      return "#" + number;
    }

    @Override
    public Set<String> names() {
      return Set.of();
    }

    @Override
    public boolean positive() {
      return true;
    }
  }

  /** A function of a sum. */
  record Applied(ElementaryFunction function, Sum argument, String key) implements Atom {
    Applied(ElementaryFunction function, Sum argument) {
      this(function, argument, opening(function) + argument.key() + ")");
    }

    /** How the key of every application of the function begins. */
    static String opening(ElementaryFunction function) {
      return "~" + function.text() + "(";
    }

    @Override
    public Set<String> names() {
      return argument.names();
    }

    @Override
    public boolean positive() {
      return function == ElementaryFunction.EXP || function == ElementaryFunction.ABS;
    }
  }

  /** A sum that is a factor. */
  record Group(Sum sum, String key) implements Atom {
    Group(Sum sum) {
      this(sum, "~~(" + sum.key() + ")");
    }

    @Override
    public Set<String> names() {
      return sum.names();
    }

    @Override
    public boolean positive() {
      return false;
    }
  }

  /** A power whose exponent is not a plain number. */
  record Exponential(Sum base, Sum exponent, String key) implements Atom {
    Exponential(Sum base, Sum exponent) {
      this(base, exponent, "~^(" + base.key() + ")^(" + exponent.key() + ")");
    }

    @Override
    public Set<String> names() {
      Set<String> names = new TreeSet<>(base.names());
      names.addAll(exponent.names());
      return names;
    }

    @Override
    public boolean positive() {
      return true;
    }
  }
}
