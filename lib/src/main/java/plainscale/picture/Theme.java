package plainscale.picture;

import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;

/**
 * The width and the text styles that the pictures share. A phone shows a picture about 358 CSS
 * pixels wide: the smallest text is still 10.6 of them high there.
 */
public final class Theme {
  public static final double WIDTH = 540;
  public static final double MARGIN = 20;

  public static final TextStyle TITLE = start(TextRole.TITLE, 20, Weight.BOLD, Shade.INK);
  public static final TextStyle LABEL = start(TextRole.LABEL, 17, Weight.NORMAL, Shade.SOFT);
  public static final TextStyle VALUE = start(TextRole.VALUE, 18, Weight.BOLD, Shade.INK);
  public static final TextStyle WORDS = start(TextRole.WORDS, 17, Weight.NORMAL, Shade.INK);
  public static final TextStyle SCALE =
      TextStyle.centred(TextRole.SCALE, 17, Weight.NORMAL, Shade.SOFT);
  public static final TextStyle NAME = start(TextRole.SCALE, 16, Weight.NORMAL, Shade.PALE);
  public static final TextStyle LANDMARK = start(TextRole.LABEL, 16, Weight.NORMAL, Shade.PALE);
  public static final TextStyle NOTE = start(TextRole.NOTE, 16, Weight.NORMAL, Shade.PALE);

  private Theme() {}

  private static TextStyle start(TextRole role, double size, Weight weight, Shade shade) {
    return new TextStyle(role, Anchor.START, size, weight, shade);
  }
}
