package plainscale.notation;

/** {@code t < 1 s} or {@code t > v_0/g_n}: which of several answers is meant. */
public record Bound(Span span, boolean above, Expr value) {

  /** As it is written after the unknown's name. */
  public String text(String unknown) {
    return unknown + (above ? " > " : " < ") + Printer.print(value);
  }
}
