package plainscale.picture;

import java.util.List;

/** One thing that is drawn. */
public sealed interface Shape {

  /** Calls the method for this kind of shape. */
  <R> R accept(Visitor<R> visitor);

  /** One method for each kind of shape. */
  interface Visitor<R> {
    R line(Line line);

    R rectangle(Rectangle rectangle);

    R polygon(Polygon polygon);

    R discs(Discs discs);

    R text(Text text);

    R curve(Curve curve);

    R facet(Facet facet);
  }

  /** A straight line. */
  record Line(Point from, Point to, Stroke stroke) implements Shape {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.line(this);
    }
  }

  /** A filled rectangle with rounded corners (radius 0 for square ones). */
  record Rectangle(Box box, Shade fill, double radius) implements Shape {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rectangle(this);
    }
  }

  /** A filled polygon. */
  record Polygon(List<Point> points, Shade fill) implements Shape {
    /** Keeps its own copy of the points. */
    public Polygon {
      points = List.copyOf(points);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.polygon(this);
    }
  }

  /** A line through many points. */
  record Curve(List<Point> points, Stroke stroke) implements Shape {
    /** Keeps its own copy of the points. */
    public Curve {
      points = List.copyOf(points);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.curve(this);
    }
  }

  /** A piece of a shaded surface without an edge of its own; {@code light}: 0 black to 1 white. */
  record Facet(List<Point> points, double light) implements Shape {
    /** Keeps its own copy of the points. */
    public Facet {
      points = List.copyOf(points);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.facet(this);
    }
  }

  /** Filled circles of one size. */
  record Discs(List<Point> centres, double radius, Shade fill) implements Shape {
    /** Keeps its own copy of the centres. */
    public Discs {
      centres = List.copyOf(centres);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.discs(this);
    }
  }

  /**
   * A line of text on its baseline. Superscript digits in the content (10¹²) are drawn raised. With
   * a {@code pitch} above 0 the characters stand centred at that distance from one another, the
   * first at {@code at}, so that columns of digits line up in every font.
   */
  record Text(Point at, String content, TextStyle style, double pitch) implements Shape {

    /** A text with the natural spacing of its font. */
    public Text(Point at, String content, TextStyle style) {
      this(at, content, style, 0);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.text(this);
    }

    /** The room that the text takes, on the safe side for the common system fonts. */
    public Box box() {
      double width = pitch > 0 ? pitch * content.length() : TextWidth.of(content, style);
      double left =
          switch (style.anchor()) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
          };
      double start = pitch > 0 ? at.x() - pitch / 2 : left;
      return new Box(
          start,
          at.y() - TextWidth.ASCENT * style.size(),
          width,
          (TextWidth.ASCENT + TextWidth.DESCENT) * style.size());
    }
  }
}
