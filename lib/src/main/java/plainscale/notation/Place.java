package plainscale.notation;

/** A pair in brackets: a place {@code (x, y)} or a velocity {@code (v_x, v_y)}. */
public record Place(Span span, Expr x, Expr y) {}
