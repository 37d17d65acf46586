package plainscale.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * JSON trees from and to bytes. Reading and writing by hand over Jackson's streams, not through
 * {@code ObjectMapper}, because the mapper's first use costs a tenth of a second of the kernel's
 * start.
 */
public final class Json {

  private static final int MAX_DEPTH = 200;

  /** Names come from outside, so they are neither interned nor kept in a table. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH).build())
          .build();

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private Json() {}

  /** A new empty object. */
  public static ObjectNode object() {
    return NODES.objectNode();
  }

  /** A new empty array. */
  public static ArrayNode array() {
    return NODES.arrayNode();
  }

  /** Reads exactly one object in strict UTF-8; anything else is an {@link IOException}. */
  public static ObjectNode read(byte[] utf8) throws IOException {
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString();
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new JsonParseException(parser, "not an object");
      }
      ObjectNode object = readObject(parser);
      if (parser.nextToken() != null) {
        throw new JsonParseException(parser, "text after the object");
      }
      return object;
    }
  }

  /** Writes a tree in UTF-8; half a surrogate pair becomes a question mark. */
  public static byte[] write(JsonNode tree) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      write(tree, generator);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A tree from texts, numbers, booleans, null, maps and iterables of the same. */
  public static JsonNode tree(@Nullable Object value) {
    if (value instanceof JsonNode node) {
      return node;
    } else if (value instanceof Map<?, ?> map) {
      ObjectNode object = NODES.objectNode();
      map.forEach((name, element) -> object.set(String.valueOf(name), tree(element)));
      return object;
    } else if (value instanceof Iterable<?> elements) {
      ArrayNode array = NODES.arrayNode();
      elements.forEach(element -> array.add(tree(element)));
      return array;
    }
    return leaf(value);
  }

  private static JsonNode leaf(@Nullable Object value) {
    if (value == null) {
      return NODES.nullNode();
    } else if (value instanceof Boolean truth) {
      return NODES.booleanNode(truth);
    } else if (value instanceof Integer || value instanceof Long) {
      return NODES.numberNode(((Number) value).longValue());
    } else if (value instanceof Number number) {
      return NODES.numberNode(number.doubleValue());
    }
    return NODES.textNode(value.toString());
  }

  private static ObjectNode readObject(JsonParser parser) throws IOException {
    ObjectNode object = NODES.objectNode();
    for (String name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
      object.set(name, readValue(parser, parser.nextToken()));
    }
    return object;
  }

  private static ArrayNode readArray(JsonParser parser) throws IOException {
    ArrayNode array = NODES.arrayNode();
    for (JsonToken next = parser.nextToken();
        next != JsonToken.END_ARRAY;
        next = parser.nextToken()) {
      array.add(readValue(parser, next));
    }
    return array;
  }

  private static JsonNode readValue(JsonParser parser, @Nullable JsonToken token)
      throws IOException {
    if (token == null) {
      throw new JsonParseException(parser, "unfinished");
    }
    return switch (token) {
      case START_OBJECT -> readObject(parser);
      case START_ARRAY -> readArray(parser);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_NUMBER_INT -> readInteger(parser);
      default -> throw new JsonParseException(parser, "unexpected " + token);
    };
  }

  private static JsonNode readInteger(JsonParser parser) throws IOException {
    return switch (parser.getNumberType()) {
      case INT -> NODES.numberNode(parser.getIntValue());
      case LONG -> NODES.numberNode(parser.getLongValue());
      default -> NODES.numberNode(parser.getBigIntegerValue());
    };
  }

  private static void write(JsonNode node, JsonGenerator generator) throws IOException {
    switch (node.getNodeType()) {
      case OBJECT -> writeObject(node, generator);
      case ARRAY -> {
        generator.writeStartArray();
        for (JsonNode element : node) {
          write(element, generator);
        }
        generator.writeEndArray();
      }
      case STRING -> generator.writeString(node.textValue());
      case BOOLEAN -> generator.writeBoolean(node.booleanValue());
      case NUMBER -> writeNumber(node, generator);
      case NULL, MISSING -> generator.writeNull();
      case BINARY, POJO -> throw new IOException("not JSON: " + node.getNodeType());
    }
  }

  private static void writeObject(JsonNode object, JsonGenerator generator) throws IOException {
    generator.writeStartObject();
    for (Map.Entry<String, JsonNode> field : object.properties()) {
      generator.writeFieldName(field.getKey());
      write(field.getValue(), generator);
    }
    generator.writeEndObject();
  }

  private static void writeNumber(JsonNode number, JsonGenerator generator) throws IOException {
    if (number.canConvertToLong() && number.isIntegralNumber()) {
      generator.writeNumber(number.longValue());
    } else if (number.isIntegralNumber()) {
      generator.writeNumber(number.bigIntegerValue());
    } else {
      generator.writeNumber(number.doubleValue());
    }
  }
}
