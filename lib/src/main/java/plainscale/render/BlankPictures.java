package plainscale.render;

import java.util.List;
import plainscale.picture.EmptyRuler;
import plainscale.picture.Marks;
import plainscale.picture.Scene;
import plainscale.picture.SquaredPaper;
import plainscale.picture.force.Body;
import plainscale.picture.force.Edition;
import plainscale.picture.force.ForceDiagram;
import plainscale.sheet.DataResult;
import plainscale.sheet.Result;

/** Pictures in which nothing is drawn that was computed: paper to draw on. */
public final class BlankPictures {
  private BlankPictures() {}

  /** A ruler with its landmarks, on which the numbers are still to be marked. */
  public static Scene ruler(Result.Pictured pictured) {
    Marks numbers = Marks.of(Scenes.marks(pictured.sides()));
    Marks marks = numbers.with(Scenes.marks(pictured.landmarks()));
    return EmptyRuler.of(pictured.title(), marks, pictured.writing());
  }

  /** Squared paper with a dot for a body; of the slope on which it stands nothing is drawn. */
  public static Scene forces(Result.Forces forces) {
    Body body = new Body(Bodies.the(forces.diagram().body()), List.of(), "");
    return ForceDiagram.of("", List.of(body), List.of(), Edition.DOT, forces.writing());
  }

  /** The titles of axes: quantities over the units of their columns. */
  public static SquaredPaper.Axes axes(DataResult.Side across, DataResult.Side up) {
    return new SquaredPaper.Axes(DataPictures.title(across), DataPictures.title(up));
  }

  /** The titles of axes where upwards stand numbers of values. */
  public static SquaredPaper.Axes axes(DataResult.Counted counted) {
    return new SquaredPaper.Axes(DataPictures.title(counted.side()), DataPictures.COUNT);
  }
}
