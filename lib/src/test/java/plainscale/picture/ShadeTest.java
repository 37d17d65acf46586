package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast ratios by the formula of WCAG 2.2 ("relative luminance", "contrast ratio"). */
class ShadeTest {
  @ParameterizedTest
  @EnumSource(names = {"PALE", "SOFT", "INK", "ACCENT"})
  void textCanBeReadOnTheGrounds(Shade shade) {
    assertTrue(contrast(shade, Shade.GROUND) >= 4.5, shade::toString);
    assertTrue(contrast(shade, Shade.TINT) >= 4.5, shade::toString);
  }

  // The labels of the ruler stand on its band; lines on white or, between squares, on the tint;
  // outlines, arrows, the small squares and the dark one must be told from what is around them.
  @ParameterizedTest
  @CsvSource({
    "SOFT, BAND, 4.5",
    "INK, BAND, 4.5",
    "LINE, GROUND, 3",
    "LINE, TINT, 3",
    "SOFT, TINT, 3",
    "ACCENT, TINT, 4.5",
    "ACCENT, BAND, 4.5"
  })
  void otherPairsThatOccurAreDistinctEnough(Shade shade, Shade ground, double least) {
    assertTrue(contrast(shade, ground) >= least, () -> shade + " " + contrast(shade, ground));
  }

  static double contrast(Shade a, Shade b) {
    double lighter = Math.max(luminance(a), luminance(b));
    double darker = Math.min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
  }

  static double luminance(Shade shade) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    return IntStream.range(0, 3)
        .mapToDouble(
            i ->
                weights[i]
                    * linear(
                        Integer.parseInt(shade.hex().substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0))
        .sum();
  }

  private static double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}
