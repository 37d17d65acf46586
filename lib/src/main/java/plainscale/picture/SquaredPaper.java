package plainscale.picture;

import java.util.List;
import plainscale.picture.TextStyle.Anchor;

/**
 * Squared paper to draw on, with nothing on it; the titles of axes stand where they belong, above
 * the upright one and below the level one, if there are any.
 */
public final class SquaredPaper {
  private static final double BOX = 18;
  private static final int ACROSS = 27;
  private static final double BELOW = 24;
  private static final Stroke FINE = Stroke.solid(Shade.BAND, 1);
  private static final Stroke EDGE = Stroke.solid(Shade.LINE, 1.5);

  private SquaredPaper() {}

  /** The titles of two axes; an empty one is not drawn. */
  public record Axes(String across, String up) {
    /** No axes. */
    public static final Axes NONE = new Axes("", "");
  }

  /**
   * So many boxes high; the title is drawn, and so are the titles of the axes. {@code alternative}
   * says what is to be drawn.
   */
  public static Scene of(String title, Axes axes, int down, String alternative) {
    Canvas canvas = new Canvas(title);
    if (!axes.up().isEmpty()) {
      canvas.write(Canvas.LEFT, List.of(new TextBlock.Line(axes.up(), Theme.WORDS)));
      canvas.skip(BOX / 3);
    }
    double top = canvas.y();
    double right = Canvas.LEFT + ACROSS * BOX;
    double bottom = top + down * BOX;
    for (int i = 0; i <= ACROSS; i++) {
      line(canvas, Canvas.LEFT + i * BOX, top, Canvas.LEFT + i * BOX, bottom);
    }
    for (int i = 0; i <= down; i++) {
      line(canvas, Canvas.LEFT, top + i * BOX, right, top + i * BOX);
    }
    canvas.add(new Shape.Line(new Point(Canvas.LEFT, top), new Point(right, top), EDGE));
    canvas.add(new Shape.Line(new Point(Canvas.LEFT, bottom), new Point(right, bottom), EDGE));
    canvas.add(new Shape.Line(new Point(Canvas.LEFT, top), new Point(Canvas.LEFT, bottom), EDGE));
    canvas.add(new Shape.Line(new Point(right, top), new Point(right, bottom), EDGE));
    canvas.moveTo(bottom);
    if (!axes.across().isEmpty()) {
      Point place = new Point(right, bottom + BELOW);
      canvas.add(new Shape.Text(place, axes.across(), Theme.WORDS.at(Anchor.END)));
      canvas.skip(BELOW);
    }
    return canvas.scene(alternative, alternative);
  }

  private static void line(Canvas canvas, double x1, double y1, double x2, double y2) {
    canvas.add(new Shape.Line(new Point(x1, y1), new Point(x2, y2), FINE));
  }
}
