package plainscale.magnitude;

public record Neighbours(java.util.List<Landmark> below, java.util.List<Landmark> above) {}
