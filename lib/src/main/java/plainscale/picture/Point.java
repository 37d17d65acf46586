package plainscale.picture;

/** A place in a scene: x to the right, y downwards, in CSS pixels. */
public record Point(double x, double y) {}
