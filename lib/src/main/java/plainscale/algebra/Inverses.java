package plainscale.algebra;

import static plainscale.quantity.ElementaryFunction.ACOS;
import static plainscale.quantity.ElementaryFunction.ASIN;
import static plainscale.quantity.ElementaryFunction.ATAN;
import static plainscale.quantity.ElementaryFunction.COS;
import static plainscale.quantity.ElementaryFunction.EXP;
import static plainscale.quantity.ElementaryFunction.LN;
import static plainscale.quantity.ElementaryFunction.LOG10;
import static plainscale.quantity.ElementaryFunction.SIN;
import static plainscale.quantity.ElementaryFunction.TAN;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.quantity.ElementaryFunction;

/** A function of the unknown on one side: its inverse is taken, with the branch said. */
final class Inverses {
  private static final Map<ElementaryFunction, Inverse> TABLE =
      Map.of(
          SIN, new Inverse(ASIN, "0° ≤ % ≤ 90°"),
          COS, new Inverse(ACOS, "0° ≤ % ≤ 180°"),
          TAN, new Inverse(ATAN, "-90° < % < 90°"),
          ASIN, new Inverse(SIN, ""),
          ACOS, new Inverse(COS, ""),
          ATAN, new Inverse(TAN, ""),
          LN, new Inverse(EXP, ""),
          EXP, new Inverse(LN, ""));

  private final Board board;
  private final String name;

  /** The inverse of a function and the branch, in which % stands for the argument. */
  private record Inverse(ElementaryFunction function, String branch) {}

  Inverses(Board board, String name) {
    this.board = board;
    this.name = name;
  }

  Turn of(Line line, Atom atom, Sum other) {
    if (atom instanceof Atom.Applied applied) {
      return function(line, applied, other);
    }
    return atom instanceof Atom.Exponential e ? exponential(line, e, other) : Isolation.stuck();
  }

  private Turn function(Line line, Atom.Applied applied, Sum other) {
    if (applied.function() == LOG10) {
      Sum power = NormalForm.power(Sum.number(10), other);
      Line.Note note = Line.Note.of("Take ten to the power of both sides of {0}.");
      return Turn.Next.of(line.then(Rule.INVERSE_FUNCTION, applied.argument(), power, note));
    }
    Inverse inverse = TABLE.get(applied.function());
    if (inverse == null) {
      return Isolation.stuck();
    }
    OptionalDouble value = board.value(other);
    if (value.isPresent() && !inverse.function().defined(value.getAsDouble())) {
      String text = board.text(Sum.of(Term.of(applied)));
      String number = String.format(Locale.ROOT, "%.3g", value.getAsDouble());
      return new Turn.End(Turn.Kind.NOT_REAL, text + " would be " + number);
    }
    String condition = branch(inverse, applied, value).replace("%", board.text(applied.argument()));
    String reason =
        "Take %s, the inverse of %s, of both sides of {0}."
            .formatted(inverse.function().text(), applied.function().text());
    Line taken =
        line.then(
            Rule.INVERSE_FUNCTION,
            applied.argument(),
            Application.of(inverse.function(), other),
            Line.Note.of(reason, condition));
    return new Turn.Next(taken, alternatives(line, applied, taken.right()));
  }

  private static String branch(Inverse inverse, Atom.Applied applied, OptionalDouble value) {
    boolean acute = applied.argument().isSingle() && value.orElse(1) >= 0;
    return applied.function() == SIN && !acute ? "-90° ≤ % ≤ 90°" : inverse.branch();
  }

  /**
   * Of an angle that stands alone, or in a sum with others of a figure, the acute one is meant. Of
   * a multiple both angles may be acute, and of a sum with an arctangent, which only stands there
   * since two functions were joined, nothing is known.
   */
  private List<Turn.Alternative> alternatives(Line line, Atom.Applied applied, Sum angle) {
    Sum argument = applied.argument();
    Optional<BigFraction> multiple = Angles.multiple(argument, name);
    if (applied.function() == SIN && multiple.map(k -> k.doubleValue() > 1).orElse(false)) {
      String same = "sin(180° - %1$s) = sin(%1$s)".formatted(board.text(argument));
      Sum other = Angles.supplement(angle, multiple.orElseThrow());
      String why = "the smaller angle is taken; this one fits too, since " + same + ".";
      return List.of(new Turn.Alternative(other(line, argument, other, same), why));
    }
    if (!isJoined(argument)) {
      return List.of();
    }
    Line second =
        applied.function() == SIN
            ? other(
                line, argument, Angles.supplement(angle, BigFraction.ONE), "sin(180° - x) = sin(x)")
            : other(line, argument, angle.negate(), "cos(-x) = cos(x)");
    return List.of(new Turn.Alternative(second, ""));
  }

  private static boolean isJoined(Sum argument) {
    return argument.terms().stream()
        .flatMap(term -> term.factors().keySet().stream())
        .anyMatch(atom -> atom instanceof Atom.Applied a && a.function() == ATAN);
  }

  private static Line other(Line line, Sum argument, Sum angle, String same) {
    Line.Note note = Line.Note.of("The other angle that fits {0}, since " + same + ".");
    return line.then(Rule.CHOOSE_ROOT, argument, angle, note);
  }

  /** The unknown in the exponent, or below it. */
  private Turn exponential(Line line, Atom.Exponential e, Sum other) {
    if (e.base().contains(name) && e.exponent().contains(name)) {
      return Isolation.stuck();
    }
    if (e.base().contains(name)) {
      Sum inverse = e.exponent().power(BigFraction.MINUS_ONE);
      Line.Note note =
          Line.Note.of(
              "Raise both sides of {0} to the power " + board.text(inverse) + ".",
              board.text(e.base()) + " > 0");
      Sum power = NormalForm.power(other, inverse);
      return Turn.Next.of(line.then(Rule.RAISE, e.base(), power, note));
    }
    Sum left = e.exponent().times(Application.of(LN, e.base()));
    Sum right = Application.of(LN, other);
    Line.Note note = Line.Note.of("Take ln of both sides of {0}.");
    return Turn.Next.of(line.then(Rule.INVERSE_FUNCTION, left, right, note));
  }
}
