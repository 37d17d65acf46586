package plainscale.magnitude;

public record Landmark(
    String quantity, java.math.BigDecimal value, String unit, String name, String source) {}
