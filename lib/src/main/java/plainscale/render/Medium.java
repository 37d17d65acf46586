package plainscale.render;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.function.Consumer;
import java.util.function.Function;
import plainscale.picture.Scene;
import plainscale.picture.SvgWriter;
import plainscale.units.UnitOfMeasure;

/**
 * What differs between the two homes of our HTML: how mathematics, pictures and words are put in.
 */
record Medium(
    MathMarkup markup,
    Function<String, String> mathematics,
    Function<Scene, String> pictures,
    Function<String, String> words) {
  private static final String NO_BREAK_SPACE = "\u00a0";

  /**
   * A cell's output: what survives a front end's sanitising. TeX is escaped, or a raw {@code <}
   * destroys the rest.
   */
  static final Medium CELL =
      new Medium(
          new TexMarkup(),
          tex -> "\\(\\displaystyle " + Html.escape(tex) + "\\)",
          Medium::image,
          Medium::untypeset);

  /** A page of our own. */
  static final Medium PAGE =
      new Medium(
          new MathMlMarkup(),
          ml -> "<math displaystyle=\"true\">" + ml + "</math>",
          SvgWriter::write,
          Html::escape);

  /** The same, and somebody is told of each picture. */
  Medium seenBy(Consumer<Scene> watcher) {
    return new Medium(
        markup,
        mathematics,
        scene -> {
          watcher.accept(scene);
          return pictures.apply(scene);
        },
        words);
  }

  /** A unit after digits; nothing for the unit one. */
  String unit(UnitOfMeasure unit) {
    return unit.equals(UnitOfMeasure.ONE)
        ? ""
        : NO_BREAK_SPACE + mathematics.apply(markup.unit(unit));
  }

  /** A front end looks for mathematics in every text; not between elements, though. */
  private static String untypeset(String words) {
    return Html.escape(words).replaceAll("[$\\\\]", "<span>$0</span>");
  }

  private static String image(Scene scene) {
    byte[] svg = SvgWriter.write(scene).getBytes(StandardCharsets.UTF_8);
    String alternative = Html.escape(scene.alternative());
    return "<img src=\"data:image/svg+xml;base64,%s\" alt=\"%s\" style=\"max-width:100%%\">"
        .formatted(Base64.getEncoder().encodeToString(svg), alternative);
  }
}
