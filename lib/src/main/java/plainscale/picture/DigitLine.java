package plainscale.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;
import plainscale.picture.TextStyle.Anchor;
import plainscale.picture.TextStyle.Weight;

/**
 * The texts of one row of digits. Every digit stands in a column of its own, at a fixed pitch, so
 * that rows line up in any font; {@code places} tells where the column of each power of ten is.
 */
record DigitLine(List<Shape> texts, Map<Integer, Double> places, double left, double right) {
  /** The distance of two digits in em. */
  static final double PITCH = 0.7;

  private static final double GAP = 0.3;

  /** Draws a row from {@code start}, the left end of its blanks. */
  static DigitLine of(Alignment.Row row, Point start, double size) {
    List<Shape> texts = new ArrayList<>();
    Map<Integer, Double> places = new TreeMap<>();
    double left = start.x() + em(row.before()) * size;
    double x = left;
    int place = row.digits().integerPlaces() - 1;
    for (Run run : row.digits().runs()) {
      Shape.Text text = text(run, new Point(x, start.y()), size);
      if (run.role() != Role.SEPARATOR || !row.digits().style().isSpaced()) {
        texts.add(text);
      }
      for (int i = 0; i < run.text().length() && isFigure(run.role()); i++) {
        places.put(place, text.at().x() + i * text.pitch());
        place--;
      }
      x += text.box().width();
    }
    return new DigitLine(texts, places, left, x);
  }

  private static Shape.Text text(Run run, Point left, double size) {
    TextStyle style = style(run.role(), size);
    if (run.role() == Role.POWER) {
      return new Shape.Text(left, run.text().replace(' ', '\u00a0'), style.at(Anchor.START));
    }
    double pitch = em(run.text().charAt(0)) * size;
    return new Shape.Text(new Point(left.x() + pitch / 2, left.y()), run.text(), style, pitch);
  }

  private static double em(String text) {
    return text.chars().mapToDouble(DigitLine::em).sum();
  }

  /** A digit, the sign and the blank for one of them fill a column; all between is narrower. */
  private static double em(int c) {
    return Character.isDigit(c) || c == '\u2007' || c == '\u2212' ? PITCH : GAP;
  }

  private static boolean isFigure(Role role) {
    return role == Role.SIGNIFICANT || isZero(role);
  }

  private static boolean isZero(Role role) {
    return role == Role.PLACEHOLDER || role == Role.LEADING_ZERO;
  }

  private static TextStyle style(Role role, double size) {
    return isZero(role)
        ? TextStyle.centred(TextRole.ZERO, size, Weight.LIGHT, Shade.PALE)
        : TextStyle.centred(TextRole.FIGURE, size, Weight.BOLD, Shade.INK);
  }
}
