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
  private final String statement;
  private final Class<R> kind;
  private final List<Result> results;
  private final boolean labelled;

  private Answer(
      Situation situation,
      String statement,
      Class<R> kind,
      List<Result> results,
      boolean labelled) {
    this.situation = situation;
    this.statement = statement;
    this.kind = kind;
    this.results = List.copyOf(results);
    this.labelled = labelled;
  }

  /** What a situation answers; what is wrong is thrown. */
  static <R extends Result> Answer<R> of(Situation situation, String statement, Class<R> kind) {
    List<Result> results = situation.results(statement, kind);
    return new Answer<>(situation, statement, kind, results, true);
  }

  /** The same under no name, where the program has none for what was asked. */
  Answer<R> unlabelled() {
    return new Answer<>(situation, statement, kind, Unlabelled.of(results), false);
  }

  /**
   * The same with words of its own: a title, a caption, what it is for. Not every kind of answer
   * takes words.
   *
   * @throws PhysicsException if this kind takes none
   */
  public Answer<R> titled(String words) {
    Answer<R> titled = of(situation, statement + Written.after(words), kind);
    return labelled ? titled : titled.unlabelled();
  }

  /** The result as data. */
  public R result() {
    return first(results, kind);
  }

  /** The result of a kind among others; what is wrong is thrown. */
  static <R extends Result> R first(List<Result> results, Class<R> kind) {
    Situation.refuseMistakes(results);
    return results.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow(() -> missing(results));
  }

  private static PhysicsException missing(List<Result> results) {
    boolean waits = results.stream().anyMatch(Result.Unfinished.class::isInstance);
    return waits
        ? PhysicsException.of("This has no answer yet: it waits for a blank.")
        : PhysicsException.of("What stands here asks for something else.", "give a formula alone");
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
    return Displays.text(this);
  }
}
