package plainscale.picture;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Turns a scene into a standalone SVG document: system fonts, no script, no style sheet, no
 * reference to anything outside, the same text for the same scene. The scene stands on a white
 * ground of its own, so that it can be read on a dark page.
 */
public final class SvgWriter {
  private static final String FONTS =
      "system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', 'Liberation Sans', Arial,"
          + " sans-serif";
  private static final double CORNER = 6;

  private SvgWriter() {}

  /** The SVG document. */
  public static String write(Scene scene) {
    String size = number(scene.width()) + " " + number(scene.height());
    String shapes =
        scene.shapes().stream().map(s -> s.accept(SvgElements.INSTANCE)).collect(joining("\n"));
    return """
        <svg xmlns="http://www.w3.org/2000/svg" width="%s" height="%s" viewBox="0 0 %s" role="img" \
        font-family="%s">
        <title>%s</title>
        <desc>%s</desc>
        <rect width="%s" height="%s" rx="%s" fill="%s"/>
        %s
        </svg>
        """
        .formatted(
            number(scene.width()),
            number(scene.height()),
            size,
            FONTS,
            escape(Symbol.spoken(scene.title())),
            escape(scene.alternative()),
            number(scene.width()),
            number(scene.height()),
            number(CORNER),
            Shade.GROUND.hex(),
            shapes);
  }

  /** At most two decimals, no exponent, no locale. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /**
   * Text for element content and attributes; characters that XML 1.0 does not allow become U+FFFD.
   */
  static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isAllowed(c) ? c : 0xfffd);
              }
            });
    return escaped.toString();
  }

  /** spec: XML 1.0, production [2] Char. */
  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xd7ff)
        || (c >= 0xe000 && c <= 0xfffd)
        || c >= 0x10000;
  }
}
