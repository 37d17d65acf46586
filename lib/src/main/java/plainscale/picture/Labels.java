package plainscale.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts texts where they cover neither one another nor the lines that matter, inside a frame: of the
 * places that are offered the first free one, or else the one that covers least.
 */
public final class Labels {
  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<Shape.Line> lines = new ArrayList<>();
  private final List<Shape> placed = new ArrayList<>();

  /** Labels within a frame. */
  public Labels(Box frame) {
    this.frame = frame;
  }

  /** A line that no text may cross. */
  public void avoid(Shape.Line line) {
    lines.add(line);
  }

  /** An area that no text may cover. */
  public void avoid(Box box) {
    taken.add(box);
  }

  /** Writes a text at the best of the places, which are baselines in the style's anchor. */
  public void put(String content, List<Shape.Text> places) {
    Shape.Text best = places.stream().min(Comparator.comparingDouble(this::covered)).orElseThrow();
    if (!content.isBlank()) {
      taken.add(best.box());
      placed.add(best);
    }
  }

  /**
   * Writes a text at the first of the places that is free, with so much room around it; not at all
   * if none is.
   */
  public void putIfFree(String content, List<Shape.Text> places, double room) {
    places.stream()
        .filter(place -> covered(place) == 0 && isApart(place.box(), room))
        .findFirst()
        .ifPresent(place -> put(content, List.of(place)));
  }

  private boolean isApart(Box box, double room) {
    Box around =
        new Box(box.x() - room, box.y() - room, box.width() + 2 * room, box.height() + 2 * room);
    return taken.stream().noneMatch(around::overlaps);
  }

  /** What was written. */
  public List<Shape> shapes() {
    return placed;
  }

  /** Nothing for a free place; else how much is wrong with it. */
  private double covered(Shape.Text text) {
    Box box = text.box();
    double covered = frame.contains(box) ? 0 : 4 + outside(box);
    covered += taken.stream().filter(box::overlaps).count() * 2;
    return covered + lines.stream().filter(line -> box.crossedBy(line.from(), line.to())).count();
  }

  private double outside(Box box) {
    return Math.max(0, frame.x() - box.x())
        + Math.max(0, box.right() - frame.right())
        + Math.max(0, frame.y() - box.y())
        + Math.max(0, box.bottom() - frame.bottom());
  }
}
