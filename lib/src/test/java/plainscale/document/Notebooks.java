package plainscale.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import plainscale.document.edition.Handout;

/** Notebooks for tests, cell by cell. */
public final class Notebooks {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final ObjectNode notebook = JSON.createObjectNode();
  private final ArrayNode cells = notebook.putArray("cells");

  public Notebooks() {
    notebook.put("nbformat", 4).put("nbformat_minor", 5);
    notebook.putObject("metadata").putObject("kernelspec").put("language", "plainscale");
  }

  public Notebooks prose(String source) {
    cell("markdown", source);
    return this;
  }

  public Notebooks code(String source) {
    cell("code", source).put("outputs", "").putNull("execution_count");
    return this;
  }

  /** Prose with an attached picture. */
  Notebooks picture(String source, String name, String bytes) {
    String data = Base64.getEncoder().encodeToString(bytes.getBytes(StandardCharsets.UTF_8));
    cell("markdown", source).putObject("attachments").putObject(name).put("image/png", data);
    return this;
  }

  /** What the lesson says of itself, as JSON. */
  public Notebooks head(String json) {
    ((ObjectNode) notebook.path("metadata")).set("plainscale", tree(json));
    return this;
  }

  /** What the last cell says of itself, as JSON. */
  public Notebooks says(String json) {
    ObjectNode last = (ObjectNode) cells.path(cells.size() - 1).path("metadata");
    last.set("plainscale", tree(json));
    return this;
  }

  private static JsonNode tree(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private ObjectNode cell(String type, String source) {
    ObjectNode cell = cells.addObject().put("id", "c" + cells.size()).put("cell_type", type);
    cell.putObject("metadata");
    return cell.put("source", source);
  }

  public Lesson lesson() throws LessonException {
    return Lesson.parse("test.ipynb", notebook.toString());
  }

  public WorkedLesson worked() throws LessonException {
    return WorkedLesson.run(lesson(), done -> {});
  }

  String handout() throws LessonException {
    return Handout.html(worked());
  }
}
