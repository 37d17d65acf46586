package plainscale.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Ratio;

/**
 * The numbers of a picture, all in one unit: those that it is about, landmarks to compare them
 * with, and the ratio of the largest to the smallest where it is known better than from the rounded
 * marks.
 */
public record Marks(List<Mark> main, List<Mark> landmarks, Optional<Ratio> ratio) {
  private static final int MOST_FIGURES = 3;
  private static final long REACH = 2_000_000_000;
  private static final Comparator<Mark> BY_SIZE = Comparator.comparing(m -> m.value().abs());

  /** Puts both lists in order, from the smallest size to the largest. */
  public Marks {
    main = main.stream().sorted(BY_SIZE).toList();
    landmarks = landmarks.stream().sorted(BY_SIZE).toList();
    List<Mark> all = Stream.concat(main.stream(), landmarks.stream()).toList();
    if (all.stream().anyMatch(m -> Math.abs(PowerOfTen.of(m.value()).exponent()) > REACH)) {
      throw new IllegalArgumentException(
          "A number of more than two billion digits is too long for a picture.");
    }
    List<String> units = all.stream().map(Mark::unit).distinct().toList();
    if (units.size() > 1) {
      throw new IllegalArgumentException(
          "The numbers of one picture must be in one unit, not in %s and %s."
              .formatted(named(units.get(0)), named(units.get(1))));
    }
  }

  /** Numbers without landmarks, their ratio to be taken from them. */
  public static Marks of(List<Mark> main) {
    return new Marks(main, List.of(), Optional.empty());
  }

  /** The same numbers beside landmarks. */
  public Marks with(List<Mark> others) {
    return new Marks(main, others, ratio);
  }

  /** The same numbers with a ratio that is better known. */
  public Marks with(Ratio known) {
    return new Marks(main, landmarks, Optional.of(known));
  }

  private static String named(String unit) {
    return unit.isEmpty() ? "none" : unit;
  }

  Mark smallest() {
    return main.get(0);
  }

  Mark largest() {
    return main.get(main.size() - 1);
  }

  List<Mark> all() {
    return Stream.concat(main.stream(), landmarks.stream()).toList();
  }

  boolean anyZero() {
    return all().stream().anyMatch(m -> m.value().signum() == 0);
  }

  boolean anyNegative() {
    return all().stream().anyMatch(m -> m.value().signum() < 0);
  }

  /** The ratio of the largest to the smallest, to three figures at most unless it was given. */
  Ratio outermost() {
    return ratio.orElseGet(
        () -> {
          int figures = Math.min(smallest().value().precision(), largest().value().precision());
          return Ratio.of(largest().value(), smallest().value(), Math.min(MOST_FIGURES, figures));
        });
  }
}
