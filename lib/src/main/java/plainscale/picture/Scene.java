package plainscale.picture;

import java.util.List;
import java.util.stream.Stream;

/**
 * A picture as data: size, title, text alternative, and shapes from back to front. The text
 * alternative says in words all that the picture shows.
 */
public record Scene(
    double width, double height, String title, String alternative, List<Shape> shapes) {

  /** Keeps its own copy of the shapes. */
  public Scene {
    shapes = List.copyOf(shapes);
  }

  /** The texts, for tests and for a reader that wants no picture. */
  public Stream<Shape.Text> texts() {
    return shapes.stream().filter(Shape.Text.class::isInstance).map(Shape.Text.class::cast);
  }
}
