package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Square panels in rows, read as lines of text are. The small square at the right of each is the
 * whole of the next one: guide lines lead from it to its enlargement. The last holds the dark
 * square, which goes into it {@code rest} times.
 */
record PanelRows(List<String> captions, double rest, double top) {
  private static final double GUTTER = 32;
  private static final double CAPTION_ABOVE = 5;
  private static final double INSET = 14;
  private static final double ARROW = 9;
  private static final double SHARE = 1 / Math.sqrt(1000);
  private static final Stroke GUIDE = Stroke.solid(Shade.LINE, 1);
  private static final Stroke OUTLINE = Stroke.solid(Shade.SOFT, 1.5);

  private PanelGrid grid() {
    return new PanelGrid(captions.size());
  }

  private double captionHeight() {
    return captions.stream().mapToDouble(c -> grid().caption(c).height()).max().orElse(0)
        + CAPTION_ABOVE;
  }

  private Box box(int i) {
    double side = grid().side();
    double above = captionHeight();
    int row = i / grid().inRow();
    double x = Canvas.LEFT + i % grid().inRow() * (side + PanelGrid.GAP);
    double y = top + above + row * (above + side + GUTTER);
    return new Box(x, y, side, side);
  }

  double bottom() {
    return box(captions.size() - 1).bottom();
  }

  List<Shape> shapes() {
    List<Shape> shapes = new ArrayList<>();
    int last = captions.size() - 1;
    for (int i = 0; i <= last; i++) {
      Box box = box(i);
      TextBlock caption = grid().caption(captions.get(i));
      shapes.addAll(caption.standingOn(box.x(), box.y() - CAPTION_ABOVE));
      shapes.addAll(panel(box));
      if (i < last) {
        shapes.add(new Shape.Rectangle(thousandth(box), Shade.INK, 0));
        shapes.addAll(guide(thousandth(box), box(i + 1)));
      }
    }
    shapes.add(dark(inside(box(last), grid().side() / Math.sqrt(rest))));
    return shapes;
  }

  /** A light square with an outline. */
  static List<Shape> panel(Box box) {
    Point a = new Point(box.x(), box.y());
    Point b = new Point(box.right(), box.y());
    Point c = new Point(box.right(), box.bottom());
    Point d = new Point(box.x(), box.bottom());
    return List.of(
        new Shape.Rectangle(box, Shade.TINT, 0),
        new Shape.Line(a, b, OUTLINE),
        new Shape.Line(b, c, OUTLINE),
        new Shape.Line(c, d, OUTLINE),
        new Shape.Line(d, a, OUTLINE));
  }

  static Shape dark(Box box) {
    return new Shape.Rectangle(box, Shade.ACCENT, 0);
  }

  /** The small square of a thousandth of the area, at the right. */
  private static Box thousandth(Box panel) {
    double side = panel.width() * SHARE;
    double y = panel.y() + (panel.height() - side) / 2;
    return new Box(panel.right() - INSET - side, y, side, side);
  }

  private static Box inside(Box panel, double side) {
    double margin = (panel.width() - side) / 2;
    return new Box(panel.x() + margin, panel.y() + margin, side, side);
  }

  /** From a small square to the panel that shows it larger. */
  private List<Shape> guide(Box small, Box next) {
    if (next.x() > small.right()) {
      return List.of(
          new Shape.Line(new Point(small.right(), small.y()), new Point(next.x(), next.y()), GUIDE),
          new Shape.Line(
              new Point(small.right(), small.bottom()), new Point(next.x(), next.bottom()), GUIDE));
    }
    return toNextRow(small, next);
  }

  /** Down, back to the left between the rows, and into the first panel of the next. */
  private List<Shape> toNextRow(Box small, Box next) {
    double x = small.x() + small.width() / 2;
    double gutter = next.y() - captionHeight() - GUTTER / 2;
    double middle = next.y() + next.height() / 2;
    double left = Canvas.LEFT / 2;
    return List.of(
        new Shape.Line(new Point(x, small.bottom()), new Point(x, gutter), GUIDE),
        new Shape.Line(new Point(x, gutter), new Point(left, gutter), GUIDE),
        new Shape.Line(new Point(left, gutter), new Point(left, middle), GUIDE),
        new Shape.Line(new Point(left, middle), new Point(next.x(), middle), GUIDE),
        new Shape.Polygon(
            List.of(
                new Point(next.x(), middle),
                new Point(next.x() - ARROW, middle - ARROW / 2),
                new Point(next.x() - ARROW, middle + ARROW / 2)),
            Shade.SOFT));
  }
}
