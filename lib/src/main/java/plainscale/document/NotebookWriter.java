package plainscale.document;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A lesson to the JSON of a notebook, nbformat 4.5, without outputs. */
final class NotebookWriter {
  private static final int FORMAT = 4;
  private static final int MINOR = 5;

  private NotebookWriter() {}

  static String write(Lesson lesson) {
    ObjectNode notebook = LessonJson.MAPPER.createObjectNode();
    ArrayNode cells = notebook.putArray("cells");
    lesson.cells().forEach(cell -> cells.add(cell(cell)));
    notebook.set("metadata", lesson.metadata());
    notebook.put("nbformat", FORMAT);
    notebook.put("nbformat_minor", MINOR);
    return LessonJson.text(notebook);
  }

  private static ObjectNode cell(LessonCell cell) {
    ObjectNode json = LessonJson.MAPPER.createObjectNode();
    json.put("id", cell.id());
    json.set("metadata", cell.metadata());
    source(json.putArray("source"), cell.source());
    if (cell instanceof LessonCell.Prose prose) {
      json.put("cell_type", "markdown");
      attach(json, prose.attachments());
    } else if (cell instanceof LessonCell.Raw raw) {
      json.put("cell_type", "raw");
      attach(json, raw.attachments());
    } else {
      json.put("cell_type", "code");
      json.putNull("execution_count");
      json.putArray("outputs");
    }
    return json;
  }

  private static void attach(ObjectNode json, ObjectNode attachments) {
    if (!attachments.isEmpty()) {
      json.set("attachments", attachments);
    }
  }

  /** A list of lines, each with its line feed, as front ends write it. */
  private static void source(ArrayNode lines, String source) {
    int from = 0;
    while (from < source.length()) {
      int feed = source.indexOf('\n', from);
      int to = feed < 0 ? source.length() : feed + 1;
      lines.add(source.substring(from, to));
      from = to;
    }
  }
}
