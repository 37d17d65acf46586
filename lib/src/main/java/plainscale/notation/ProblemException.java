package plainscale.notation;

import java.util.List;

/** Carries problems out of a parse or an evaluation. */
public final class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Problem> problems;

  /** One or more problems, in the order of the source. */
  public ProblemException(List<Problem> problems) {
    super(problems.get(0).sentence(), null, false, false);
    this.problems = List.copyOf(problems);
  }

  /** A single problem. */
  public ProblemException(Problem problem) {
    this(List.of(problem));
  }

  /** Whether nothing is wrong, and what is asked for only waits for a blank. */
  public boolean isBlank() {
    return problems.get(0).kind() == Problem.Kind.BLANK;
  }

  /** The problems; at least one. */
  public List<Problem> problems() {
    return problems;
  }
}
