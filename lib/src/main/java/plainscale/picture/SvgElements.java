package plainscale.picture;

import static java.util.stream.Collectors.joining;
import static plainscale.picture.SvgWriter.escape;
import static plainscale.picture.SvgWriter.number;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.IntStream;

/** The SVG element for each kind of shape. */
final class SvgElements implements Shape.Visitor<String> {
  static final SvgElements INSTANCE = new SvgElements();

  private static final String RAISED = "<tspan dy=\"%s\" font-size=\"%s\">%s</tspan>";
  private static final String LOWERED = "<tspan dy=\"%s\">%s</tspan>";

  /** The ground around letters, so that they can be read on lines of a grid. */
  private static final String HALO =
      " stroke=\"" + Shade.GROUND.hex() + "\" stroke-width=\"5\" paint-order=\"stroke\"";

  /** The size of a superscript and how far it is raised, as fractions of the size of the text. */
  private static final double SMALLER = 0.7;

  private static final double LIFT = 0.38;

  @Override
  public String line(Shape.Line line) {
    return "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>"
        .formatted(
            number(line.from().x()),
            number(line.from().y()),
            number(line.to().x()),
            number(line.to().y()),
            stroke(line.stroke()));
  }

  private static String stroke(Stroke stroke) {
    String dashes = stroke.dash().pattern();
    return "stroke=\"%s\" stroke-width=\"%s\"%s"
        .formatted(
            stroke.shade().hex(),
            number(stroke.width()),
            dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
  }

  @Override
  public String curve(Shape.Curve curve) {
    return "<polyline points=\"%s\" fill=\"none\" stroke-linejoin=\"round\" %s/>"
        .formatted(points(curve.points()), stroke(curve.stroke()));
  }

  /** A hairline of its own shade closes the seams to its neighbours. */
  @Override
  public String facet(Shape.Facet facet) {
    int level = (int) Math.round(255 * Math.max(0, Math.min(1, facet.light())));
    String grey = "#%1$02x%1$02x%1$02x".formatted(level);
    return "<path d=\"M%sz\" fill=\"%s\" stroke=\"%s\" stroke-width=\"0.6\"/>"
        .formatted(points(facet.points()), grey, grey);
  }

  /** Places with one decimal: a tenth of a pixel is enough for a curve. */
  private static String points(List<Point> points) {
    return points.stream().map(p -> tenth(p.x()) + " " + tenth(p.y())).collect(joining(" "));
  }

  private static String tenth(double value) {
    return number(Math.rint(value * 10) / 10);
  }

  @Override
  public String rectangle(Shape.Rectangle rectangle) {
    Box box = rectangle.box();
    return "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" rx=\"%s\" fill=\"%s\"/>"
        .formatted(
            number(box.x()),
            number(box.y()),
            number(box.width()),
            number(box.height()),
            number(rectangle.radius()),
            rectangle.fill().hex());
  }

  @Override
  public String polygon(Shape.Polygon polygon) {
    return "<polygon points=\"%s\" fill=\"%s\"/>"
        .formatted(
            polygon.points().stream()
                .map(p -> number(p.x()) + "," + number(p.y()))
                .collect(joining(" ")),
            polygon.fill().hex());
  }

  /** One path for all: a point drawn with a round pen is a disc, in a few characters each. */
  @Override
  public String discs(Shape.Discs discs) {
    return "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\" stroke-linecap=\"round\"/>"
        .formatted(
            discs.centres().stream()
                .map(p -> "M" + number(p.x()) + " " + number(p.y()) + "h0.01")
                .collect(joining()),
            discs.fill().hex(),
            number(2 * discs.radius()));
  }

  @Override
  public String text(Shape.Text text) {
    TextStyle style = text.style();
    boolean spaced = text.pitch() > 0;
    return "<text class=\"%s\" x=\"%s\" y=\"%s\" text-anchor=\"%s\" font-size=\"%s\"%s fill=\"%s\"%s>%s</text>"
        .formatted(
            name(style.role()),
            spaced ? places(text) : number(text.at().x()),
            number(text.at().y()),
            spaced ? "middle" : name(style.anchor()),
            number(style.size()),
            weight(style),
            style.shade().hex(),
            style.halo() ? HALO : "",
            raised(text));
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static String weight(TextStyle style) {
    int number = style.weight().number();
    return number == 400 ? "" : " font-weight=\"" + number + "\"";
  }

  private static String places(Shape.Text text) {
    return IntStream.range(0, text.content().length())
        .mapToObj(i -> number(text.at().x() + i * text.pitch()))
        .collect(joining(" "));
  }

  /** The content with superscripts as smaller, raised spans: not every font has them all. */
  private static String raised(Shape.Text text) {
    double size = text.style().size();
    StringBuilder out = new StringBuilder();
    Matcher parts = Superscript.PARTS.matcher(Isolate.of(text.content()));
    while (parts.find()) {
      String part = escape(Superscript.lower(parts.group()));
      if (Superscript.isRaised(parts.group().charAt(0))) {
        out.append(RAISED.formatted(number(-LIFT * size), number(SMALLER * size), part));
      } else {
        out.append(parts.start() == 0 ? part : LOWERED.formatted(number(LIFT * size), part));
      }
    }
    return symbols(out.toString(), size);
  }

  /** The marks of symbols as spans; each is closed before the text ends. */
  private static String symbols(String text, double size) {
    return text.replace(String.valueOf(Symbol.ITALIC), "<tspan font-style=\"italic\">")
        .replace(String.valueOf(Symbol.UPRIGHT), "</tspan>")
        .replace(
            String.valueOf(Symbol.LOWERED),
            "<tspan baseline-shift=\"sub\" font-size=\"" + number(SMALLER * size) + "\">")
        .replace(String.valueOf(Symbol.LEVEL), "</tspan>");
  }
}
