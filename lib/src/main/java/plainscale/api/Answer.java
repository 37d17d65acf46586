package plainscale.api;

import java.util.List;
import plainscale.sheet.Result;

/**
 * What a situation answers to a question: the result as data, and, where there are any, warnings
 * about it.
 *
 * <pre>{@code
 * Answer<Result.Varied> table = given("h", "1.25 m").define("t", "sqrt(2*h/g_n)")
 *     .vary("h", "1 m", "3 m", "1 m", "t in ms");
 * check(table.result().rows().size() == 3);
 * check(table.toString().contains("452 ms"));
 * }</pre>
 *
 * @param <R> the kind of result
 */
public final class Answer<R extends Result> implements Displayed {
  private final Situation situation;
  private final R result;
  private final List<Result> results;

  private Answer(Situation situation, R result, List<Result> results) {
    this.situation = situation;
    this.result = result;
    this.results = results;
  }

  /** The answer among some results; what is wrong with them is thrown. */
  static <R extends Result> Answer<R> of(Situation situation, List<Result> results, Class<R> kind) {
    Situation.refuseMistakes(results);
    R result =
        results.stream()
            .filter(kind::isInstance)
            .map(kind::cast)
            .findFirst()
            .orElseThrow(
                () -> PhysicsException.of("This has no answer yet: it waits for a blank."));
    return new Answer<>(situation, result, List.copyOf(results));
  }

  /** The result as data. */
  public R result() {
    return result;
  }

  @Override
  public List<Result> results() {
    return results;
  }

  /** The situation that was asked. */
  public Situation situation() {
    return situation;
  }

  @Override
  public String toString() {
    return text();
  }
}
