package plainscale.picture;

import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;

/** The text styles that the pictures share. */
final class Theme {
  static final double WIDTH = 800;
  static final double MARGIN = 24;

  static final TextStyle TITLE =
      new TextStyle(TextRole.TITLE, Anchor.START, 19, Weight.BOLD, Shade.INK);
  static final TextStyle LABEL = TextStyle.centred(TextRole.LABEL, 14, Weight.NORMAL, Shade.SOFT);
  static final TextStyle VALUE = TextStyle.centred(TextRole.VALUE, 17, Weight.BOLD, Shade.INK);
  static final TextStyle WORDS = TextStyle.centred(TextRole.WORDS, 14, Weight.NORMAL, Shade.INK);
  static final TextStyle SCALE = TextStyle.centred(TextRole.SCALE, 13, Weight.NORMAL, Shade.SOFT);
  static final TextStyle NAME = TextStyle.centred(TextRole.SCALE, 12, Weight.NORMAL, Shade.PALE);
  static final TextStyle NOTE =
      new TextStyle(TextRole.NOTE, Anchor.START, 12, Weight.NORMAL, Shade.PALE);

  private Theme() {}
}
