package plainscale.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {

  private static final String SAMPLE =
      """
      {"text": "θ 🧲 \\u0041\\n\\"", "int": -7, "long": 9007199254740993, "big": 123456789012345678901234567890,
       "real": 6.02214076e23, "yes": true, "no": false, "none": null, "list": [1, [], {}, "x"],
       "nested": {"a": {"b": [{"c": 0.5}]}}}
      """;

  @Test
  void itReadsWhatTheObjectMapperReads() throws Exception {
    assertEquals(new ObjectMapper().readTree(SAMPLE), Json.read(bytes(SAMPLE)));
  }

  @Test
  void whatItWritesTheObjectMapperReadsAsTheSameTree() throws Exception {
    ObjectNode tree = Json.read(bytes(SAMPLE));
    assertEquals(tree, new ObjectMapper().readTree(Json.write(tree)));
  }

  @Test
  void whatItWritesItReads() throws Exception {
    ObjectNode tree = Json.read(bytes(SAMPLE));
    assertEquals(tree, Json.read(Json.write(tree)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "[]",
        "1",
        "\"x\"",
        "null",
        "{",
        "{\"a\"",
        "{\"a\":",
        "{\"a\":1",
        "{\"a\":1,}",
        "{\"a\":[1}",
        "{\"a\":[1",
        "{} {}",
        "{}x",
        "{'a':1}",
        "{\"a\":NaN}",
        "{\"a\":01}",
        "{/*c*/}",
        "{\"a\":\"\u0001\"}"
      })
  void whatIsNotExactlyOneObjectIsAnIoException(String text) {
    assertThrows(IOException.class, () -> Json.read(bytes(text)));
  }

  @ParameterizedTest
  @ValueSource(ints = {199, 200, 201, 100_000})
  void depthHasALimit(int depth) throws Exception {
    String text = "{\"a\":".repeat(depth) + "1" + "}".repeat(depth);
    if (depth <= 200) {
      assertTrue(Json.read(bytes(text)).has("a"));
    } else {
      assertThrows(IOException.class, () -> Json.read(bytes(text)));
    }
  }

  @Test
  void bytesThatAreNotUtf8AreAnIoException() {
    byte[] overlong = {'{', '"', (byte) 0xC0, (byte) 0xAF, '"', ':', '1', '}'};
    byte[] wide = "{\"a\":1}".getBytes(StandardCharsets.UTF_16BE);
    assertThrows(IOException.class, () -> Json.read(overlong));
    assertThrows(IOException.class, () -> Json.read(wide));
  }

  @Test
  void halfASurrogatePairDoesNotStopAMessage() throws Exception {
    ObjectNode tree = Json.object().put("text", "a\uD83Eb");
    assertEquals("a?b", Json.read(Json.write(tree)).path("text").textValue());
  }

  @Test
  void mapsListsAndScalarsBecomeATree() throws Exception {
    Map<String, Object> value = new LinkedHashMap<>();
    value.put("text", "θ");
    value.put("numbers", List.of(1, 2L, 0.5, 1.5f));
    value.put("truth", true);
    value.put("none", null);
    value.put("inner", Map.of("list", Arrays.asList("x", null)));
    String expected =
        "{\"text\":\"θ\",\"numbers\":[1,2,0.5,1.5],\"truth\":true,\"none\":null,"
            + "\"inner\":{\"list\":[\"x\",null]}}";
    assertEquals(expected, new String(Json.write(Json.tree(value)), StandardCharsets.UTF_8));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
