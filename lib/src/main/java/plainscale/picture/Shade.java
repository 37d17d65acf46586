package plainscale.picture;

/**
 * The few shades of a picture. The text shades have a contrast ratio of at least 4.5 : 1 against
 * {@link #GROUND} and {@link #TINT} (WCAG 2.2, success criterion 1.4.3), {@link #LINE} at least 3 :
 * 1 against {@link #GROUND} (1.4.11). Nothing is told by hue alone.
 */
public enum Shade {
  GROUND("#ffffff"),
  TINT("#f3f3f1"),
  BAND("#dcdcd8"),
  LINE("#8a8a86"),
  PALE("#6a6a66"),
  SOFT("#4a4a47"),
  INK("#161616"),
  /** For the marks that a picture is about; dark grey on a black-and-white printer. */
  ACCENT("#8f2d16");

  private final String hex;

  Shade(String hex) {
    this.hex = hex;
  }

  /** The colour in the form #rrggbb. */
  public String hex() {
    return hex;
  }
}
