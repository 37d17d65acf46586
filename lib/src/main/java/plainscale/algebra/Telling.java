package plainscale.algebra;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import plainscale.notation.Expr;

/** Makes a derivation of what the search found, and lets nothing pass that a check refuses. */
final class Telling {
  /** How far relations that say the same may be apart when what is known was measured. */
  private static final double MEASURED = 0.01;

  /** No one reads an equation of more characters on the way to nothing. */
  private static final int LONGEST = 600;

  private final Board board;
  private final List<Relation> relations;
  private final List<Line> lines;
  private final String unknown;

  Telling(Board board, List<Relation> relations, List<Line> lines, String unknown) {
    this.board = board;
    this.relations = relations;
    this.lines = lines;
    this.unknown = unknown;
  }

  /** A candidate for the answer: where it stands, and why it is not the first choice. */
  private record Candidate(Line line, String why) {}

  Derivation tell(Search.Found found) {
    Derivation derivation = told(found);
    Check check = Check.of(derivation, board.known()::isKnown);
    if (check.passes()) {
      return derivation;
    }
    String why = "A check by numbers failed: " + check.failures().get(0) + ".";
    return new Derivation(unknown, relations, List.of(), new Outcome.Bounded(why));
  }

  /** The steps to where a search was stopped; none if they are none, or too long to be read. */
  Optional<Derivation> stopped(Search.Found found, String why) {
    Numbering numbering = numbering(found.live());
    List<Integer> left = found.live().stream().map(numbering::number).sorted().toList();
    List<String> open = unknowns(found);
    open.remove(unknown);
    Derivation derivation =
        new Derivation(unknown, relations, numbering.steps(), new Outcome.Bounded(why, left, open));
    boolean readable =
        derivation.steps().stream().allMatch(s -> s.after().text().length() <= LONGEST);
    return Optional.of(derivation)
        .filter(d -> !d.steps().isEmpty() && readable)
        .filter(d -> Check.of(d, board.known()::isKnown).passes());
  }

  private List<String> unknowns(Search.Found found) {
    TreeSet<String> names = new TreeSet<>();
    found.live().forEach(line -> names.addAll(line.names()));
    names.removeIf(name -> board.known().isKnown(name));
    return new ArrayList<>(names);
  }

  private Derivation told(Search.Found found) {
    if (found.path().isEmpty()) {
      return system(found);
    }
    Isolation.Path path = found.path().get();
    return switch (path.end().kind()) {
      case DONE -> solved(path);
      case STUCK -> numeric(path.lines().get(0));
      case DROPPED -> ended(path.last(), new Outcome.Cancelled(unknown));
      case CONTRADICTION -> ended(path.last(), new Outcome.Contradiction(equation(path.last())));
      case NOT_REAL -> notReal(path);
    };
  }

  private Equation equation(Line line) {
    int relation = lines.indexOf(line);
    return relation >= 0
        ? relations.get(relation).equation()
        : board.writer().equation(line.left(), line.right());
  }

  private Derivation ended(Line last, Outcome outcome) {
    return new Derivation(unknown, relations, numbering(List.of(last)).steps(), outcome);
  }

  private Numbering numbering(List<Line> ends) {
    return new Numbering(board.writer(), lines, ends);
  }

  private Derivation numeric(Line line) {
    return ended(line, new Outcome.Numeric(equation(line)));
  }

  private Derivation notReal(Isolation.Path path) {
    Numbering numbering = numbering(List.of(path.last()));
    int step = numbering.number(path.last());
    String why = "No real number fits: " + path.end().why() + ".";
    return new Derivation(
        unknown, relations, numbering.steps(), new Outcome.NoRealSolution(step, why));
  }

  private Derivation system(Search.Found found) {
    Outcome outcome =
        new Outcome.NumericSystem(
            found.live().stream().map(this::equation).toList(), unknowns(found));
    return new Derivation(unknown, relations, numbering(found.live()).steps(), outcome);
  }

  private Derivation solved(Isolation.Path path) {
    Optional<Line> impossible = impossible(path.last());
    if (impossible.isPresent()) {
      Line last = impossible.get();
      return ended(last, new Outcome.Contradiction(equation(last)));
    }
    List<Candidate> candidates = new ArrayList<>(List.of(new Candidate(path.last(), "")));
    for (Turn.Alternative other : path.alternatives()) {
      Isolation.Path rest = new Isolation(board, unknown).run(other.line());
      if (rest.isDone()) {
        candidates.add(new Candidate(rest.last(), other.why()));
      }
    }
    boolean open = candidates.stream().skip(1).anyMatch(other -> other.why().isEmpty());
    Derivation first = chosen(candidates, candidates.get(0), open);
    return hasValues() ? byValues(first, candidates, open) : first;
  }

  /** A relation that was not needed and into which the answer does not fit. */
  private Optional<Line> impossible(Line answer) {
    List<Line> used = Line.needed(List.of(answer));
    for (Line line : lines) {
      boolean only =
          line.names().stream().allMatch(n -> n.equals(unknown) || board.known().isKnown(n));
      if (only && line.contains(unknown) && !used.contains(line)) {
        Term power = Term.of(new Atom.Symbol(unknown));
        Sum left = Replacement.in(line.left(), power, answer.right());
        Sum right = Replacement.in(line.right(), power, answer.right());
        if (differ(left, right)) {
          Line.Note note = Line.Note.of("Substitute " + unknown + " from {1} in {0}.");
          return Optional.of(Line.by(Rule.SUBSTITUTE, List.of(line, answer), left, right, note));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether sides are different numbers, or have values that are more than a hundredth apart. */
  private boolean differ(Sum left, Sum right) {
    OptionalDouble a = board.value(left);
    OptionalDouble b = board.value(right);
    if (a.isEmpty() || b.isEmpty()) {
      return false;
    }
    double larger = Math.max(Math.abs(a.getAsDouble()), Math.abs(b.getAsDouble()));
    return Math.abs(a.getAsDouble() - b.getAsDouble()) > MEASURED * larger;
  }

  private boolean hasValues() {
    return lines.stream()
        .flatMap(line -> line.names().stream())
        .filter(board.known()::isKnown)
        .allMatch(name -> board.known().value(name).isPresent());
  }

  private Derivation chosen(List<Candidate> candidates, Candidate chosen, boolean several) {
    if (several) {
      List<Candidate> open = candidates.stream().filter(c -> c.why().isEmpty()).toList();
      List<Line> ends = open.stream().map(Candidate::line).toList();
      List<Expr> answers = open.stream().map(this::answer).toList();
      return new Derivation(
          unknown, relations, numbering(ends).steps(), new Outcome.Several(answers));
    }
    List<Outcome.Other> rejected =
        candidates.stream()
            .filter(other -> !other.equals(chosen))
            .map(other -> new Outcome.Other(answer(other), other.why()))
            .toList();
    return ended(chosen.line(), new Outcome.Solved(answer(chosen), rejected));
  }

  private Expr answer(Candidate candidate) {
    return board.writer().write(candidate.line().right());
  }

  /** With values at hand, a root that does not fit the relations is rejected for that. */
  private Derivation byValues(Derivation first, List<Candidate> candidates, boolean open) {
    List<Candidate> judged = candidates.stream().map(c -> judged(first, c)).toList();
    List<Candidate> fit = judged.stream().filter(c -> !c.why().startsWith("It ")).toList();
    List<Candidate> positive =
        fit.stream().filter(c -> board.value(c.line().right()).orElse(0) >= 0).toList();
    if (fit.isEmpty()) {
      return notReal(first);
    }
    if (positive.size() > 1 && open) {
      return chosen(fit, fit.get(0), true);
    }
    Candidate chosen = positive.isEmpty() ? fit.get(0) : positive.get(0);
    boolean several = positive.isEmpty() && fit.size() > 1 && open;
    return chosen(several ? fit : judged, chosen, several);
  }

  private Derivation notReal(Derivation derivation) {
    int last = derivation.relations().size() + derivation.steps().size();
    String why = "With the values given, what follows does not fit the relations.";
    return new Derivation(
        unknown, relations, derivation.steps(), new Outcome.NoRealSolution(last, why));
  }

  private Candidate judged(Derivation derivation, Candidate candidate) {
    OptionalDouble value = board.value(candidate.line().right());
    if (Double.isNaN(value.orElse(Double.NaN))) {
      return new Candidate(candidate.line(), "It is not a real number for these values.");
    }
    Map<String, Double> values = new HashMap<>();
    for (Line line : lines) {
      for (String name : line.names()) {
        board.known().value(name).ifPresent(v -> values.put(name, v));
      }
    }
    values.put(unknown, value.getAsDouble());
    Optional<Boolean> holds =
        new Completion(derivation, Check.used(derivation), name -> true).complete(values, 0);
    if (holds.isPresent() && !holds.get()) {
      return new Candidate(candidate.line(), "It does not fit the relations.");
    }
    boolean negative = value.getAsDouble() < 0 && candidate.why().isEmpty();
    return negative ? new Candidate(candidate.line(), unknown + " would be negative.") : candidate;
  }
}
