package plainscale.render;

import java.util.List;
import plainscale.algebra.Step;
import plainscale.notation.FieldItem;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.Result;

/** Single pieces of text, for pages that are put together from pieces. */
public final class PageWords {
  private PageWords() {}

  /** What a derivation is about: "q from level, upright: charge on one ball". */
  public static String head(Result.Derived derived) {
    return new DerivedText(derived).head();
  }

  /** What a step does, or the question for it. */
  public static String reason(Result.Derived derived, Step step) {
    return new DerivedText(derived).reason(step);
  }

  /** A body with its article: "the left ball". */
  public static String body(String body) {
    return Bodies.the(body);
  }

  /** "Figure 2: two balls and their forces". */
  public static String caption(Result.Captioned captioned) {
    return WrittenText.caption(captioned);
  }

  /** What kind of curve: "Straight line". */
  public static String curve(DataResult.Fitted fitted) {
    return new FittedText(fitted).kind();
  }

  /** What a number says of a column: "standard deviation". */
  public static String measure(DataResult.Measure measure) {
    return DataSections.measure(measure);
  }

  /** What a source of a field is: "point charge". */
  public static String source(FieldResult.Row row) {
    return FieldText.name(row);
  }

  /** What the size of a source of a field is: "radius". */
  public static String extent(FieldItem.Shape shape) {
    return FieldText.extent(shape);
  }

  /** The heads of the table of energies along the way of a body, without units. */
  public static List<String> moments() {
    return List.of("moment", "time", "speed", "kinetic", "potential", "together");
  }
}
