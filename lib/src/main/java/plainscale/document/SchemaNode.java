package plainscale.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** A place in the schema's file, with what the places say that it refers to. */
record SchemaNode(JsonNode file, JsonNode node) {
  private static final String HERE = "#";

  static SchemaNode of(String text) {
    try {
      JsonNode file = LessonJson.MAPPER.readTree(text);
      return new SchemaNode(file, file);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e); // the file is ours
    }
  }

  SchemaNode definition(String name) {
    return new SchemaNode(file, file.path("$defs").path(name));
  }

  /** The names of its fields, if it is an object. */
  Set<String> fields() {
    Set<String> names = new LinkedHashSet<>();
    keyword("properties").fieldNames().forEachRemaining(names::add);
    return names;
  }

  SchemaNode field(String name) {
    return new SchemaNode(file, keyword("properties").path(name));
  }

  SchemaNode items() {
    return new SchemaNode(file, keyword("items"));
  }

  /** The first example of a value. */
  Optional<JsonNode> example() {
    return Optional.of(keyword("examples").path(0)).filter(example -> !example.isMissingNode());
  }

  String description() {
    return node.path("description").asText();
  }

  /** What it says itself, else what the place says that it refers to. */
  JsonNode keyword(String keyword) {
    JsonNode own = node.path(keyword);
    String reference = node.path("$ref").asText("");
    return own.isMissingNode() && reference.startsWith(HERE)
        ? file.at(reference.substring(HERE.length())).path(keyword)
        : own;
  }
}
