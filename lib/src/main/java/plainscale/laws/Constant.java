package plainscale.laws;

import plainscale.quantity.Quantity;

/** A constant of nature: symbol, meaning, value, and where the value is published. */
public record Constant(String symbol, String meaning, Quantity quantity, String source) {}
