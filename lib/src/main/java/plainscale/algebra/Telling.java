package plainscale.algebra;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plainscale.notation.Expr;

/** Makes a derivation of what the search found, and lets nothing pass that a check refuses. */
final class Telling {
  /** No one reads an equation of more characters on the way to nothing. */
  private static final int LONGEST = 600;

  private static final String MISFIT =
      "with the values given, what follows does not fit the relations.";

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
    String why = "no real number fits: " + path.end().why() + ".";
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
    List<Candidate> candidates = candidates(path);
    List<Candidate> open = candidates.stream().filter(Candidate::isOpen).toList();
    Derivation derivation = chosen(open, candidates);
    return open.size() > 1 || hasValues() ? judged(derivation, candidates) : derivation;
  }

  private List<Candidate> candidates(Isolation.Path path) {
    List<Candidate> candidates = new ArrayList<>(List.of(new Candidate(path.last(), "", false)));
    for (Turn.Alternative other : path.alternatives()) {
      Isolation.Path rest = new Isolation(board, unknown).run(other.line()).tidied(board);
      if (rest.isDone()) {
        candidates.add(new Candidate(rest.last(), other.why(), other.onlyBySign()));
      }
    }
    return candidates;
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
        if (board.differ(left, right)) {
          Line.Note note = Line.Note.of("Substitute " + unknown + " from {1} in {0}.");
          return Optional.of(Line.by(Rule.SUBSTITUTE, List.of(line, answer), left, right, note));
        }
      }
    }
    return Optional.empty();
  }

  private boolean hasValues() {
    return lines.stream()
        .flatMap(line -> line.names().stream())
        .filter(board.known()::isKnown)
        .allMatch(name -> board.known().value(name).isPresent());
  }

  /** The derivation of these roots, of which all others are told too if it is only one. */
  private Derivation chosen(List<Candidate> chosen, List<Candidate> all) {
    if (chosen.size() > 1) {
      List<Line> ends = chosen.stream().map(Candidate::line).toList();
      List<Expr> answers = chosen.stream().map(this::answer).toList();
      Outcome several = new Outcome.Several(answers);
      return new Derivation(unknown, relations, numbering(ends).steps(), several);
    }
    Candidate only = chosen.get(0);
    List<Outcome.Other> rejected =
        all.stream()
            .filter(other -> !other.equals(only))
            .map(other -> new Outcome.Other(answer(other), other.why()))
            .toList();
    return ended(only.line(), new Outcome.Solved(answer(only), rejected));
  }

  private Expr answer(Candidate candidate) {
    Sum answer = candidate.line().right();
    return (answer.isZero() ? zero() : Optional.<Expr>empty())
        .orElseGet(() -> board.writer().write(answer));
  }

  /** Zero with its unit, where a relation says so. */
  private Optional<Expr> zero() {
    return relations.stream()
        .map(Relation::equation)
        .filter(e -> e.left() instanceof Expr.Name name && name.text().equals(unknown))
        .map(Equation::right)
        .filter(right -> NormalForm.of(right).isZero())
        .findFirst();
  }

  /** Roots that are not real, do not fit or are not meant are told with the reason. */
  private Derivation judged(Derivation derivation, List<Candidate> candidates) {
    boolean angle = Angles.isAngle(lines, unknown);
    Choice.Result result = new Choice(board, derivation, candidates, angle).result();
    if (result.left().isEmpty()) {
      return hasValues() ? notReal(derivation) : derivation;
    }
    Derivation told = chosen(result.left(), result.all());
    return isAnswerByZero(told) ? notReal(told) : told;
  }

  private boolean isAnswerByZero(Derivation told) {
    return told.outcome() instanceof Outcome.Solved solved
        && ZeroDivisor.isIn(solved.answer(), board.known());
  }

  private Derivation notReal(Derivation derivation) {
    int last = derivation.relations().size() + derivation.steps().size();
    Outcome outcome =
        ZeroDivisor.of(derivation, board.known())
            .map(found -> new Outcome.NoRealSolution(found.step(), found.why()))
            .orElseGet(() -> new Outcome.NoRealSolution(last, MISFIT));
    return new Derivation(unknown, relations, derivation.steps(), outcome);
  }
}
