package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * JSON to YAML that {@link YamlReader} reads as the same JSON: a head in lines, the metadata of a
 * cell in part of a line. Text stands without quotation marks where it may; nothing is folded, so
 * that a change of a word is a change of one line.
 */
final class YamlWriter {
  private static final int WIDTH = 80;
  private static final int LONG_KEY = 500; // YAML wants a question mark before keys beyond 1024
  private static final String STEP = "  ";

  private YamlWriter() {}

  /** The fields as lines, in their order; those inside values in the order of their letters. */
  static String block(Map<String, JsonNode> fields) {
    StringBuilder lines = new StringBuilder();
    fields.forEach((key, value) -> field(lines, key, value, ""));
    return lines.toString();
  }

  private static void field(StringBuilder lines, String key, JsonNode value, String indent) {
    String name = text(key);
    if (name.length() > LONG_KEY) {
      lines.append("? ").append(name).append('\n').append(indent).append(':');
    } else {
      lines.append(name).append(':');
    }
    below(lines, value, indent, indent);
  }

  /** A value after its colon or dash: in the same line, or in lines below it. */
  private static void below(StringBuilder lines, JsonNode value, String indent, String dashes) {
    if (value.isEmpty() || isShortList(value)) {
      lines.append(' ').append(scalar(value, indent)).append('\n');
    } else if (value instanceof ObjectNode object) {
      lines.append('\n');
      for (Map.Entry<String, JsonNode> field : sorted(object).entrySet()) {
        lines.append(indent).append(STEP);
        field(lines, field.getKey(), field.getValue(), indent + STEP);
      }
    } else {
      lines.append('\n');
      value.forEach(item -> item(lines, item, dashes));
    }
  }

  private static void item(StringBuilder lines, JsonNode item, String indent) {
    lines.append(indent).append("-");
    if (item instanceof ObjectNode || item instanceof ArrayNode) {
      below(lines, item, indent, indent + STEP);
    } else {
      lines.append(' ').append(scalar(item, indent)).append('\n');
    }
  }

  private static boolean isShortList(JsonNode value) {
    return value instanceof ArrayNode list
        && StreamSupport.stream(list.spliterator(), false)
            .allMatch(
                item ->
                    item.isTextual()
                        ? YamlWord.isOnePlainWord(item.textValue())
                        : item.isValueNode())
        && flow(list).length() <= WIDTH;
  }

  private static String scalar(JsonNode value, String indent) {
    if (value.isTextual() && YamlText.isLiteral(value.textValue())) {
      return YamlText.literal(value.textValue(), indent + STEP);
    }
    return value.isTextual() && YamlWord.isPlainLine(value.textValue())
        ? value.textValue()
        : flow(value);
  }

  /** The fields in one line, without braces. */
  static String line(Map<String, JsonNode> fields) {
    return fields.entrySet().stream()
        .map(field -> pair(field.getKey(), field.getValue()))
        .collect(Collectors.joining(", "));
  }

  /** A key of several words stands in quotation marks: its first word would be a cell's id. */
  private static String pair(String key, JsonNode value) {
    String name = YamlWord.isOnePlainWord(key) ? key : YamlText.quoted(key);
    return (name.length() > LONG_KEY ? "? " : "") + name + ": " + flow(value);
  }

  private static String flow(JsonNode value) {
    if (value instanceof ObjectNode object) {
      return "{" + line(sorted(object)) + "}";
    }
    if (value instanceof ArrayNode list) {
      List<String> items = new ArrayList<>();
      list.forEach(item -> items.add(flow(item)));
      return "[" + String.join(", ", items) + "]";
    }
    return value.isTextual() ? text(value.textValue()) : value.asText();
  }

  private static String text(String text) {
    return YamlWord.isPlain(text) ? text : YamlText.quoted(text);
  }

  private static Map<String, JsonNode> sorted(ObjectNode object) {
    Map<String, JsonNode> fields = new TreeMap<>();
    object.properties().forEach(field -> fields.put(field.getKey(), field.getValue()));
    return fields;
  }
}
