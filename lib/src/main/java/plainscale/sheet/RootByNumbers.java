package plainscale.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.Numerically;
import plainscale.quantity.Quantity;

/** The root of an equation that has no closed form, with its unit and its uncertainty. */
record RootByNumbers(Wave wave, Equation equation, String unknown) {

  /** The root that is taken, all that were found, and the quantity. */
  record Found(Numerically.Root root, Numerically.Roots all, Quantity quantity) {}

  /** What is asked for; else a positive root if there is one, of several the smallest. */
  Optional<Found> found(Known known, RootChoice choice) {
    Numerically.Roots roots = Numerically.solve(equation, unknown, known);
    choice.refuseOthers(
        roots.roots().stream().map(Numerically.Root::value).map(this::quantity).toList());
    List<Numerically.Root> asked =
        roots.roots().stream().filter(root -> choice.fits(quantity(root.value()))).toList();
    List<Numerically.Root> positive = asked.stream().filter(root -> root.value() > 0).toList();
    List<Numerically.Root> candidates = positive.isEmpty() ? asked : positive;
    return candidates.stream()
        .findFirst()
        .map(root -> new Found(root, roots, quantity(root.value())));
  }

  private Quantity quantity(double root) {
    RootQuantities quantities = new RootQuantities(wave, List.of(equation), List.of(unknown));
    return Objects.requireNonNull(quantities.of(Map.of(unknown, root)).get(unknown));
  }
}
