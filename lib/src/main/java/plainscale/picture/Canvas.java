package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/** A picture in the making: shapes and texts from the top downwards, at the width of a phone. */
public final class Canvas {
  public static final double LEFT = Theme.MARGIN;
  public static final double RIGHT = Theme.WIDTH - Theme.MARGIN;
  private static final double BELOW_TITLE = 18;

  private final String title;
  private final List<Shape> shapes = new ArrayList<>();
  private double y = Theme.MARGIN;

  /** Begins with the title, unless it is empty. */
  public Canvas(String title) {
    this.title = Mark.cut(title.strip());
    if (!this.title.isEmpty()) {
      write(LEFT, List.of(new TextBlock.Line(this.title, Theme.TITLE)));
      y += BELOW_TITLE;
    }
  }

  /** Where the next thing goes. */
  public double y() {
    return y;
  }

  public void moveTo(double lower) {
    y = lower;
  }

  public void skip(double room) {
    y += room;
  }

  public void add(Shape shape) {
    shapes.add(shape);
  }

  public void addAll(List<? extends Shape> more) {
    shapes.addAll(more);
  }

  /** Paragraphs from {@code x} to the right margin. */
  public void write(double x, List<TextBlock.Line> paragraphs) {
    TextBlock block = TextBlock.wrapped(paragraphs, RIGHT - x);
    y += block.height();
    shapes.addAll(block.standingOn(x, y));
  }

  /** A remark under the picture. */
  public void note(String remark) {
    write(LEFT, List.of(new TextBlock.Line(remark, Theme.NOTE)));
  }

  /** The finished scene; the name stands for the title where that is empty. */
  public Scene scene(String name, String alternative) {
    return new Scene(
        Theme.WIDTH, y + Theme.MARGIN, title.isEmpty() ? name : title, alternative, shapes);
  }
}
