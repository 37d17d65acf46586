package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;
import plainscale.wire.Channel;
import plainscale.wire.Message;

/**
 * What the protocol asks of every message that a kernel sends. The table of contents is a resource;
 * the checks that hold for all messages are here.
 */
final class MessageSpec {

  private static final Set<String> WITHOUT_PARENT = Set.of("iopub_welcome");
  private static final List<String> HEADER_FIELDS =
      List.of("msg_id", "msg_type", "session", "username", "date", "version");

  private static final Map<String, Predicate<JsonNode>> KINDS =
      Map.ofEntries(
          Map.entry("text", JsonNode::isTextual),
          Map.entry("boolean", JsonNode::isBoolean),
          Map.entry("count", node -> node.isInt() && node.intValue() >= 0),
          Map.entry("object", JsonNode::isObject),
          Map.entry("array", JsonNode::isArray),
          Map.entry("texts", node -> node.isArray() && all(node, JsonNode::isTextual)),
          Map.entry("lines", node -> node.isArray() && all(node, MessageSpec::isHistoryLine)),
          Map.entry("mimes", MessageSpec::isMimeBundle),
          Map.entry("expressions", node -> node.isObject() && all(node, MessageSpec::isExpression)),
          Map.entry("state", oneOf("starting", "busy", "idle")),
          Map.entry("stream", oneOf("stdout", "stderr")));

  private static final Map<String, List<String>> FIELDS = readTable();

  private MessageSpec() {}

  /** Fails unless the message is one that a front end accepts on this channel. */
  static void check(Channel channel, Message message) {
    String type = message.header().type();
    checkHeader(message.header().fields());
    checkParent(message);
    assertEquals(
        type.endsWith("_reply"), channel == Channel.SHELL || channel == Channel.CONTROL, type);
    assertFalse(message.identities().isEmpty(), type + " needs an address or a topic");
    checkContent(type, message.content());
  }

  private static void checkHeader(ObjectNode header) {
    for (String field : HEADER_FIELDS) {
      assertTrue(header.path(field).isTextual(), "header needs " + field + ": " + header);
    }
    assertEquals("5.5", header.path("version").textValue());
    assertNotNull(Instant.parse(header.path("date").textValue()));
  }

  private static void checkParent(Message message) {
    String type = message.header().type();
    boolean starting = message.content().path("execution_state").asText().equals("starting");
    if (WITHOUT_PARENT.contains(type) || starting) {
      assertTrue(message.parent().isEmpty(), type + " has no parent");
    } else {
      assertTrue(message.parent().path("msg_id").isTextual(), type + " needs its parent");
    }
  }

  private static void checkContent(String type, ObjectNode content) {
    String when = type.endsWith("_reply") ? content.path("status").asText() : "-";
    List<String> fields = FIELDS.get(type + " " + when);
    assertNotNull(fields, "no such message: " + type + " with status " + when);
    for (String field : fields) {
      String name = field.substring(0, field.indexOf(':'));
      Predicate<JsonNode> kind = KINDS.get(field.substring(name.length() + 1));
      assertTrue(
          Objects.requireNonNull(kind, field).test(content.path(name)),
          type + " needs " + field + ": " + content);
    }
    if (type.endsWith("display_data")) {
      assertTrue(content.at("/transient/display_id").isTextual(), type + " needs a display_id");
    }
  }

  private static boolean isMimeBundle(JsonNode node) {
    return node.isObject()
        && node.properties().stream().allMatch(e -> e.getKey().matches("[a-z]+/[a-z0-9.+-]+"));
  }

  private static boolean isExpression(JsonNode node) {
    boolean bundle = isMimeBundle(node.path("data")) && node.path("metadata").isObject();
    boolean error = node.path("ename").isTextual() && node.path("evalue").isTextual();
    return switch (node.path("status").asText()) {
      case "ok" -> bundle;
      case "error" -> error && node.path("traceback").isArray();
      default -> false;
    };
  }

  private static boolean isHistoryLine(JsonNode line) {
    JsonNode input = line.path(2).isArray() ? line.path(2).path(0) : line.path(2);
    return line.size() == 3 && line.path(0).isInt() && line.path(1).isInt() && input.isTextual();
  }

  private static boolean all(JsonNode node, Predicate<JsonNode> check) {
    return StreamSupport.stream(node.spliterator(), false).allMatch(check);
  }

  private static Predicate<JsonNode> oneOf(String... texts) {
    return node -> node.isTextual() && List.of(texts).contains(node.textValue());
  }

  private static Map<String, List<String>> readTable() {
    Map<String, List<String>> table = new HashMap<>();
    try (InputStream in = MessageSpec.class.getResourceAsStream("message-spec.tsv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split("\t", -1))
          .forEach(
              row ->
                  table.put(
                      row[0] + " " + row[1],
                      row.length > 2 ? List.of(row[2].split(" ", -1)) : List.of()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table;
  }
}
