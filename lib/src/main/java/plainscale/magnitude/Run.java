package plainscale.magnitude;

/** A stretch of a written number in one role: {@code (SIGNIFICANT, "8")}. */
public record Run(Role role, String text) {}
