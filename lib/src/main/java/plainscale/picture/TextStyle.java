package plainscale.picture;

/**
 * Role, anchor, size in pixels, weight and shade of a text; with a {@code halo} of the ground it
 * stands clear of the lines that it covers.
 */
public record TextStyle(
    TextRole role, Anchor anchor, double size, Weight weight, Shade shade, boolean halo) {

  /** A style without a halo. */
  public TextStyle(TextRole role, Anchor anchor, double size, Weight weight, Shade shade) {
    this(role, anchor, size, weight, shade, false);
  }

  /** Which part of the text stands at its point. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Stroke weight in the numbers of CSS. */
  public enum Weight {
    LIGHT(300),
    NORMAL(400),
    BOLD(700);

    private final int number;

    Weight(int number) {
      this.number = number;
    }

    public int number() {
      return number;
    }
  }

  /** A style with the text centred on its point. */
  public static TextStyle centred(TextRole role, double size, Weight weight, Shade shade) {
    return new TextStyle(role, Anchor.MIDDLE, size, weight, shade);
  }

  /** The same style with another anchor. */
  public TextStyle at(Anchor other) {
    return new TextStyle(role, other, size, weight, shade, halo);
  }

  /** The same style with a halo. */
  public TextStyle withHalo() {
    return new TextStyle(role, anchor, size, weight, shade, true);
  }
}
