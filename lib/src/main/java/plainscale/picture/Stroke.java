package plainscale.picture;

/** How a line is drawn. */
public record Stroke(Shade shade, double width, Dash dash) {

  /** The gaps of a line: what tells lines apart where colours do not. */
  public enum Dash {
    SOLID(""),
    DASHED("6 4"),
    DOTTED("2 4");

    private final String pattern;

    Dash(String pattern) {
      this.pattern = pattern;
    }

    /** Lengths of strokes and gaps in the notation of SVG; empty without gaps. */
    String pattern() {
      return pattern;
    }
  }

  /** A line without gaps. */
  public static Stroke solid(Shade shade, double width) {
    return new Stroke(shade, width, Dash.SOLID);
  }

  /** A line of strokes. */
  public static Stroke dashed(Shade shade, double width) {
    return new Stroke(shade, width, Dash.DASHED);
  }

  /** A line of dots. */
  public static Stroke dotted(Shade shade, double width) {
    return new Stroke(shade, width, Dash.DOTTED);
  }
}
