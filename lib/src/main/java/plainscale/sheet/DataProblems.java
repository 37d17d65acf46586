package plainscale.sheet;

import java.util.List;
import java.util.function.Supplier;
import plainscale.algebra.Evaluator;
import plainscale.data.DataException;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;

/** What is wrong with data, told at a place in a source. */
final class DataProblems {
  private DataProblems() {}

  /** Does something with data or quantities whose complaints are told at that place. */
  static <T> T at(String source, Span span, Supplier<T> operation) {
    try {
      return Evaluator.at(source, span, operation);
    } catch (DataException e) {
      throw problem(Problem.Kind.VALUE, e.sentence(), source, span, e.repairs());
    }
  }

  static ProblemException problem(
      Problem.Kind kind, String sentence, String source, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
