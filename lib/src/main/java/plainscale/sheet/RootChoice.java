package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Outcome;
import plainscale.algebra.Rule;
import plainscale.algebra.Step;
import plainscale.notation.Bound;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;

/**
 * Which of several answers is meant, by what the statement says of the unknown: {@code with t < 1
 * s}. {@code value} gives the value of an answer in the wave.
 */
record RootChoice(Wave wave, Statement.Solve solve, String source, Function<Expr, Quantity> value) {
  private static final MathContext TWO_FIGURES = new MathContext(2);
  private static final MathContext FOUR_FIGURES = new MathContext(4);

  /** An answer and its value, if it has one. */
  private record Root(Expr answer, Optional<Quantity> value) {}

  /** The derivation with the answer that is asked for as its last step. */
  Derivation chosen(Derivation derivation) {
    List<Root> roots = roots(derivation.outcome());
    if (solve.bounds().isEmpty() || roots.isEmpty()) {
      return derivation;
    }
    List<Root> left =
        roots.stream().filter(root -> root.value().filter(this::fits).isPresent()).toList();
    if (left.size() != 1) {
      throw undecided(roots, left.size());
    }
    return ending(derivation, roots, left.get(0));
  }

  private List<Root> roots(Outcome outcome) {
    List<Expr> answers = new ArrayList<>();
    if (outcome instanceof Outcome.Several several) {
      answers.addAll(several.answers());
    }
    if (outcome instanceof Outcome.Solved solved) {
      answers.add(solved.answer());
      solved.rejected().stream()
          .filter(other -> !other.why().equals(Outcome.Other.MISFIT))
          .forEach(other -> answers.add(other.root()));
    }
    return answers.stream().map(answer -> new Root(answer, find(answer))).toList();
  }

  private Optional<Quantity> find(Expr answer) {
    try {
      Quantity found = value.apply(answer);
      Evaluator.at(source, solve.span(), found::shown);
      return Optional.of(found);
    } catch (ProblemException noValue) {
      if (noValue.isBlank()) {
        throw noValue;
      }
      return Optional.empty();
    }
  }

  /** Whether a value is on the right side of all bounds. */
  boolean fits(Quantity root) {
    return solve.bounds().stream().allMatch(bound -> fits(root, bound));
  }

  private boolean fits(Quantity root, Bound bound) {
    Quantity limit = wave.evaluate(bound.value(), source);
    boolean zero = limit.value().signum() == 0 && limit.kind().isNumber();
    if (!zero && !limit.kind().equals(root.kind())) {
      String sentence =
          "“%s” is %s; it cannot be compared with %s."
              .formatted(solve.unknown(), words(root, bound), words(limit, bound));
      throw problem(Problem.Kind.UNIT, sentence, bound.value().span(), List.of());
    }
    int side = root.value().compareTo(limit.value());
    return bound.above() ? side > 0 : side < 0;
  }

  private String words(Quantity quantity, Bound bound) {
    return Evaluator.at(
        source, bound.value().span(), () -> Kinds.of(quantity.kind()).withArticle());
  }

  private Derivation ending(Derivation derivation, List<Root> roots, Root taken) {
    List<Outcome.Other> others =
        roots.stream()
            .filter(root -> !root.equals(taken))
            .map(root -> new Outcome.Other(root.answer(), asked() + " is asked for."))
            .toList();
    List<Step> steps = new ArrayList<>(derivation.steps());
    Equation answer = new Equation(new Expr.Name(new Span(0, 0), solve.unknown()), taken.answer());
    int from = from(derivation, answer);
    if (from < derivation.relations().size() + steps.size()) {
      String reason = "Of the roots the one with %s is taken.".formatted(asked());
      int number = derivation.relations().size() + steps.size() + 1;
      steps.add(
          new Step(number, Rule.CHOOSE_ROOT, List.of(from), answer, reason, Optional.empty()));
    }
    return new Derivation(
        derivation.unknown(),
        derivation.relations(),
        steps,
        new Outcome.Solved(taken.answer(), others));
  }

  /** The step that led to the answer; the one before the last where only its other root is told. */
  private static int from(Derivation derivation, Equation answer) {
    for (Step step : derivation.steps()) {
      if (step.after().text().equals(answer.text())) {
        return step.number();
      }
    }
    List<Step> steps = derivation.steps();
    return steps.isEmpty() ? 1 : steps.get(steps.size() - 1).from().get(0);
  }

  private String asked() {
    return solve.bounds().stream()
        .map(bound -> bound.text(solve.unknown()))
        .collect(Collectors.joining(", "));
  }

  private ProblemException undecided(List<Root> roots, int left) {
    String sentence =
        left == 0
            ? "No answer fits %s: %s.".formatted(asked(), told(roots, " or "))
            : "More than one answer fits %s: %s.".formatted(asked(), told(roots, " or "));
    Span place = solve.bounds().get(0).span();
    return problem(Problem.Kind.VALUE, sentence, place, ways(values(roots)));
  }

  /** The answers of a derivation that does not tell which is meant, with their values. */
  ProblemException several(Outcome.Several several) {
    List<Root> roots = roots(several);
    String sentence =
        "There are several answers for “%s”: %s. Say which one is meant."
            .formatted(solve.unknown(), told(roots, " or "));
    return problem(Problem.Kind.VALUE, sentence, solve.span(), ways(values(roots)));
  }

  /** Complains if none of the roots that were found by numbers is the one that is asked for. */
  void refuseOthers(List<Quantity> found) {
    if (!found.isEmpty() && found.stream().noneMatch(this::fits)) {
      String roots = found.stream().map(RootChoice::text).collect(Collectors.joining(", "));
      String sentence = "No root fits %s; found were %s.".formatted(asked(), roots);
      throw problem(Problem.Kind.VALUE, sentence, solve.bounds().get(0).span(), ways(found));
    }
  }

  private String told(List<Root> roots, String or) {
    return roots.stream().map(this::told).collect(Collectors.joining(or));
  }

  private String told(Root root) {
    String formula = solve.unknown() + " = " + Printer.print(root.answer());
    return root.value().map(v -> formula + " = " + text(v)).orElse(formula);
  }

  private static String text(Quantity quantity) {
    Shown shown = quantity.shown();
    String unit = shown.unit().text();
    String gap = unit.isEmpty() || unit.equals("°") ? "" : " ";
    return shown.value().toPlainString() + gap + unit;
  }

  private static List<Quantity> values(List<Root> roots) {
    return roots.stream().flatMap(root -> root.value().stream()).toList();
  }

  /** Comparisons that choose the smallest and the largest of some values. */
  List<String> ways(List<Quantity> values) {
    List<Quantity> sorted =
        values.stream().sorted((a, b) -> a.value().compareTo(b.value())).toList();
    if (sorted.size() < 2) {
      return List.of("… with %s < …".formatted(solve.unknown()));
    }
    int last = sorted.size() - 1;
    return List.of(
        "with %s < %s".formatted(solve.unknown(), between(sorted.get(0), sorted.get(1))),
        "with %s > %s".formatted(solve.unknown(), between(sorted.get(last - 1), sorted.get(last))));
  }

  /** A round value between two. */
  private static String between(Quantity low, Quantity high) {
    BigDecimal a = low.displayUnit().fromCoherent(low.value());
    BigDecimal b = low.displayUnit().fromCoherent(high.value());
    BigDecimal middle = a.add(b).divide(BigDecimal.valueOf(2));
    BigDecimal round = middle.round(TWO_FIGURES);
    boolean inside = round.compareTo(a) > 0 && round.compareTo(b) < 0;
    BigDecimal number = (inside ? round : middle.round(FOUR_FIGURES)).stripTrailingZeros();
    return Printer.print(
        new Expr.Literal(
            new Span(0, 0),
            number.scale() < 0 ? number.setScale(0) : number,
            low.displayUnit(),
            false));
  }

  private ProblemException problem(
      Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
