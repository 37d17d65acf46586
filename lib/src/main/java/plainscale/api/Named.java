package plainscale.api;

import plainscale.quantity.Quantity;

/**
 * A quantity with its name and what it is in words, as it is labelled wherever it is shown.
 *
 * <pre>{@code
 * Named mass = named("m", quantity("2.70 g"), "mass of one ball");
 * check(given(mass).text().equals("m = 2.70 g    (mass of one ball)"));
 * }</pre>
 *
 * @param name a name of the notation
 * @param quantity its value
 * @param what what it is in words, possibly empty
 */
public record Named(String name, Quantity quantity, String what) {}
