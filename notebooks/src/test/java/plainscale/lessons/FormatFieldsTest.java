package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.document.LessonHead;
import plainscale.document.Schema;
import plainscale.document.check.LessonCheck;
import plainscale.document.check.Severity;

/** FORMAT.md describes every field of the schema and every rule of the check. */
class FormatFieldsTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z-]+)` \\|(.*)\\|$");
  private static final String TEXT = text();

  private static String text() {
    try {
      return Files.readString(Path.of("FORMAT.md"));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The rows of the tables below a heading, each with its other columns. */
  private static Map<String, List<String>> rows(String heading) {
    int from = TEXT.indexOf("\n" + heading + "\n");
    assertTrue(from >= 0, heading);
    int to = TEXT.indexOf("\n##", from + heading.length());
    Matcher row = ROW.matcher(TEXT.substring(from, to < 0 ? TEXT.length() : to));
    Map<String, List<String>> rows = new TreeMap<>();
    while (row.find()) {
      List<String> columns = new ArrayList<>();
      for (String column : row.group(2).split("\\|", -1)) {
        columns.add(column.strip());
      }
      rows.put(row.group(1), columns);
    }
    return rows;
  }

  private static JsonNode definition(String name) throws IOException {
    return JSON.readTree(Schema.text()).path("$defs").path(name);
  }

  @ParameterizedTest
  @CsvSource({"### Of the lesson, NOTEBOOK", "### Of a cell, CELL"})
  void everyFieldHasItsMeaningItsDefaultAndAnExampleThatIsValid(String heading, Schema part)
      throws IOException {
    Map<String, List<String>> rows = rows(heading);
    JsonNode fields = definition(part.name().toLowerCase(Locale.ROOT)).path("properties");
    assertFalse(fields.isEmpty());
    for (Map.Entry<String, JsonNode> field : fields.properties()) {
      List<String> row = rows.getOrDefault(field.getKey(), List.of());
      assertEquals(3, row.size(), field.getKey());
      row.forEach(column -> assertFalse(column.isEmpty(), field.getKey()));
      ObjectNode metadata = JSON.createObjectNode();
      metadata
          .putObject(LessonHead.KEY)
          .set(field.getKey(), JSON.readTree(row.get(2).replace("`", "")));
      assertEquals(List.of(), part.faults(metadata), field.getKey());
      JsonNode usual = field.getValue().path("default");
      assertTrue(
          !usual.isValueNode() || row.get(1).contains(usual.asText()), field.getKey() + " " + row);
    }
  }

  @Test
  void everyWordOfAFieldIsDescribed() throws IOException {
    Set<String> described = rows("### Of a cell").keySet();
    assertTrue(described.containsAll(words(definition("cell").path("properties").path("role"))));
    assertTrue(described.containsAll(words(definition("blank"))));
    Map<String, List<String>> lesson = rows("### Of the lesson");
    for (String field : List.of("scale", "constants")) {
      for (String word : words(definition("notebook").path("properties").path(field))) {
        assertTrue(lesson.getOrDefault(field, List.of("")).get(0).contains("`" + word + "`"), word);
      }
    }
  }

  private static Set<String> words(JsonNode field) {
    Set<String> words = new HashSet<>();
    field.path("enum").forEach(word -> words.add(word.asText()));
    assertFalse(words.isEmpty());
    return words;
  }

  @Test
  void everyRuleIsDescribedAndNoOther() {
    Map<String, List<String>> rows = rows("## Checking");
    assertEquals(Set.copyOf(LessonCheck.ruleNames()), rows.keySet());
    for (List<String> row : rows.values()) {
      for (String word : row.get(0).split(", ", -1)) {
        Severity.valueOf(word.toUpperCase(Locale.ROOT));
      }
    }
  }
}
