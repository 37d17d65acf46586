package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands on one side of an upright ruler: a block of text for each mark, spread so that none
 * overlap, and a line from each to its place. {@code x} is the side of the texts that faces the
 * ruler, {@code places} are from the top downwards, as the blocks are.
 */
record RulerCaptions(List<TextBlock> blocks, List<Double> places, double x, Stroke stroke) {
  private static final double GAP = 14;
  private static final double AIR = 7;

  /** The room that the blocks need one above another. */
  static double height(List<TextBlock> blocks) {
    return blocks.stream().mapToDouble(b -> b.height() + GAP).sum();
  }

  /** The texts and lines within a height; the lines end at {@code elbow}, beside the ruler. */
  List<Shape> shapes(double top, double bottom, double elbow) {
    double[] heights = blocks.stream().mapToDouble(TextBlock::height).toArray();
    Box room = new Box(top, 0, bottom - top, 0);
    double[] wishes = places.stream().mapToDouble(p -> p).toArray();
    double[] centres = Spread.centres(wishes, heights, GAP, room);
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < wishes.length; i++) {
      shapes.addAll(blocks.get(i).standingOn(x, centres[i] + heights[i] / 2));
      double foot = x + Math.signum(elbow - x) * AIR;
      Point from = new Point(foot, near(wishes[i], centres[i], heights[i]));
      shapes.add(new Shape.Line(from, new Point(elbow, wishes[i]), stroke));
    }
    return shapes;
  }

  /** The height beside a block that is nearest to its place, but not at the very edge. */
  private static double near(double place, double centre, double height) {
    double reach = 0.4 * height;
    return Math.max(centre - reach, Math.min(centre + reach, place));
  }
}
