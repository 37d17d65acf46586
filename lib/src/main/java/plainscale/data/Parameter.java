package plainscale.data;

import java.util.OptionalDouble;
import plainscale.quantity.Quantity;
import plainscale.units.UnitOfMeasure;

/**
 * A parameter of a fit.
 *
 * @param symbol its letter in the formula of the model
 * @param value its value in {@code unit}
 * @param standard its standard uncertainty in {@code unit}; nothing where the points leave no
 *     degree of freedom to tell it
 * @param unit the unit, from those of the columns
 * @param quantity the same as a quantity, which shares its sources of uncertainty with the other
 *     parameters of the fit, so that what is computed from them counts their correlation
 */
public record Parameter(
    String symbol, double value, OptionalDouble standard, UnitOfMeasure unit, Quantity quantity) {}
