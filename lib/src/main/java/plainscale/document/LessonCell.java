package plainscale.document;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** One cell of a lesson. */
public sealed interface LessonCell {

  /** The cell's id in the notebook, unique in it. */
  String id();

  /** Its text. */
  String source();

  /** Its metadata, all of it; not to be changed. */
  ObjectNode metadata();

  /** The line of a text file in which its source begins, from 1; 0 if it stands in a notebook. */
  int line();

  /** What it says of itself under our key. */
  default CellHead head() {
    return CellHead.of(metadata());
  }

  /** Text in CommonMark; attached pictures as the notebook has them, by name, then media type. */
  record Prose(String id, String source, ObjectNode metadata, ObjectNode attachments, int line)
      implements LessonCell {}

  /** Statements of the cell notation. */
  record Code(String id, String source, ObjectNode metadata, int line) implements LessonCell {}

  /** Text that is neither; it is kept, and shown nowhere. */
  record Raw(String id, String source, ObjectNode metadata, ObjectNode attachments, int line)
      implements LessonCell {}
}
