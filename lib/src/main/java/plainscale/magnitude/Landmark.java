package plainscale.magnitude;

import java.math.BigDecimal;

/**
 * A size that a class can picture: {@code quantity} is the kind of quantity by its usual name
 * ("length", "plain number"), {@code value} is in {@code unit}, the coherent one of that kind,
 * {@code name} reads well after "about" ("diameter of a hydrogen atom"), and {@code source} is
 * where the value was published.
 */
public record Landmark(
    String quantity, BigDecimal value, String unit, Known known, String name, String source) {}
