package plainscale.picture;

import plainscale.picture.TextStyle.Weight;

/**
 * An upper estimate of how wide a text is, without asking for a font: the picture must not depend
 * on the machine that draws it. The classes are chosen to cover DejaVu Sans, the widest of the
 * common system fonts (advance widths read from the font: digits 0.636 em, m 0.974, × 0.838, bold
 * about a tenth more).
 */
public final class TextWidth {
  /** Room above and below the baseline, in em. */
  public static final double ASCENT = 0.78;

  public static final double DESCENT = 0.22;

  private static final String NARROW = "ijltfrI.,:;'|!()[]/ -\u2008\u00a0";
  private static final String THIN = "\u202f\u2009";
  private static final String WIDE = "mwMW@%×−–—…\u2212";
  private static final double BOLD = 1.12;
  private static final double RAISED = 0.7;

  private TextWidth() {}

  public static double of(String text, TextStyle style) {
    double em = text.codePoints().mapToDouble(TextWidth::em).sum();
    return em * style.size() * (style.weight() == Weight.BOLD ? BOLD : 1);
  }

  private static double em(int c) {
    if (Symbol.isMark(c)) {
      return 0;
    }
    if (Superscript.isRaised(c)) {
      return RAISED * (Superscript.lower(c) == '−' ? 0.84 : 0.64);
    }
    if (THIN.indexOf(c) >= 0) {
      return 0.25;
    }
    if (NARROW.indexOf(c) >= 0) {
      return 0.42;
    }
    if (WIDE.indexOf(c) >= 0) {
      return 1.0;
    }
    if (Character.isUpperCase(c)) {
      return 0.77;
    }
    return c < 0x500 ? 0.64 : 1.05;
  }
}
