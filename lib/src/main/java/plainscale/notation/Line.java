package plainscale.notation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of a cell as it is written: what it says, and where in the source the parts stand that a
 * copy of it can leave blank.
 *
 * @param span the line with its continuations, without the line feed at its end
 * @param read what it says; none if there is nothing but space and comments
 * @param parts the parts that can be left blank, in the order in which they were read
 * @param comments its comments
 * @param end where the words in quotation marks at its end begin, else its last word ends
 */
public record Line(
    Span span, @Nullable Statement read, List<Part> parts, List<Span> comments, int end) {
  /** Keeps its own copies of the lists. */
  public Line {
    parts = List.copyOf(parts);
    comments = List.copyOf(comments);
  }

  /** A part of a line. */
  public record Part(Span span, What what) {}

  /** What a part of a line is. */
  public enum What {
    /** The value of a given, with its sign. */
    VALUE,
    /** What follows the ± of a given. */
    UNCERTAINTY,
    /** The value of a given with its uncertainty in brackets, {@code 2.70(5)}. */
    CONCISE,
    /** A number in an expression, without its unit. */
    NUMBER,
    /** The formula of a definition, or one that is shown. */
    FORMULA,
    /** Both sides of a relation. */
    RELATION,
    /** The names of the relations that are solved. */
    RELATIONS,
    /** The forces on a body. */
    FORCES,
    /** The sources of a field. */
    SOURCES
  }
}
