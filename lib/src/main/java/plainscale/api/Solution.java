package plainscale.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.algebra.Derivation;
import plainscale.algebra.Outcome;
import plainscale.notation.Greek;
import plainscale.notation.Printer;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.sheet.Result;

/**
 * An unknown derived from relations: the narrated steps, in letters while values are missing, and
 * its value as soon as all that it hangs on has one. Its methods return solutions with other
 * values, another unit or other telling.
 *
 * <pre>{@code
 * Solution fall = relation("y = 1/2 g_n t^2").solveFor("t");
 * check(fall.text().contains("Take the square root"));
 * Quantity t = fall.with("y", quantity("1.25(1) m")).in("ms").value();
 * check(t.toString().equals("(504.9 ± 2.0) ms"));
 * }</pre>
 */
public final class Solution implements Displayed {
  private final Situation asked;
  private final String unknown;
  private final List<String> relations;
  private final Options options;
  private final Once<Situation> solved;

  private record Options(
      String unit, Statement.Telling telling, String choice, String what, Set<String> letters) {
    Options in(String other) {
      return new Options(other, telling, choice, what, letters);
    }

    Options telling(Statement.Telling other) {
      return new Options(unit, other, choice, what, letters);
    }

    Options choosing(String clause) {
      return new Options(unit, telling, choice + " with " + clause, what, letters);
    }

    Options described(String other) {
      return new Options(unit, telling, choice, other, letters);
    }

    Options inLettersOf(Set<String> other) {
      return new Options(unit, telling, choice, what, other);
    }
  }

  private Solution(Situation asked, String unknown, List<String> relations, Options options) {
    this.asked = asked;
    this.unknown = Greek.normal(unknown);
    this.relations = List.copyOf(relations);
    this.options = options;
    this.solved = new Once<>(() -> asked.with(this.unknown, statement()));
  }

  static Solution of(Situation situation, String unknown, List<String> relations) {
    if (relations.isEmpty()) {
      throw PhysicsException.of(
          "There is no relation to solve for “" + unknown + "”.",
          "relation(\"m g_n = T cos(θ)\").solveFor(\"T\")");
    }
    Options options = new Options("", Statement.Telling.STEPS, "", "", Set.of());
    return new Solution(situation, unknown, relations, options);
  }

  private String statement() {
    String telling =
        options.telling == Statement.Telling.STEPS
            ? ""
            : options.telling.name().toLowerCase(Locale.ROOT);
    return "solve "
        + String.join(", ", relations)
        + " for "
        + unknown
        + Written.clause("in", options.unit)
        + options.choice
        + Written.clause("with", telling)
        + Written.after(options.what);
  }

  private Solution with(Options other) {
    return new Solution(asked, unknown, relations, other);
  }

  /** The same with a quantity under a name. */
  public Solution with(String name, Quantity value) {
    return new Solution(asked.given(name, value), unknown, relations, options);
  }

  /** The same with a measured value under a name, as a given is written. */
  public Solution with(String name, String measured) {
    return new Solution(asked.given(name, measured), unknown, relations, options);
  }

  /** The same with the value in that unit. */
  public Solution in(String unit) {
    return with(options.in(unit));
  }

  /** The same with so much of its steps told: all, the answer, boxes or questions for students. */
  public Solution telling(Statement.Telling telling) {
    return with(options.telling(telling));
  }

  /** The same for a small angle of that name; by how much that misses is told. */
  public Solution small(String angle) {
    return with(options.choosing("small " + angle));
  }

  /** Of several answers that for which this holds, as {@code where("t < 2 s")}. */
  public Solution where(String comparison) {
    return with(options.choosing(comparison));
  }

  /**
   * The same in letters: these names count as known while they have no value. Of one relation all
   * names do, without being told.
   */
  public Solution inLettersOf(String... names) {
    return with(
        options.inLettersOf(Stream.of(names).map(Greek::normal).collect(Collectors.toSet())));
  }

  /** The same with what the unknown is in words. */
  public Solution described(String what) {
    return with(options.described(what));
  }

  /** The result as data: the derivation, and the value with what makes it uncertain. */
  public Result.Derived result() {
    return Answer.first(results(), Result.Derived.class);
  }

  /** The steps and the answer as data. */
  public Derivation derivation() {
    return result().derivation();
  }

  /** What the unknown is in letters; nothing where there is no closed form. */
  public Optional<String> formula() {
    return derivation().outcome() instanceof Outcome.Solved solved
        ? Optional.of(Printer.print(solved.answer()))
        : Optional.empty();
  }

  /** The value of the unknown. */
  public Quantity value() {
    return solved.get().value(unknown);
  }

  /** The situation in which the unknown is solved, to go on with. */
  public Situation situation() {
    return solved.get();
  }

  @Override
  public List<Result> results() {
    return LetterSteps.of(asked.sheet(), relations, unknown, options.letters, options.telling)
        .map(List::of)
        .orElseGet(() -> solved.get().results(unknown));
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
