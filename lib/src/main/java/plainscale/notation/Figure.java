package plainscale.notation;

/**
 * {@code figure balls "Two balls and their forces"}: a number and a caption for the picture of the
 * statement before it; sentences refer to it by its name.
 */
public record Figure(Span span, Statement.Option name, String caption) implements Statement {
  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.figure(this);
  }
}
