package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BigIntegerNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigInteger;
import java.util.List;
import java.util.Random;

/** Notebooks that no teacher would write, by chance from a seed. */
final class NastyLessons {
  /** Lines that look like something else. */
  private static final List<String> LINES =
      List.of(
          "",
          "",
          " ",
          "\t",
          "words",
          "words, and more words.",
          "# Heading",
          "Heading\n===",
          "---",
          "--- ",
          "...",
          "- item",
          "- item\n\n  ```plainscale\n  x = 2\n  ```",
          "1. one",
          "> quoted",
          "> ```plainscale\n> x\n> ```",
          "    indented",
          "  two spaces",
          "trailing  ",
          "trailing\t",
          "trailing\r",
          "\r",
          "a\rb",
          "```",
          "````",
          "~~~",
          "```plainscale",
          "```plainscale a",
          "```plainscale role: text",
          "```text-cell",
          "```raw-cell",
          "```attachment",
          "```text\nx\n```",
          "```python\nprint()\n```",
          "~~~plainscale\nx\n~~~",
          "  ```plainscale",
          "````\n```plainscale\n````",
          "<!-- cell -->",
          "<!-- cell a role: text -->",
          "<!-- cell",
          "<!--",
          "-->",
          "<!-- a comment -->",
          "<!-- a\n```plainscale\n-->",
          "<!-- cell phone -->",
          "<div>",
          "</div>",
          "<pre>",
          "</pre>",
          "<script>",
          "<?php",
          "<!X",
          "<![CDATA[",
          "]]>",
          "<br>",
          "[a]: b",
          "[a]:",
          "| a | b |\n| --- | --- |",
          "***",
          "key: value",
          "- - -",
          "given m = 2.70 ± 0.05 g \"mass\"",
          "%YAML 1.2",
          "&a *a !!b",
          "title: x",
          "{",
          "}",
          "\"",
          "'",
          "\\",
          "\u2028",
          "\u2029",
          "\u0085",
          "\f",
          "\u0000",
          "\u0007",
          "\u001b[1m",
          "\uFEFF",
          "\uFFFE",
          "\uFFFF",
          "\u00a0",
          "\u200b",
          "θ = 30°",
          "𝑔 = 9.81",
          "👩‍🔬",
          "क्षेत्र",
          "e\u0301",
          "x".repeat(3000),
          "word ".repeat(400),
          "`".repeat(40),
          "-->-->",
          "plainscale: 1",
          "\\x60",
          "&#96;",
          "&amp;",
          "\u202eabc");

  private static final List<String> WORDS =
      List.of(
          "",
          "a",
          "role",
          "minutes",
          "blank",
          "lines",
          "metadata",
          "plainscale",
          "format",
          "title",
          "twin",
          "name",
          "type",
          "null",
          "~",
          "true",
          "no",
          "Yes",
          "NO",
          "1",
          "1.0",
          "1e3",
          "-",
          "--",
          "---",
          ".inf",
          "0x1F",
          "0o7",
          "+1",
          "1_000",
          "12:30",
          "2026-05-01",
          "=",
          "<<",
          "? a",
          "- a",
          "a: b",
          "a:",
          ":a",
          "a #b",
          "#a",
          "a, b",
          "[a]",
          "{a}",
          "\"a\"",
          "'a'",
          "a`b",
          "```",
          "-->",
          "a > b",
          "<!--",
          "*a",
          "&a",
          "!a",
          "!!str a",
          "%a",
          "@a",
          "|",
          ">",
          "|-\n a",
          "a\nb",
          "a\n",
          "\na",
          "a\n\n",
          "a\n b",
          "a\n\nb\n",
          " a",
          "a ",
          "a  b",
          "\t",
          "a\tb",
          "a\r\nb",
          "\\",
          "a\\nb",
          "\u0000",
          "\u0085",
          "\u2028",
          "\u2029",
          "\u00a0",
          "\uFEFF",
          "\uFFFE",
          "\u007f",
          "ä",
          "θ",
          "𝑔",
          "👩‍🔬",
          "क्षेत्र",
          "e\u0301",
          "x".repeat(600),
          "x y ".repeat(400) + "z",
          "level",
          "authors",
          "kernelspec",
          "language_info",
          "jupyter",
          "tags",
          "cell",
          "[",
          "]",
          "{",
          "}",
          ",",
          "---\na",
          "a\n---\nb",
          "...",
          "a\n...\nb");

  private final Random random;

  NastyLessons(long seed) {
    random = new Random(seed);
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private String word() {
    return random.nextInt(8) == 0 ? pick(WORDS) + pick(WORDS) : pick(WORDS);
  }

  String source() {
    StringBuilder source = new StringBuilder();
    int lines = random.nextInt(6);
    for (int i = 0; i < lines; i++) {
      source.append(i == 0 ? "" : "\n").append(pick(LINES));
    }
    return source.toString();
  }

  JsonNode value(int depth) {
    return switch (random.nextInt(depth > 0 ? 10 : 7)) {
      case 0 -> NullNode.getInstance();
      case 1 -> BooleanNode.valueOf(random.nextBoolean());
      case 2 -> number();
      case 7 -> object(depth - 1);
      case 8, 9 -> list(depth - 1);
      default -> new TextNode(word());
    };
  }

  private ArrayNode list(int depth) {
    ArrayNode list = LessonJson.MAPPER.createArrayNode();
    int items = random.nextInt(4);
    for (int i = 0; i < items; i++) {
      list.add(value(depth));
    }
    return list;
  }

  private JsonNode number() {
    String number =
        pick(
            List.of(
                "0", "-0", "1.0", "1e3", "1E-7", "-2.50", "0.1", "6.02214076e23", "1e400", "3"));
    return switch (random.nextInt(4)) {
      case 0 -> IntNode.valueOf(random.nextInt());
      case 1 -> LongNode.valueOf(random.nextLong());
      case 2 -> BigIntegerNode.valueOf(BigInteger.TWO.pow(random.nextInt(200)).negate());
      default -> read(number);
    };
  }

  private static JsonNode read(String json) {
    try {
      return LessonJson.MAPPER.readTree(json);
    } catch (java.io.IOException e) {
      throw new IllegalStateException(e);
    }
  }

  ObjectNode object(int depth) {
    ObjectNode object = LessonJson.MAPPER.createObjectNode();
    int fields = random.nextInt(4);
    for (int i = 0; i < fields; i++) {
      object.set(word(), value(depth));
    }
    return object;
  }

  private ObjectNode metadata() {
    ObjectNode metadata = random.nextBoolean() ? object(2) : object(0).removeAll();
    switch (random.nextInt(6)) {
      case 0 -> metadata.set("plainscale", value(2));
      case 1, 2 -> metadata.set("plainscale", object(2));
      case 3 -> metadata.putObject("plainscale").put("role", "caution").put("minutes", 5);
      default -> metadata.remove("plainscale");
    }
    return metadata;
  }

  private ObjectNode attachments() {
    ObjectNode attachments = LessonJson.MAPPER.createObjectNode();
    int pictures = random.nextInt(3);
    for (int i = 0; i < pictures; i++) {
      switch (random.nextInt(3)) {
        case 0 -> attachments.set(word(), value(1));
        case 1 -> attachments.putObject(word()).set(word(), value(1));
        default ->
            attachments
                .putObject(pick(List.of("drop.png", "a b.png", word())))
                .put("image/png", "iVBORw0KGgo".repeat(random.nextInt(30)) + "AA==");
      }
    }
    return attachments;
  }

  private ObjectNode cell(int index) {
    ObjectNode cell = LessonJson.MAPPER.createObjectNode();
    String type = pick(List.of("markdown", "markdown", "code", "raw"));
    String source = source();
    String id = random.nextBoolean() ? "c" + index : CellIds.derived(source);
    cell.put("cell_type", type).put("id", id).put("source", source);
    cell.set("metadata", metadata());
    if (!type.equals("code") && random.nextInt(4) == 0) {
      cell.set("attachments", attachments());
    }
    return cell;
  }

  /** A notebook as a lesson. */
  Lesson lesson() throws LessonException {
    ObjectNode notebook = LessonJson.MAPPER.createObjectNode().put("nbformat", 4);
    ObjectNode metadata = metadata();
    if (random.nextBoolean()) {
      UsualMetadata.put(metadata);
    }
    if (metadata.path("plainscale").path("format").canConvertToInt()) {
      metadata.withObjectProperty("plainscale").put("format", 1);
    }
    notebook.set("metadata", metadata);
    ArrayNode cells = notebook.putArray("cells");
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      cells.add(cell(i));
    }
    cells.addObject().put("id", "last").put("cell_type", "code").put("source", "1 + 1");
    return Lesson.parse("test.ipynb", notebook.toString());
  }
}
