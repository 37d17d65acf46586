package plainscale.document;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The JSON of a notebook to a lesson, with a sentence for each way in which it can be something
 * else. Outputs are passed over as they come by, so that a notebook with many megabytes of pictures
 * takes no more room than its text.
 */
final class NotebookReader {
  private static final Set<String> KEPT =
      Set.of("id", "cell_type", "metadata", "source", "attachments");

  private final String file;
  private final List<String> remarks = new ArrayList<>();
  private final List<JsonNode> cells = new ArrayList<>();
  private JsonNode metadata = JsonNodeFactory.instance.missingNode();
  private int format;

  private NotebookReader(String file) {
    this.file = file;
  }

  static Lesson read(String file, Reader json) throws LessonException, IOException {
    return new NotebookReader(file).read(json);
  }

  private Lesson read(Reader json) throws LessonException, IOException {
    scan(json);
    checkFormat();
    checkLanguage(file, metadata);
    List<LessonCell> lesson = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (JsonNode cell : cells) {
      cell(cell, id(cell, lesson.size(), ids)).ifPresent(lesson::add);
    }
    if (lesson.stream().allMatch(LessonCell.Raw.class::isInstance)) {
      throw new LessonException(file + " has no cells; there is nothing to run.");
    }
    ObjectNode own = object(metadata, "the notebook");
    WrittenIn.of(own).ifPresent(language -> language.say(own));
    return new Lesson(file, own, lesson, remarks, null);
  }

  private void scan(Reader json) throws LessonException, IOException {
    try (JsonParser parser = LessonJson.MAPPER.createParser(json)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new LessonException(file + " is not a notebook: a notebook is a JSON object.");
      }
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        parser.nextToken();
        switch (name) {
          case "nbformat" -> format = LessonJson.tree(parser).asInt(0);
          case "metadata" -> metadata = LessonJson.tree(parser);
          case "cells" -> cells(parser);
          default -> parser.skipChildren();
        }
      }
      if (parser.nextToken() != null) {
        throw new LessonException(
            file + " is not a notebook: something stands after its closing brace.");
      }
    } catch (JsonProcessingException e) {
      String where = e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ")";
      throw new LessonException(file + " is not a notebook: it is not JSON" + where + ".");
    }
  }

  private void cells(JsonParser parser) throws IOException {
    if (!parser.hasToken(JsonToken.START_ARRAY)) {
      parser.skipChildren();
      return;
    }
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      if (parser.hasToken(JsonToken.START_OBJECT)) {
        cells.add(withoutOutputs(parser));
      } else {
        parser.skipChildren();
      }
    }
  }

  private static ObjectNode withoutOutputs(JsonParser parser) throws IOException {
    ObjectNode cell = LessonJson.MAPPER.createObjectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      if (KEPT.contains(name)) {
        cell.set(name, LessonJson.tree(parser));
      } else {
        parser.skipChildren();
      }
    }
    return cell;
  }

  private void checkFormat() throws LessonException {
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

  /** The metadata of a notebook may say that its cells are in another language. */
  static void checkLanguage(String file, JsonNode metadata) throws LessonException {
    if (WrittenIn.of(metadata).isEmpty()) {
      throw new LessonException(
          file
              + " is written in "
              + WrittenIn.language(metadata)
              + ", not in Plainscale's notation.");
    }
  }

  /** Whether a notebook says so; one that is none says nothing. */
  static boolean isOfOtherLanguage(Reader json) throws IOException {
    NotebookReader notebook = new NotebookReader("");
    try {
      notebook.scan(json);
    } catch (LessonException e) {
      return false;
    }
    return WrittenIn.of(notebook.metadata).isEmpty();
  }

  /** Its own id if that is an id and no other cell has it, else another. */
  private String id(JsonNode cell, int index, Set<String> taken) {
    String own = cell.path("id").asText("");
    String id = CellIds.free(own.isEmpty() ? "cell-" + index : CellIds.valid(own), taken);
    if (!own.isEmpty() && !own.equals(id)) {
      remarks.add(
          taken.contains(own)
              ? "Two cells have the id " + own + "; the later one is now called " + id + "."
              : "“" + own + "” is no id of a cell; the cell is now called " + id + ".");
    }
    taken.add(id);
    return id;
  }

  private Optional<LessonCell> cell(JsonNode cell, String id) {
    String source = source(cell.path("source"));
    ObjectNode own = object(cell.path("metadata"), "cell " + id);
    ObjectNode attached = object(cell.path("attachments"), "the attachments of cell " + id);
    return switch (cell.path("cell_type").asText("")) {
      case "markdown" -> Optional.of(new LessonCell.Prose(id, source, own, attached, 0));
      case "code" -> Optional.of(new LessonCell.Code(id, source, own, 0));
      case "raw" -> Optional.of(new LessonCell.Raw(id, source, own, attached, 0));
      default -> Optional.empty();
    };
  }

  private ObjectNode object(JsonNode node, String owner) {
    if (node instanceof ObjectNode object) {
      return object;
    }
    if (!node.isMissingNode()) {
      remarks.add("The metadata of " + owner + " are no JSON object; they were left out.");
    }
    return LessonJson.MAPPER.createObjectNode();
  }

  /** A source is one text or a list of lines. */
  static String source(JsonNode source) {
    if (!source.isArray()) {
      return source.asText("");
    }
    StringBuilder text = new StringBuilder();
    source.forEach(line -> text.append(line.asText("")));
    return text.toString();
  }
}
