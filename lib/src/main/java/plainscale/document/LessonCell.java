package plainscale.document;

import java.util.Map;

/** One cell of a lesson. */
public sealed interface LessonCell {

  /** The cell's id in the notebook, unique in it. */
  String id();

  /** Its text. */
  String source();

  /** Text in CommonMark; attached pictures by name, as data URIs. */
  record Prose(String id, String source, Map<String, String> attachments) implements LessonCell {}

  /** Statements of the cell notation. */
  record Code(String id, String source) implements LessonCell {}
}
