package plainscale.algebra;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.math3.fraction.BigFraction;
import plainscale.notation.Span;
import plainscale.quantity.ElementaryFunction;

/** What every move needs to know: how names are ordered, what is known, what may be spent. */
record Board(Writer writer, Known known, Budget budget) {
  /** How far relations that say the same may be apart when what is known was measured. */
  private static final double MEASURED = 0.01;

  private static final Span NOWHERE = new Span(0, 0);

  /** Pays for one move. */
  void spend() {
    budget.spend("", NOWHERE);
  }

  String text(Sum sum) {
    return writer.text(sum);
  }

  String text(Term term) {
    return writer.text(term);
  }

  /** The value of a sum, if every name in it has one. */
  OptionalDouble value(Sum sum) {
    Map<String, Double> values = new HashMap<>();
    for (String name : sum.names()) {
      OptionalDouble value = known.value(name);
      if (value.isEmpty()) {
        return OptionalDouble.empty();
      }
      values.put(name, value.getAsDouble());
    }
    return OptionalDouble.of(Approximate.of(writer.write(sum), values).value());
  }

  /** Whether two sums are different numbers, or have values that no measuring explains. */
  boolean differ(Sum first, Sum second) {
    Sum difference = first.minus(second);
    Optional<BigFraction> number = difference.number();
    if (number.isPresent()) {
      return !number.get().equals(BigFraction.ZERO);
    }
    double scale =
        difference.terms().stream()
            .mapToDouble(term -> Math.abs(value(Sum.of(term)).orElse(Double.NaN)))
            .max()
            .orElse(0);
    return Math.abs(value(difference).orElse(Double.NaN)) > MEASURED * scale;
  }

  /** Whether all names of the sum are known. */
  boolean isKnown(Sum sum) {
    return sum.names().stream().allMatch(known::isKnown);
  }

  /** 1 or −1 if the sum has that sign, by its value or for positive quantities; else 0. */
  int sign(Sum sum) {
    OptionalDouble value = value(sum);
    if (value.isPresent() && !Double.isNaN(value.getAsDouble())) {
      return (int) Math.signum(value.getAsDouble());
    }
    return signByForm(sum);
  }

  private int signByForm(Sum sum) {
    int sign = 0;
    for (Term term : sum.terms()) {
      int next = signByForm(term);
      if (next == 0 || next * sign < 0) {
        return 0;
      }
      sign = next;
    }
    return sign;
  }

  private int signByForm(Term term) {
    int sign = term.coefficient().doubleValue() < 0 ? -1 : 1;
    for (Map.Entry<Atom, BigFraction> factor : term.factors().entrySet()) {
      boolean even = Rationals.isEven(factor.getValue().getNumerator());
      boolean root = !Rationals.isWhole(factor.getValue());
      sign *= even || root ? 1 : sign(factor.getKey());
    }
    return sign;
  }

  private int sign(Atom atom) {
    if (atom instanceof Atom.Symbol symbol) {
      OptionalDouble value = known.value(symbol.name());
      return value.isPresent() ? (int) Math.signum(value.getAsDouble()) : 1;
    }
    if (atom instanceof Atom.Group group) {
      return sign(group.sum());
    }
    return atom.positive() ? 1 : 0;
  }

  /** A sum in which the bars around what is positive are gone, and what that was. */
  record Bare(Sum sum, List<String> assumed) {
    String condition() {
      return assumed.stream().map(text -> text + " ≥ 0").collect(Collectors.joining(", "));
    }
  }

  /** Takes the bars from |d| and |sin θ| if these have no value or a positive one. */
  Bare withoutBars(Sum sum) {
    Sum result = sum;
    List<String> assumed = new ArrayList<>();
    for (Atom.Applied bars : bars(sum)) {
      Sum inside = bars.argument();
      OptionalDouble value = value(inside);
      if (value.orElse(1) >= 0) {
        result = Replacement.in(result, Term.of(bars), inside);
        if (value.isEmpty()) {
          assumed.add(text(inside));
        }
      }
    }
    return new Bare(result, assumed);
  }

  /** The bars around a name or a function; nothing is assumed of the sign of a sum. */
  private static List<Atom.Applied> bars(Sum sum) {
    List<Atom.Applied> bars = new ArrayList<>();
    for (Term term : sum.terms()) {
      for (Atom atom : term.factors().keySet()) {
        if (atom instanceof Atom.Applied applied && isBarsAroundOne(applied)) {
          bars.add(applied);
        } else if (atom instanceof Atom.Group group) {
          bars.addAll(bars(group.sum()));
        }
      }
    }
    return bars;
  }

  private static boolean isBarsAroundOne(Atom.Applied applied) {
    return applied.function() == ElementaryFunction.ABS
        && !(applied.argument().asTerm().factors().firstKey() instanceof Atom.Group);
  }

  /** "m ≠ 0" for each factor that one divides by and of which that is not certain. */
  String notZero(Term divisor) {
    List<String> texts = new ArrayList<>();
    for (Map.Entry<Atom, BigFraction> factor : divisor.factors().entrySet()) {
      Sum base = Sum.of(Term.of(factor.getKey()));
      boolean certain =
          factor.getValue().doubleValue() < 0
              || factor.getKey().names().isEmpty()
              || factor.getKey().positive()
              || value(base).orElse(0) != 0
              || isSquaresAndNumber(factor.getKey());
      if (!certain) {
        texts.add(text(base) + " ≠ 0");
      }
    }
    return String.join(", ", texts);
  }

  /** 1 + μ² is never zero. */
  private static boolean isSquaresAndNumber(Atom atom) {
    return atom instanceof Atom.Group group
        && group.sum().terms().stream().anyMatch(Term::isNumber)
        && group.sum().terms().stream().allMatch(Board::isSquare);
  }

  private static boolean isSquare(Term term) {
    return term.coefficient().doubleValue() > 0
        && term.factors().values().stream().allMatch(e -> Rationals.isEven(e.getNumerator()));
  }
}
