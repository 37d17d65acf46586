package plainscale.document.check;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;

/** Lessons for tests, cell by cell; cells are called c1, c2, … */
final class TestLesson {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String KEY = "plainscale";

  private final List<LessonCell> cells = new ArrayList<>();
  private final ObjectNode metadata = JSON.createObjectNode();
  private boolean text;
  private int line = 1;

  /** What the lesson says of itself, as JSON. */
  TestLesson head(String json) {
    metadata.set(KEY, read(json));
    return this;
  }

  /** From here on the lesson is a text file: its cells stand below a head of nine lines. */
  TestLesson asText() {
    text = true;
    line = 10;
    return this;
  }

  TestLesson prose(String source) {
    return prose(source, "{}");
  }

  TestLesson prose(String source, String head) {
    return picture(source, head, "{}");
  }

  /** Prose with attachments. */
  TestLesson picture(String source, String head, String attachments) {
    ObjectNode attached = (ObjectNode) read(attachments);
    cells.add(new LessonCell.Prose(id(), source, own(head), attached, line(source)));
    return this;
  }

  TestLesson code(String source) {
    return code(source, "{}");
  }

  TestLesson code(String source, String head) {
    cells.add(new LessonCell.Code(id(), source, own(head), line(source)));
    return this;
  }

  private String id() {
    return "c" + (cells.size() + 1);
  }

  private static ObjectNode own(String head) {
    ObjectNode own = JSON.createObjectNode();
    own.set(KEY, read(head));
    return own;
  }

  /** The line of the cell; an empty line and a fence stand before the next. */
  private int line(String source) {
    int here = line;
    line += (int) source.lines().count() + 2;
    return text ? here : 0;
  }

  private static JsonNode read(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(json, e);
    }
  }

  Lesson lesson() {
    return new Lesson("test", metadata, cells);
  }

  /** What all rules find. */
  List<Finding> findings() {
    return LessonCheck.of(lesson());
  }

  /** What one rule finds: “warning c2:3 sentence → repair”. */
  List<String> found(String rule) {
    return shown(findings(), rule);
  }

  static List<String> shown(List<Finding> findings, String rule) {
    return findings.stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(TestLesson::shown)
        .toList();
  }

  private static String shown(Finding finding) {
    return "%s %s:%d %s → %s"
        .formatted(
            finding.severity().word().toLowerCase(Locale.ROOT),
            finding.cell(),
            finding.line(),
            finding.sentence(),
            finding.repair());
  }
}
