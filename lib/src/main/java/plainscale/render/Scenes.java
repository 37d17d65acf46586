package plainscale.render;

import java.util.ArrayList;
import java.util.Comparator;
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
    List<Mark> marks = marks(pictured.sides());
    return switch (pictured.drawing()) {
      case RULER ->
          MagnitudeRuler.of(
              pictured.title(), marks, marks(pictured.landmarks()), pictured.writing());
      case SQUARES -> squares(pictured, marks);
      case DOTS -> Dots.of(pictured.title(), marks, pictured.writing());
    };
  }

  private static Scene squares(Result.Pictured pictured, List<Mark> marks) {
    List<Mark> bySize =
        marks.stream().sorted(Comparator.comparing(mark -> mark.value().abs())).toList();
    return NestedSquares.of(pictured.title(), bySize.get(0), bySize.get(1), pictured.writing());
  }

  private static List<Mark> marks(List<Result.Side> sides) {
    return sides.stream().map(Scenes::mark).toList();
  }

  private static Mark mark(Result.Side side) {
    return new Mark(ContrastText.name(side), side.shown().value(), side.shown().unit().text());
  }
}
