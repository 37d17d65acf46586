package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Dots;
import plainscale.picture.MagnitudeRuler;
import plainscale.picture.Mark;
import plainscale.picture.Marks;
import plainscale.picture.NestedSquares;
import plainscale.picture.Scene;
import plainscale.sheet.Result;

/** The pictures that belong to results. */
final class Scenes {
  private Scenes() {}

  /** The numbers of a contrast on a ruler. */
  static Scene ruler(Result.Contrasted contrast) {
    Marks marks = Marks.of(marks(contrast.sides())).with(contrast.ratio());
    return MagnitudeRuler.of("", marks, contrast.writing());
  }

  /** A number on a ruler between its landmarks. */
  static Scene ruler(Result.Placed placed) {
    List<Result.Side> landmarks = new ArrayList<>();
    placed.below().forEach(neighbour -> landmarks.add(neighbour.side()));
    placed.above().forEach(neighbour -> landmarks.add(neighbour.side()));
    return MagnitudeRuler.of("", List.of(mark(placed.side())), marks(landmarks), placed.writing());
  }

  /** The picture of a statement that asks for one. */
  static Scene of(Result.Pictured pictured) {
    Marks numbers = Marks.of(marks(pictured.sides()));
    Marks marks =
        pictured.ratio().map(numbers::with).orElse(numbers).with(marks(pictured.landmarks()));
    return switch (pictured.drawing()) {
      case RULER -> MagnitudeRuler.of(pictured.title(), marks, pictured.writing());
      case SQUARES -> NestedSquares.of(pictured.title(), marks, pictured.writing());
      case DOTS -> Dots.of(pictured.title(), marks.main(), pictured.writing());
    };
  }

  static List<Mark> marks(List<Result.Side> sides) {
    return sides.stream().map(Scenes::mark).toList();
  }

  /** The zeros at the end of an exact number say nothing beside a power of ten. */
  private static Mark mark(Result.Side side) {
    BigDecimal value = side.shown().value();
    BigDecimal brief = side.exact() ? value.stripTrailingZeros() : value;
    return new Mark(ContrastText.name(side), brief, side.shown().unit().text());
  }
}
