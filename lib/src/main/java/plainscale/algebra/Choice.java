package plainscale.algebra;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Which of several roots is meant. They are tried with the values at hand; names without a value
 * take random positive ones, and then a reason against a root counts only if it holds at every
 * point.
 */
final class Choice {
  private static final int POINTS = 12;
  private static final EnumSet<Flaw> FALSE = EnumSet.of(Flaw.UNREAL, Flaw.MISFIT);
  private static final double ZERO = 1e-12;
  private static final double RIGHT_ANGLE = Math.PI / 2 * (1 + ZERO);

  private final Board board;
  private final Derivation derivation;
  private final List<Candidate> candidates;
  private final boolean angle;
  private final Completion completion;
  private final Points points;
  private final Set<String> given;
  private final boolean hasValues;

  /** Of a root, from what is worst to what may be after all. */
  private enum Flaw {
    UNREAL("it is not a real number for these values."),
    MISFIT(Outcome.Other.MISFIT),
    NOTHING("%2$s would be zero, as if nothing happened."),
    NEGATIVE("%1$s would be negative."),
    WIDE("%1$s would be above 90°.");

    private final String why;

    Flaw(String why) {
      this.why = why;
    }
  }

  /** What speaks against a root, and the other unknowns that are zero with it. */
  private record Verdict(Set<Flaw> flaws, Set<String> zero) {
    static Verdict worst(Set<String> names) {
      return new Verdict(EnumSet.allOf(Flaw.class), names);
    }

    /** What holds at both points. */
    Verdict and(Verdict other) {
      Set<Flaw> both = EnumSet.copyOf(flaws);
      both.retainAll(other.flaws);
      Set<String> zeros = new HashSet<>(zero);
      zeros.retainAll(other.zero);
      if (zeros.isEmpty()) {
        both.remove(Flaw.NOTHING);
      }
      return new Verdict(both, zeros);
    }
  }

  /** A root at one point: its value, and all values with it where they could be found. */
  private record Tried(double value, Map<String, Double> all, boolean fits) {}

  /** The roots that nothing speaks against, and all of them with the reasons. */
  record Result(List<Candidate> left, List<Candidate> all) {}

  /** The derivation has the steps that the candidates come from. */
  Choice(Board board, Derivation derivation, List<Candidate> candidates, boolean angle) {
    this.board = board;
    this.derivation = derivation;
    this.candidates = List.copyOf(candidates);
    this.angle = angle;
    List<Equation> relations = Check.used(derivation).stream().map(derivation::equation).toList();
    Mentions mentions = Mentions.of(relations);
    this.points = new Points(candidates.size(), mentions.angles());
    this.given = new TreeSet<>(mentions.names());
    given.removeIf(name -> !board.known().isKnown(name));
    this.hasValues = given.stream().allMatch(name -> board.known().value(name).isPresent());
    this.completion =
        new Completion(
            derivation, Check.used(derivation), name -> hasValues || board.known().isKnown(name));
  }

  /** What is left, best first; nothing if no root is real and fits. */
  Result result() {
    List<Verdict> verdicts = verdicts();
    List<Integer> left = first(without(FALSE, all(), verdicts), verdicts);
    for (Flaw flaw : List.of(Flaw.NOTHING, Flaw.NEGATIVE, Flaw.WIDE)) {
      List<Integer> better = without(EnumSet.of(flaw), left, verdicts);
      left = better.isEmpty() ? left : better;
    }
    List<Candidate> told = new ArrayList<>();
    for (int i : all()) {
      told.add(left.contains(i) ? candidates.get(i) : told(candidates.get(i), verdicts.get(i)));
    }
    return new Result(left.stream().map(told::get).toList(), told);
  }

  /** The open ones; rather than one with which nothing happens one that is only negative. */
  private List<Integer> first(List<Integer> fitting, List<Verdict> verdicts) {
    Set<Flaw> nothing = EnumSet.of(Flaw.NOTHING);
    List<Integer> open = fitting.stream().filter(i -> candidates.get(i).isOpen()).toList();
    List<Integer> negative = fitting.stream().filter(i -> candidates.get(i).onlyBySign()).toList();
    if (without(nothing, open, verdicts).isEmpty()
        && !without(nothing, negative, verdicts).isEmpty()) {
      return without(nothing, negative, verdicts);
    }
    return open.isEmpty() ? fitting.stream().limit(1).toList() : open;
  }

  private List<Integer> all() {
    return IntStream.range(0, candidates.size()).boxed().toList();
  }

  private static List<Integer> without(
      Set<Flaw> refused, List<Integer> numbers, List<Verdict> verdicts) {
    return numbers.stream()
        .filter(i -> verdicts.get(i).flaws().stream().noneMatch(refused::contains))
        .toList();
  }

  /** A reason that is stronger than the sign, and not that the numbers refuse it, stays. */
  private Candidate told(Candidate candidate, Verdict verdict) {
    boolean has = !candidate.isOpen() && !candidate.onlyBySign();
    String zero = String.join(" and ", new TreeSet<>(verdict.zero()));
    return verdict.flaws().stream()
        .filter(flaw -> !has || flaw == Flaw.UNREAL)
        .findFirst()
        .map(flaw -> candidate.because(flaw.why.formatted(derivation.unknown(), zero)))
        .orElse(candidate);
  }

  private List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    for (int i = 0; i < candidates.size(); i++) {
      verdicts.add(Verdict.worst(Set.copyOf(completion.names())));
    }
    for (int point = 0; point < (hasValues ? 1 : POINTS); point++) {
      List<Tried> tried = tried(point);
      for (int i : all()) {
        if (!Double.isNaN(tried.get(i).value())) {
          verdicts.set(i, verdicts.get(i).and(verdict(tried.get(i), tried)));
        }
      }
    }
    return verdicts;
  }

  private List<Tried> tried(int point) {
    Map<String, Double> values = new HashMap<>();
    given.forEach(
        n -> values.put(n, board.known().value(n).orElseGet(() -> points.value(n, point))));
    return candidates.stream().map(candidate -> tried(candidate, values, point)).toList();
  }

  private Tried tried(Candidate candidate, Map<String, Double> given, int point) {
    Map<String, Double> values = new HashMap<>(given);
    double root = Approximate.of(board.writer().write(candidate.line().right()), given).value();
    values.put(derivation.unknown(), root);
    Optional<Map<String, Double>> all =
        Double.isNaN(root) ? Optional.empty() : completion.completed(values, point);
    return new Tried(root, all.orElse(Map.of()), all.map(completion::holds).orElse(true));
  }

  private Verdict verdict(Tried root, List<Tried> others) {
    Set<Flaw> flaws = EnumSet.noneOf(Flaw.class);
    Set<String> zero = new HashSet<>(root.all().keySet());
    zero.removeIf(name -> given.contains(name) || name.equals(derivation.unknown()));
    zero.removeIf(name -> Math.abs(value(root, name)) > ZERO * largest(name, others));
    add(flaws, Flaw.MISFIT, !root.fits());
    add(flaws, Flaw.NOTHING, !zero.isEmpty());
    add(flaws, Flaw.NEGATIVE, root.value() < 0);
    add(flaws, Flaw.WIDE, angle && root.value() > RIGHT_ANGLE);
    return new Verdict(flaws, zero);
  }

  private static void add(Set<Flaw> flaws, Flaw flaw, boolean holds) {
    if (holds) {
      flaws.add(flaw);
    }
  }

  private static double value(Tried tried, String name) {
    return tried.all().getOrDefault(name, 0.0);
  }

  private static double largest(String name, List<Tried> all) {
    return all.stream().mapToDouble(tried -> Math.abs(value(tried, name))).max().orElse(0);
  }
}
