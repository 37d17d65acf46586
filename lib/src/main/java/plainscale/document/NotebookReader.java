package plainscale.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The JSON of a notebook to a lesson, with a sentence for each way in which it can be something
 * else.
 */
final class NotebookReader {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String LANGUAGE = "plainscale";

  private final String file;

  private NotebookReader(String file) {
    this.file = file;
  }

  static Lesson read(String file, String json) throws LessonException {
    return new NotebookReader(file).read(json);
  }

  private Lesson read(String json) throws LessonException {
    JsonNode notebook = tree(json);
    checkFormat(notebook);
    checkLanguage(notebook.path("metadata"));
    List<LessonCell> cells = new ArrayList<>();
    for (JsonNode cell : notebook.path("cells")) {
      cell(cell, cells.size()).ifPresent(cells::add);
    }
    if (cells.isEmpty()) {
      throw new LessonException(file + " has no cells; there is nothing to run.");
    }
    return new Lesson(file, title(notebook, cells), cells);
  }

  private JsonNode tree(String json) throws LessonException {
    try {
      JsonNode tree = JSON.readTree(json);
      if (tree.isObject()) {
        return tree;
      }
      throw new LessonException(file + " is not a notebook: a notebook is a JSON object.");
    } catch (JsonProcessingException e) {
      String where = e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ")";
      throw new LessonException(file + " is not a notebook: it is not JSON" + where + ".");
    }
  }

  private void checkFormat(JsonNode notebook) throws LessonException {
    int format = notebook.path("nbformat").asInt(0);
    if (format == 0) {
      throw new LessonException(
          file + " is JSON but not a notebook: it does not say its nbformat.");
    }
    if (format != 4) {
      throw new LessonException(
          file
              + " is a notebook of nbformat "
              + format
              + "; open it in JupyterLab and save it, which makes it nbformat 4.");
    }
  }

  private void checkLanguage(JsonNode metadata) throws LessonException {
    String language = metadata.path("kernelspec").path("language").asText("");
    String name =
        language.isEmpty() ? metadata.path("language_info").path("name").asText("") : language;
    if (!name.isEmpty() && !name.equals(LANGUAGE)) {
      throw new LessonException(
          file + " is written in " + name + ", not in Plainscale's notation.");
    }
  }

  private static Optional<LessonCell> cell(JsonNode cell, int index) {
    String id = cell.path("id").asText("cell-" + index);
    String source = source(cell.path("source"));
    return switch (cell.path("cell_type").asText("")) {
      case "markdown" ->
          Optional.of(new LessonCell.Prose(id, source, attachments(cell.path("attachments"))));
      case "code" -> Optional.of(new LessonCell.Code(id, source));
      default -> Optional.empty();
    };
  }

  /** A source is one text or a list of lines. */
  private static String source(JsonNode source) {
    if (!source.isArray()) {
      return source.asText("");
    }
    StringBuilder text = new StringBuilder();
    source.forEach(line -> text.append(line.asText("")));
    return text.toString();
  }

  private static Map<String, String> attachments(JsonNode attachments) {
    Map<String, String> uris = new LinkedHashMap<>();
    attachments
        .properties()
        .forEach(
            named ->
                named
                    .getValue()
                    .properties()
                    .forEach(
                        data ->
                            uris.put(
                                named.getKey(),
                                "data:"
                                    + data.getKey()
                                    + ";base64,"
                                    + source(data.getValue()).strip())));
    return uris;
  }

  /** The title in our metadata, else the first heading, else the name of the file. */
  private String title(JsonNode notebook, List<LessonCell> cells) {
    String named = notebook.path("metadata").path(LANGUAGE).path("title").asText("");
    if (!named.isEmpty()) {
      return named;
    }
    return cells.stream()
        .filter(LessonCell.Prose.class::isInstance)
        .flatMap(cell -> cell.source().lines())
        .filter(line -> line.startsWith("# "))
        .map(line -> line.substring(2).strip())
        .findFirst()
        .orElse(file);
  }
}
