package plainscale.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.TreeMap;

/**
 * JSON as notebooks have it: one space of indent, keys in the order of their letters, numbers with
 * the figures that were written.
 */
final class LessonJson {
  private static final int LONGEST_TEXT = 1 << 30; // outputs, which are passed over

  static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxStringLength(LONGEST_TEXT)
                          .maxNameLength(LONGEST_TEXT)
                          .build())
                  .build())
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private static final ObjectWriter WRITER = MAPPER.writer(printer());

  private LessonJson() {}

  /** The value at which the parser stands; never null. */
  static JsonNode tree(JsonParser parser) throws IOException {
    JsonNode tree = MAPPER.readTree(parser);
    return tree == null ? MAPPER.missingNode() : tree;
  }

  /** The text of a tree, keys sorted, with a line feed at the end. */
  static String text(JsonNode tree) {
    try {
      return WRITER.writeValueAsString(sorted(tree)) + "\n";
    } catch (IOException e) {
      throw new IllegalStateException(e); // a tree can be written
    }
  }

  /** The same in one line. */
  static String line(JsonNode tree) {
    return sorted(tree).toString();
  }

  private static JsonNode sorted(JsonNode tree) {
    if (tree instanceof ObjectNode object) {
      TreeMap<String, JsonNode> fields = new TreeMap<>();
      object.properties().forEach(field -> fields.put(field.getKey(), sorted(field.getValue())));
      return MAPPER.createObjectNode().setAll(fields);
    }
    if (tree instanceof ArrayNode array) {
      ArrayNode items = MAPPER.createArrayNode();
      array.forEach(item -> items.add(sorted(item)));
      return items;
    }
    return tree;
  }

  private static DefaultPrettyPrinter printer() {
    DefaultIndenter indent = new DefaultIndenter(" ", "\n");
    return new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withArrayEmptySeparator("")
                .withObjectEmptySeparator(""))
        .withObjectIndenter(indent)
        .withArrayIndenter(indent);
  }
}
