package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.ATAN;
import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.SIN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** Terms a sin(x) and b cos(x) of one angle with the unknown, and nothing else with it. */
final class Waves {
  private final Board board;
  private final String name;

  Waves(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  /** What stands before the sine and the cosine, and what is left, which is subtracted. */
  private record Parts(Sum angle, Sum sine, Sum cosine, Sum rest) {
    Parts negate() {
      return new Parts(angle, sine.negate(), cosine.negate(), rest.negate());
    }

    Sum functions() {
      return sine.times(of(SIN)).plus(cosine.times(of(COS)));
    }

    Sum of(ElementaryFunction function) {
      return Sum.of(Term.of(new Atom.Applied(function, angle)));
    }
  }

  /** What to do with a sum that is zero and that comes from the line. */
  Turn turn(Line line, Sum zero) {
    Optional<Parts> parts = parts(zero);
    if (parts.isEmpty()) {
      return Isolation.stuck();
    }
    return parts.get().rest().isZero()
        ? divided(line, zero, parts.get())
        : joined(line, parts.get());
  }

  private Optional<Parts> parts(Sum zero) {
    Optional<Sum> angle = angle(zero);
    if (angle.isEmpty()) {
      return Optional.empty();
    }
    Sum sine = factor(zero, Term.of(new Atom.Applied(SIN, angle.get())));
    Sum cosine = factor(zero, Term.of(new Atom.Applied(COS, angle.get())));
    Sum functions = new Parts(angle.get(), sine, cosine, Sum.ZERO).functions();
    Sum rest = Expansion.of(functions).minus(zero);
    boolean all = !sine.isZero() && !cosine.isZero() && !rest.contains(name);
    return all ? Optional.of(new Parts(angle.get(), sine, cosine, rest)) : Optional.empty();
  }

  private Optional<Sum> angle(Sum zero) {
    return zero.terms().stream()
        .flatMap(term -> term.factors().keySet().stream())
        .filter(atom -> atom.contains(name) && atom instanceof Atom.Applied)
        .map(atom -> ((Atom.Applied) atom).argument())
        .findFirst();
  }

  private Sum factor(Sum zero, Term function) {
    List<Term> factors = new ArrayList<>();
    for (Term term : zero.terms()) {
      Term factor = term.over(function);
      if (!factor.contains(name)) {
        factors.add(factor);
      }
    }
    return Sum.of(factors);
  }

  /** a sin(x) + b cos(x) = 0: divided by the cosine. */
  private Turn divided(Line line, Sum zero, Parts parts) {
    if (!line.right().isZero()) {
      Line.Note note = Line.Note.of("Bring everything in {0} to one side.");
      return Turn.Next.of(line.then(Rule.COLLECT, zero, Sum.ZERO, note));
    }
    Term cosine = parts.of(COS).asTerm();
    Sum over = parts.sine().times(parts.of(SIN)).over(Sum.of(cosine)).plus(parts.cosine());
    String reason = "Divide both sides of {0} by " + board.text(cosine) + ".";
    Line.Note note = Line.Note.of(reason, board.notZero(cosine));
    return Turn.Next.of(line.then(Rule.DIVIDE_BY, over, Sum.ZERO, note));
  }

  /** a sin(x) + b cos(x) = c: the left side is one sine of another angle. */
  private Turn joined(Line line, Parts found) {
    int sign = board.sign(found.sine());
    if (sign == 0) {
      return Isolation.stuck();
    }
    Parts parts = sign < 0 ? found.negate() : found;
    Sum functions = parts.functions();
    if (!line.left().equals(functions) && !line.right().equals(functions)) {
      String reason = "Bring what contains " + name + " to one side of {0}, the rest to the other.";
      return Turn.Next.of(line.then(Rule.COLLECT, functions, parts.rest(), Line.Note.of(reason)));
    }
    Sum squares = parts.sine().power(BigFraction.TWO).plus(parts.cosine().power(BigFraction.TWO));
    Board.Bare size = board.withoutBars(Expansion.of(squares).power(BigFraction.ONE_HALF));
    Sum joined = size.sum().times(one(parts));
    String reason = "In {0}, " + board.text(functions) + " = " + board.text(joined) + ".";
    Line.Note note = Line.Note.of(reason, condition(parts, size));
    return Turn.Next.of(line.then(Rule.IDENTITY, joined, parts.rest(), note));
  }

  /** A sine, or, if that is written shorter, a cosine. */
  private Sum one(Parts parts) {
    Sum tangent = parts.cosine().over(parts.sine());
    boolean negative = board.sign(parts.cosine()) < 0;
    Sum shift = Application.of(ATAN, negative ? tangent.negate() : tangent);
    Sum other = Application.of(ATAN, tangent.power(BigFraction.MINUS_ONE));
    boolean cosine =
        board.sign(parts.cosine()) > 0 && board.text(other).length() < board.text(shift).length();
    return cosine
        ? Application.of(COS, parts.angle().minus(other))
        : Application.of(SIN, negative ? parts.angle().minus(shift) : parts.angle().plus(shift));
  }

  private String condition(Parts parts, Board.Bare size) {
    if (board.value(parts.sine()).isPresent()) {
      return size.condition();
    }
    String positive = board.text(parts.sine()) + " > 0";
    boolean more = !parts.sine().names().containsAll(size.assumed());
    return positive + (more ? ", " + size.condition() : "");
  }
}
