package plainscale.notation;

/** A place in a source text: characters from {@code start} to before {@code end}. */
public record Span(int start, int end) {

  /** From the start of this place to the end of the other. */
  public Span to(Span other) {
    return new Span(start, Math.max(end, other.end));
  }
}
