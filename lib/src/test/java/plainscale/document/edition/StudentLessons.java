package plainscale.document.edition;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.LessonException;

/** Lessons for tests of students' notebooks, cell by cell. */
final class StudentLessons {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final ObjectNode notebook = JSON.createObjectNode();
  private final ArrayNode cells = notebook.putArray("cells");

  StudentLessons() {
    this("{}");
  }

  /** With that metadata of the notebook, as JSON. */
  StudentLessons(String metadata) {
    notebook.put("nbformat", 4).put("nbformat_minor", 5).set("metadata", tree(metadata));
  }

  StudentLessons code(String id, String metadata, String... lines) {
    cell(id, "code", metadata, lines).putNull("execution_count").putArray("outputs");
    return this;
  }

  StudentLessons prose(String id, String metadata, String... lines) {
    cell(id, "markdown", metadata, lines);
    return this;
  }

  StudentLessons raw(String id, String... lines) {
    cell(id, "raw", "{}", lines);
    return this;
  }

  /** Attaches a picture to the last cell. */
  StudentLessons attached(String name, String base64) {
    ObjectNode last = (ObjectNode) cells.get(cells.size() - 1);
    last.withObjectProperty("attachments").putObject(name).put("image/png", base64);
    return this;
  }

  private ObjectNode cell(String id, String type, String metadata, String... lines) {
    ObjectNode cell = cells.addObject().put("id", id).put("cell_type", type);
    cell.set("metadata", tree(metadata));
    return cell.put("source", String.join("\n", lines));
  }

  private static ObjectNode tree(String json) {
    try {
      return (ObjectNode) JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  Lesson lesson() throws LessonException {
    return Lesson.parse("lesson.ipynb", notebook.toString());
  }

  Lesson student() throws LessonException {
    return StudentNotebook.of(lesson());
  }

  /** What a code cell that says that of itself becomes. */
  static String source(String own, String... lines) throws LessonException {
    String metadata = "{\"plainscale\":" + own + "}";
    Lesson student = new StudentLessons().code("cell", metadata, lines).student();
    return cell(student, "cell").source();
  }

  static LessonCell cell(Lesson lesson, String id) {
    return lesson.cells().stream().filter(cell -> cell.id().equals(id)).findFirst().orElseThrow();
  }

  static List<String> ids(Lesson lesson) {
    return lesson.cells().stream().map(LessonCell::id).toList();
  }
}
