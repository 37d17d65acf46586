package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Metadata as the text form has them: the fields of our own object by themselves, all other
 * metadata under the key {@code metadata}. A field of ours that would stand for something else
 * there stays in our object, which then stands among the others; so does our object if it is none
 * or empty.
 */
final class OwnFields {
  /** The key of all other metadata. */
  static final String OTHERS = "metadata";

  private OwnFields() {}

  /** The fields in that order, then those that it does not name, then the other metadata. */
  static Map<String, JsonNode> write(
      ObjectNode metadata, List<String> order, Set<String> reserved) {
    Map<String, JsonNode> fields = new LinkedHashMap<>();
    ObjectNode others = metadata.deepCopy();
    if (metadata.get(LessonHead.KEY) instanceof ObjectNode own && !own.isEmpty()) {
      Map<String, JsonNode> free = new TreeMap<>();
      ObjectNode bound = LessonJson.MAPPER.createObjectNode();
      for (Map.Entry<String, JsonNode> field : own.properties()) {
        if (reserved.contains(field.getKey())) {
          bound.set(field.getKey(), field.getValue());
        } else {
          free.put(field.getKey(), field.getValue());
        }
      }
      order.stream().filter(free::containsKey).forEach(key -> fields.put(key, free.get(key)));
      fields.putAll(free); // those that are in it keep their places
      others.remove(LessonHead.KEY);
      if (!bound.isEmpty()) {
        others.set(LessonHead.KEY, bound);
      }
    }
    if (!others.isEmpty()) {
      fields.put(OTHERS, others);
    }
    return fields;
  }

  /** The metadata of these fields. */
  static ObjectNode read(ObjectNode fields, Map<String, Integer> lines, TextPlace place)
      throws LessonException {
    ObjectNode own = fields.deepCopy();
    JsonNode others = own.remove(OTHERS);
    ObjectNode metadata = LessonJson.MAPPER.createObjectNode();
    if (others == null || others.isNull()) {
      others = metadata;
    }
    TextPlace there = place.at(lines.getOrDefault(OTHERS, place.line()));
    if (!(others instanceof ObjectNode)) {
      throw there.refused(
          "metadata: is followed by pairs key: value, the metadata of other programs");
    }
    metadata = (ObjectNode) others;
    if (own.isEmpty()) {
      return metadata;
    }
    JsonNode bound = metadata.path(LessonHead.KEY);
    if (!bound.isMissingNode() && !bound.isObject()) {
      throw there.refused(
          "plainscale: below metadata: leaves no room for “%s”; take one of them out"
              .formatted(own.fieldNames().next()));
    }
    for (Map.Entry<String, JsonNode> field : bound.properties()) {
      if (own.has(field.getKey())) {
        throw there.refused(
            "“%s” stands twice, once below metadata:; keep one of them".formatted(field.getKey()));
      }
      own.set(field.getKey(), field.getValue());
    }
    metadata.set(LessonHead.KEY, own);
    return metadata;
  }
}
