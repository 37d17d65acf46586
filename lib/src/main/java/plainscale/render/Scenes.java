package plainscale.render;

import java.util.List;
import plainscale.picture.MagnitudeRuler;
import plainscale.picture.Mark;
import plainscale.picture.Scene;
import plainscale.sheet.Result;

/** The pictures that belong to results. */
final class Scenes {
  private Scenes() {}

  /** The numbers of a contrast on a ruler. */
  static Scene ruler(Result.Contrasted contrast) {
    return MagnitudeRuler.of("", marks(contrast.sides()), contrast.ratio());
  }

  /** A number on a ruler between its landmarks. */
  static Scene ruler(Result.Placed placed) {
    List<Result.Side> all = new java.util.ArrayList<>(List.of(placed.side()));
    placed.below().forEach(n -> all.add(n.side()));
    placed.above().forEach(n -> all.add(n.side()));
    return MagnitudeRuler.of("", marks(all));
  }

  /** The picture of a statement that asks for one. */
  static Scene of(Result.Pictured pictured) {
    return MagnitudeRuler.of(pictured.title(), marks(pictured.sides()));
  }

  private static List<Mark> marks(List<Result.Side> sides) {
    return sides.stream().map(Scenes::mark).toList();
  }

  private static Mark mark(Result.Side side) {
    return new Mark(ContrastText.name(side), side.shown().value(), side.shown().unit().text());
  }
}
