package plainscale.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import plainscale.data.DataTable;
import plainscale.data.Fit;
import plainscale.data.Parameter;
import plainscale.laws.Constant;
import plainscale.laws.Law;
import plainscale.picture.Scene;
import plainscale.quantity.Quantity;
import plainscale.render.Renderers;
import plainscale.sheet.Result;
import plainscale.sheet.Run;

/**
 * The results that stand for any value of a program, for those that display values.
 *
 * <pre>{@code
 * check(Displays.of(quantity("2.70(5) g")).orElseThrow().size() == 1);
 * check(Displays.of("a text").isEmpty());
 * }</pre>
 */
public final class Displays {
  private static volatile Consumer<@Nullable Object> reader = Displays::print;

  private Displays() {}

  /**
   * Sends what {@link Plainscale#display} is given from now on to a reader of the host's, as a
   * notebook does; without one it is printed.
   */
  public static void sendTo(Consumer<@Nullable Object> host) {
    reader = host;
  }

  static void display(@Nullable Object value) {
    reader.accept(value);
  }

  /** For programs without a host. */
  private static void print(@Nullable Object value) {
    System.out.println(of(value).map(Renderers::text).orElseGet(() -> String.valueOf(value)));
  }

  /**
   * The results of what the library knows to show; nothing for all other objects.
   *
   * @throws PhysicsException if what is to be shown has no answer
   */
  public static Optional<List<Result>> of(@Nullable Object value) {
    if (value instanceof Displayed displayed) {
      return Optional.of(displayed.results());
    }
    if (value instanceof Result result) {
      return Optional.of(List.of(result));
    }
    if (value instanceof Run run) {
      return Optional.of(run.results());
    }
    if (value instanceof Scene scene) {
      return Optional.of(List.of(new Result.Drawn(scene)));
    }
    if (value instanceof List<?> list && !list.isEmpty()) {
      return ofAll(list);
    }
    return Optional.ofNullable(value).flatMap(Displays::shown).map(Displayed::results);
  }

  /**
   * The text of what is shown; if it cannot be, what is wrong, since a text is asked for anywhere.
   */
  static String text(Displayed displayed) {
    try {
      return displayed.text();
    } catch (PhysicsException e) {
      return String.valueOf(e.getMessage());
    }
  }

  private static Optional<List<Result>> ofAll(List<?> list) {
    return list.stream().allMatch(Result.class::isInstance)
        ? Optional.of(list.stream().map(Result.class::cast).toList())
        : Optional.empty();
  }

  private static Optional<Displayed> shown(Object value) {
    if (value instanceof Quantity quantity) {
      return Optional.of(Plainscale.show(quantity));
    }
    if (value instanceof Named named) {
      return Optional.of(Plainscale.given(named));
    }
    if (value instanceof DataTable table) {
      return Optional.of(Plainscale.data(table));
    }
    if (value instanceof Fit fit) {
      return Optional.of(parameters(fit));
    }
    if (value instanceof Law law) {
      return Optional.of(Plainscale.law(law.name()));
    }
    return value instanceof Constant constant
        ? Optional.of(Plainscale.situation().show(constant.symbol()))
        : Optional.empty();
  }

  private static Situation parameters(Fit fit) {
    Situation situation = Plainscale.situation();
    for (Parameter parameter : fit.parameters()) {
      situation = situation.given(parameter.symbol(), parameter.quantity());
    }
    return situation;
  }
}
