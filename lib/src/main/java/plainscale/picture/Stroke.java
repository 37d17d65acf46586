package plainscale.picture;

/** How a line is drawn. */
public record Stroke(Shade shade, double width, boolean dashed) {

  /** A line without gaps. */
  public static Stroke solid(Shade shade, double width) {
    return new Stroke(shade, width, false);
  }
}
