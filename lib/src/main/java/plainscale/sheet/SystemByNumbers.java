package plainscale.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.algebra.Known;
import plainscale.algebra.NumericSystem;
import plainscale.quantity.Quantity;

/** The root of equations that have no closed form together, with units and uncertainties. */
record SystemByNumbers(Wave wave, List<Equation> equations, List<String> unknowns) {

  /** The unknowns' values, and by how much the sides differ there, as a part of their size. */
  record Found(Map<String, Quantity> quantities, double residual) {}

  Optional<Found> found(Known known) {
    RootQuantities quantities = new RootQuantities(wave, equations, unknowns);
    return NumericSystem.solve(equations, unknowns, known)
        .map(root -> new Found(quantities.of(root.values()), root.residual()));
  }
}
