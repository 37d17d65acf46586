package plainscale.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A picture attached to a cell, as a fence: its name and media type in the first line, then base64
 * in lines of 76 signs (RFC 2045, 6.8). What is no base64 without white space is written as JSON;
 * without a media type that is all that the notebook has under the name.
 */
final class AttachmentText {
  private static final int WIDTH = 76;
  private static final String NAME = "name";
  private static final String TYPE = "type";
  private static final String FORM = "form";
  private static final Set<String> KEYS = Set.of(NAME, TYPE, FORM);
  private static final TextNode JSON = new TextNode("json");
  private static final Pattern BASE64 = Pattern.compile("[A-Za-z0-9+/]+={0,2}");

  private AttachmentText() {}

  /** The fences of all attachments, in the order of their names. */
  static List<String> write(ObjectNode attachments) {
    List<String> fences = new ArrayList<>();
    sorted(attachments).forEach((name, data) -> write(name, data, fences));
    return fences;
  }

  private static void write(String name, JsonNode data, List<String> fences) {
    Map<String, JsonNode> line = new LinkedHashMap<>();
    line.put(NAME, new TextNode(name));
    if (!(data instanceof ObjectNode types) || data.isEmpty()) {
      line.put(FORM, JSON);
      fences.add(fence(line, LessonJson.line(data)));
      return;
    }
    for (Map.Entry<String, JsonNode> type : sorted(types).entrySet()) {
      line.put(TYPE, new TextNode(type.getKey()));
      String text = type.getValue().asText();
      if (type.getValue().isTextual() && BASE64.matcher(text).matches()) {
        line.remove(FORM);
        fences.add(fence(line, wrapped(text)));
      } else {
        line.put(FORM, JSON);
        fences.add(fence(line, LessonJson.line(type.getValue())));
      }
    }
  }

  private static String fence(Map<String, JsonNode> line, String content) {
    return Fences.write(FenceWord.ATTACHMENT, " " + YamlWriter.line(line), content);
  }

  private static String wrapped(String text) {
    StringBuilder lines = new StringBuilder();
    for (int from = 0; from < text.length(); from += WIDTH) {
      lines.append(from == 0 ? "" : "\n");
      lines.append(text, from, Math.min(from + WIDTH, text.length()));
    }
    return lines.toString();
  }

  private static Map<String, JsonNode> sorted(ObjectNode object) {
    Map<String, JsonNode> fields = new TreeMap<>();
    object.properties().forEach(field -> fields.put(field.getKey(), field.getValue()));
    return fields;
  }

  /** Reads a fence and puts its picture among the attachments of a cell. */
  static void read(String rest, List<String> lines, TextPlace place, ObjectNode attachments)
      throws LessonException {
    YamlReader.Mapping line = YamlReader.line(rest, place);
    String name = line.values().path(NAME).textValue();
    String type = line.values().path(TYPE).textValue();
    boolean json = JSON.equals(line.values().get(FORM));
    boolean whole = json && !line.values().has(TYPE);
    if (name == null || (type == null && !whole) || !KEYS.containsAll(line.lines().keySet())) {
      throw place.refused(
          "a picture has a name and a type; write attachment name: drop.png, type: image/png");
    }
    JsonNode data = json ? json(lines, place) : base64(lines, place);
    JsonNode before = attachments.path(name);
    if (whole ? !before.isMissingNode() : before.has(type) || before.isValueNode()) {
      throw place.refused("the picture %s stands twice in this cell; keep one".formatted(name));
    }
    if (whole) {
      attachments.set(name, data);
    } else {
      attachments.withObjectProperty(name).set(type, data);
    }
  }

  private static JsonNode base64(List<String> lines, TextPlace place) throws LessonException {
    String text = lines.stream().map(String::strip).collect(Collectors.joining());
    if (!BASE64.matcher(text).matches()) {
      throw place.refused("below this line stands a picture in base64, and this is none");
    }
    return new TextNode(text);
  }

  private static JsonNode json(List<String> lines, TextPlace place) throws LessonException {
    try {
      JsonNode data = LessonJson.MAPPER.readTree(String.join("\n", lines));
      if (!data.isMissingNode()) {
        return data;
      }
    } catch (JsonProcessingException e) {
      // told below
    }
    throw place.refused("below this line stands JSON, and this is none");
  }
}
