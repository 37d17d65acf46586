package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import plainscale.notation.Expr;

/**
 * Every step of a derivation tried at {@value #POINTS} seeded random points, and its answer put
 * into the relations that it was derived from. Empty if all is well, else what fails, in sentences.
 */
public record Check(List<String> failures) {
  /** Good points that every step and the answer must pass. */
  public static final int POINTS = 20;

  private static final int MOST_TRIES = 1500;
  private static final long SEED = 1729;

  /** Keeps its own copy of the list. */
  public Check {
    failures = List.copyOf(failures);
  }

  /** Whether nothing failed. */
  public boolean passes() {
    return failures.isEmpty();
  }

  /** The check of a derivation of which it is not said what is known. */
  public static Check of(Derivation derivation) {
    return of(derivation, name -> false);
  }

  /** The check of a derivation in which these names are known: they take any value. */
  public static Check of(Derivation derivation, Predicate<String> isKnown) {
    List<String> failures = new ArrayList<>();
    for (Step step : derivation.steps()) {
      step(derivation, step).ifPresent(failures::add);
    }
    for (Expr answer : answers(derivation.outcome())) {
      answer(derivation, answer, isKnown).ifPresent(failures::add);
    }
    return new Check(failures);
  }

  private static List<Expr> answers(Outcome outcome) {
    if (outcome instanceof Outcome.Solved solved) {
      return List.of(solved.answer());
    }
    return outcome instanceof Outcome.Several several ? several.answers() : List.of();
  }

  private static Optional<String> step(Derivation derivation, Step step) {
    List<Equation> from = step.from().stream().map(derivation::equation).toList();
    List<Equation> all = new ArrayList<>(from);
    all.add(step.after());
    Mentions mentions = Mentions.of(all);
    StepCheck check = new StepCheck(step.rule(), from, step.after());
    Points points = new Points(SEED + step.number(), mentions.angles());
    int good = 0;
    for (int i = 0; i < MOST_TRIES && good < POINTS; i++) {
      Optional<Boolean> holds = check.at(points, points.next(mentions.names(), i));
      if (holds.isPresent() && !holds.get()) {
        return Optional.of("(" + step.number() + ") does not follow: " + step.after().text());
      }
      good += holds.isPresent() ? 1 : 0;
    }
    return good < POINTS
        ? Optional.of("(" + step.number() + ") has only " + good + " points to check it at")
        : Optional.empty();
  }

  private static Optional<String> answer(
      Derivation derivation, Expr answer, Predicate<String> isKnown) {
    Completion completion = new Completion(derivation, used(derivation), isKnown);
    int good = 0;
    int bad = 0;
    for (int i = 0; i < MOST_TRIES && good < POINTS; i++) {
      Optional<Boolean> holds = completion.at(answer, i);
      good += holds.filter(Boolean::booleanValue).isPresent() ? 1 : 0;
      bad += holds.filter(h -> !h).isPresent() ? 1 : 0;
      if (bad > POINTS && good == 0) {
        break;
      }
    }
    boolean conditions = derivation.steps().stream().anyMatch(s -> s.condition().isPresent());
    boolean fails = good < POINTS || (bad > 0 && !conditions);
    return fails
        ? Optional.of("the answer fails at " + bad + " points and holds at " + good)
        : Optional.empty();
  }

  /** The numbers of the relations that the steps use; without steps, the one with the answer. */
  static Set<Integer> used(Derivation derivation) {
    int relations = derivation.relations().size();
    Set<Integer> used = new TreeSet<>();
    derivation.steps().forEach(step -> used.addAll(step.from()));
    used.removeIf(number -> number > relations);
    for (int i = 1; i <= relations && used.isEmpty(); i++) {
      if (derivation.equation(i).left() instanceof Expr.Name name
          && name.text().equals(derivation.unknown())) {
        used.add(i);
      }
    }
    return used;
  }
}
