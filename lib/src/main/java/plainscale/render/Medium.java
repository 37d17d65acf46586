package plainscale.render;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Function;
import plainscale.picture.Scene;
import plainscale.picture.SvgWriter;

/** What differs between the two homes of our HTML: how mathematics and pictures are put in. */
record Medium(
    MathMarkup markup, Function<String, String> mathematics, Function<Scene, String> pictures) {

  /**
   * A cell's output: what survives a front end's sanitising. TeX is escaped, or a raw {@code <}
   * destroys the rest.
   */
  static final Medium CELL =
      new Medium(new TexMarkup(), tex -> "\\(" + Html.escape(tex) + "\\)", Medium::image);

  /** A page of our own. */
  static final Medium PAGE =
      new Medium(new MathMlMarkup(), ml -> "<math>" + ml + "</math>", SvgWriter::write);

  private static String image(Scene scene) {
    byte[] svg = SvgWriter.write(scene).getBytes(StandardCharsets.UTF_8);
    String alternative = Html.escape(scene.title() + ". " + scene.alternative());
    return "<img src=\"data:image/svg+xml;base64,%s\" alt=\"%s\" style=\"max-width:100%%\">"
        .formatted(Base64.getEncoder().encodeToString(svg), alternative);
  }
}
