package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.SIN;
import static plainscale.quantity.ElementaryFunction.TAN;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** The identities of sine and cosine that bring an angle together. */
final class Identities {
  private static final BigFraction TWO = BigFraction.TWO;

  private final Board board;
  private final String name;

  Identities(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** The first identity that changes the line. */
  Optional<Line> of(Line line) {
    return quotient(line)
        .or(() -> doubled(line))
        .or(() -> applied(line, this::squares, "sin(%)^2 + cos(%)^2 = 1"));
  }

  /** The sine of twice an angle in the place of a product of its sine and its cosine. */
  Optional<Line> doubled(Line line) {
    Sum sum = line.side(name);
    boolean even =
        sum.terms().stream().allMatch(t -> Rationals.isEven(t.coefficient().getNumerator()));
    String text = even ? "2 sin(%) cos(%) = sin(2 %)" : "sin(%) cos(%) = sin(2 %)/2";
    return applied(line, this::doubled, text);
  }

  /** One, in an answer, for the sum of the squares of a sine and a cosine. */
  static Optional<Line> one(Board board, String name, Line line) {
    return new Identities(board, name)
        .applied(line, sum -> Ones.in(sum, name), "sin(%)^2 + cos(%)^2 = 1");
  }

  /** Tangents instead of quotients, and of the square below a line beside a tangent. */
  Optional<Line> tangents(Line line) {
    return quotient(line).or(() -> applied(line, this::secants, "1/cos(%)^2 = 1 + tan(%)^2"));
  }

  private Sum secants(Sum sum) {
    for (Term term : sum.terms()) {
      for (Atom atom : term.factors().keySet()) {
        if (atom instanceof Atom.Applied cosine
            && cosine.function() == COS
            && atom.contains(name)
            && term.exponent(atom).equals(TWO.negate())
            && mentions(sum, new Atom.Applied(TAN, cosine.argument()))) {
          Sum tangent = Sum.of(Term.of(new Atom.Applied(TAN, cosine.argument()), TWO));
          return Replacement.in(sum, Term.of(atom, TWO.negate()), Sum.ONE.plus(tangent));
        }
      }
    }
    return sum;
  }

  /** Sine over cosine is the tangent, in an answer also inside functions. */
  static Optional<Line> tangentInside(Board board, String name, Line line) {
    Identities identities = new Identities(board, name);
    return identities.applied(line, identities::inside, "sin(%)/cos(%) = tan(%)");
  }

  private Sum inside(Sum sum) {
    Sum result = tangent(sum);
    for (Term term : sum.terms()) {
      for (Atom atom : term.factors().keySet()) {
        if (atom instanceof Atom.Applied a && !inside(a.argument()).equals(a.argument())) {
          Sum inner = Application.of(a.function(), inside(a.argument()));
          result = Replacement.in(result, Term.of(atom), inner);
        }
      }
    }
    return result;
  }

  /** Sine over cosine is the tangent. */
  static Optional<Line> tangent(Board board, String name, Line line) {
    return new Identities(board, name).quotient(line);
  }

  private Optional<Line> quotient(Line line) {
    return applied(line, this::tangent, "sin(%)/cos(%) = tan(%)");
  }

  private Optional<Line> applied(Line line, UnaryOperator<Sum> identity, String text) {
    if (!hasAngles(line.left()) && !hasAngles(line.right())) {
      return Optional.empty();
    }
    Sum left = identity.apply(line.left());
    Sum right = identity.apply(line.right());
    if (left.equals(line.left()) && right.equals(line.right())) {
      return Optional.empty();
    }
    String angle = angle(line).map(board::text).orElse(name);
    Line.Note note = Line.Note.of("In {0}, " + text.replace("%", angle) + ".");
    return Optional.of(line.then(Rule.IDENTITY, left, right, note));
  }

  private static boolean hasAngles(Sum sum) {
    return sum.applies(SIN) || sum.applies(COS);
  }

  private Optional<Sum> angle(Line line) {
    return line.side(name).terms().stream()
        .flatMap(term -> term.factors().keySet().stream())
        .filter(atom -> atom.contains(name))
        .flatMap(
            atom ->
                atom instanceof Atom.Applied a && (a.function() == SIN || a.function() == COS)
                    ? Optional.of(a.argument()).stream()
                    : Optional.<Sum>empty().stream())
        .findFirst();
  }

  private Sum tangent(Sum sum) {
    return Sum.of(sum.terms().stream().map(this::tangent).toList());
  }

  private Term tangent(Term term) {
    for (Atom atom : term.factors().keySet()) {
      if (atom instanceof Atom.Applied sine && sine.function() == SIN && atom.contains(name)) {
        Atom cosine = new Atom.Applied(COS, sine.argument());
        BigFraction exponent = term.exponent(sine);
        if (term.exponent(cosine).add(exponent).equals(BigFraction.ZERO)) {
          Term rest = term.part(a -> a.compareTo(sine) != 0 && a.compareTo(cosine) != 0);
          Term tan = Term.of(new Atom.Applied(TAN, sine.argument()), exponent);
          return rest.times(term.coefficient()).times(tan);
        }
      }
    }
    return term;
  }

  private Sum doubled(Sum sum) {
    return Sum.of(sum.terms().stream().map(this::doubled).toList());
  }

  private Term doubled(Term term) {
    for (Atom atom : term.factors().keySet()) {
      if (atom instanceof Atom.Applied sine && sine.function() == SIN && atom.contains(name)) {
        Atom cosine = new Atom.Applied(COS, sine.argument());
        BigFraction exponent = term.exponent(sine);
        if (term.exponent(cosine).equals(exponent)) {
          Term rest = term.part(a -> a.compareTo(sine) != 0 && a.compareTo(cosine) != 0);
          Sum twice = sine.argument().times(Sum.number(2));
          Term half = Term.number(BigFraction.ONE_HALF).power(exponent);
          Term sin = Term.of(new Atom.Applied(SIN, twice), exponent);
          return rest.times(term.coefficient()).times(half).times(sin);
        }
      }
    }
    return term;
  }

  /** Where both sine and cosine of the unknown stand, the square of one of them goes. */
  private Sum squares(Sum sum) {
    Sum once = square(sum, COS, SIN);
    return once.equals(sum) ? square(sum, SIN, COS) : once;
  }

  private Sum square(Sum sum, ElementaryFunction goes, ElementaryFunction stays) {
    for (Term term : sum.terms()) {
      for (Atom atom : term.factors().keySet()) {
        if (atom instanceof Atom.Applied squared
            && squared.function() == goes
            && atom.contains(name)
            && term.exponent(atom).equals(TWO)
            && mentions(sum, new Atom.Applied(stays, squared.argument()))) {
          Sum other = Sum.of(Term.of(new Atom.Applied(stays, squared.argument()), TWO));
          Sum replaced = Replacement.in(sum, Term.of(atom, TWO), Sum.ONE.minus(other));
          return Expansion.of(replaced);
        }
      }
    }
    return sum;
  }

  private static boolean mentions(Sum sum, Atom atom) {
    return sum.terms().stream().anyMatch(t -> !t.exponent(atom).equals(BigFraction.ZERO));
  }
}
