package plainscale.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Writing;
import plainscale.picture.TextStyle.Anchor;

/** The landmarks of an upright ruler, quietly on its left: rings at its edge, names beside them. */
record RulerLandmarks(List<Mark> fromTheTop, Writing writing) {
  /** The room for the names, and for the lines from them to the ruler. */
  static final double WIDTH = 150;

  static final double LEADER = 36;
  private static final double RING = 5.5;
  private static final double HOLE = 3;

  /** Landmarks that are in order, from the smallest size to the largest. */
  static RulerLandmarks of(List<Mark> landmarks, Writing writing) {
    List<Mark> reversed = new ArrayList<>(landmarks);
    Collections.reverse(reversed);
    return new RulerLandmarks(reversed, writing);
  }

  boolean isEmpty() {
    return fromTheTop.isEmpty();
  }

  /** How far from the edge of the picture the ruler begins. */
  double left() {
    return Theme.MARGIN + (isEmpty() ? RulerStrip.NAMES : WIDTH + LEADER);
  }

  /** The height that the names need one above another. */
  double height() {
    return RulerCaptions.height(blocks());
  }

  private List<TextBlock> blocks() {
    return fromTheTop.stream().map(this::block).toList();
  }

  private TextBlock block(Mark mark) {
    TextStyle style = Theme.LANDMARK.at(Anchor.END);
    List<TextBlock.Line> lines =
        List.of(
            new TextBlock.Line(mark.name(), style),
            new TextBlock.Line(mark.inFigures(writing), style));
    return TextBlock.wrapped(lines, WIDTH);
  }

  /** Names and lines. */
  List<Shape> captions(RulerStrip strip) {
    return new RulerCaptions(
            blocks(), places(strip), strip.left() - LEADER, Stroke.solid(Shade.LINE, 1))
        .shapes(strip.top(), strip.bottom(), strip.left() - RING);
  }

  /** Rings where they stand. */
  List<Shape> rings(RulerStrip strip) {
    List<Point> centres = places(strip).stream().map(y -> new Point(strip.left(), y)).toList();
    return List.of(
        new Shape.Discs(centres, RING, Shade.SOFT), new Shape.Discs(centres, HOLE, Shade.GROUND));
  }

  private List<Double> places(RulerStrip strip) {
    return fromTheTop.stream().map(m -> strip.y(PowerOfTen.of(m.value()).log10())).toList();
  }
}
