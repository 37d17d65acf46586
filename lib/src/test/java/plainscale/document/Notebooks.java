package plainscale.document;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** Notebooks for tests, cell by cell. */
final class Notebooks {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final ObjectNode notebook = JSON.createObjectNode();
  private final ArrayNode cells = notebook.putArray("cells");

  Notebooks() {
    notebook.put("nbformat", 4).put("nbformat_minor", 5);
    notebook.putObject("metadata").putObject("kernelspec").put("language", "plainscale");
  }

  Notebooks prose(String source) {
    cell("markdown", source);
    return this;
  }

  Notebooks code(String source) {
    cell("code", source).put("outputs", "").putNull("execution_count");
    return this;
  }

  /** Prose with an attached picture. */
  Notebooks picture(String source, String name, String bytes) {
    String data = Base64.getEncoder().encodeToString(bytes.getBytes(StandardCharsets.UTF_8));
    cell("markdown", source).putObject("attachments").putObject(name).put("image/png", data);
    return this;
  }

  private ObjectNode cell(String type, String source) {
    ObjectNode cell = cells.addObject().put("id", "c" + cells.size()).put("cell_type", type);
    cell.putObject("metadata");
    return cell.put("source", source);
  }

  Lesson lesson() throws LessonException {
    return Lesson.parse("test.ipynb", notebook.toString());
  }

  String handout() throws LessonException {
    return Handout.html(WorkedLesson.run(lesson(), done -> {}));
  }
}
