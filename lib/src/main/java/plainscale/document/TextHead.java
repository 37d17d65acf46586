package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The head of a lesson's text, between two lines {@code ---}: the version of the format, what the
 * lesson says of itself, and the other metadata of its notebook if they are not the usual ones.
 *
 * @param metadata all the metadata of the notebook
 * @param remarks what was passed over or is unusual
 * @param end the index of the first line after it
 */
record TextHead(ObjectNode metadata, List<String> remarks, int end) {
  static final String RULE = "---";

  private static final String NEWER =
      "this lesson is written in version %s of the format, and this program knows version %d; what is new in it is passed over";

  private static final String VERSION = "plainscale";
  private static final BigInteger KNOWN = BigInteger.valueOf(LessonHead.VERSION);
  private static final String FORMAT = "format";
  private static final List<String> ORDER =
      List.of("title", "level", "minutes", "aims", "hazards", "locale", "scale", "constants");
  private static final Set<String> RESERVED = Set.of(VERSION, OwnFields.OTHERS);

  /** The index of the line that opens a head, after blank lines; -1 if none does. */
  static int opening(List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        return isRule(lines.get(i)) ? i : -1;
      }
    }
    return -1;
  }

  private static boolean isRule(String line) {
    return line.stripTrailing().equals(RULE);
  }

  /** Whether these lines begin with a head of ours, closed or not. */
  static boolean isOurs(List<String> lines) {
    int opening = opening(lines);
    return opening >= 0
        && lines.stream()
            .skip(opening + 1)
            .takeWhile(line -> !isRule(line))
            .anyMatch(line -> line.startsWith(VERSION + ":"));
  }

  /** Reads the head of the text of these lines. */
  static TextHead read(List<String> lines, String file) throws LessonException {
    int opening = opening(lines);
    if (opening < 0) {
      throw new LessonException(
          file
              + " begins without a head, so it is no lesson; if it is to be one, put these three lines first:"
              + " “---”, “plainscale: 1”, “---”.");
    }
    TextPlace place = new TextPlace(file, opening + 1);
    int closing = opening + 1;
    while (closing < lines.size() && !isRule(lines.get(closing))) {
      closing++;
    }
    if (closing == lines.size()) {
      throw place.refused("the head that opens here is not closed; put a line --- after it");
    }
    String yaml = String.join("\n", lines.subList(opening + 1, closing)) + "\n";
    YamlReader.Mapping head = YamlReader.block(yaml, place.at(opening + 2));
    return read(head, place, closing + 1);
  }

  private static TextHead read(YamlReader.Mapping head, TextPlace place, int end)
      throws LessonException {
    ObjectNode fields = head.values();
    List<String> remarks = new ArrayList<>();
    JsonNode version = fields.remove(VERSION);
    if (version == null) {
      throw place.refused(
          "this head does not say that the file is a lesson; if it is one, put a line plainscale: 1 below");
    }
    TextPlace versionPlace = place.at(head.lines().getOrDefault(VERSION, place.line()));
    if (isNewer(version)) {
      remarks.add(versionPlace.remark(NEWER.formatted(version.asText(), LessonHead.VERSION)));
    } else if (!isKnown(version)) {
      remarks.add(
          versionPlace.remark("plainscale: stands before the version of the format, which is 1"));
    }
    if (fields.has(FORMAT)) {
      throw place
          .at(head.lines().getOrDefault(FORMAT, place.line()))
          .refused("the version of the format stands after plainscale:; take this line out");
    }
    if (fields.remove(Twin.KEY) != null) {
      remarks.add(
          place
              .at(head.lines().getOrDefault(Twin.KEY, place.line()))
              .remark("twin: belongs into the notebook; it was passed over"));
    }
    boolean usual = !fields.hasNonNull(OwnFields.OTHERS);
    ObjectNode metadata = OwnFields.read(fields, head.lines(), place);
    if (usual) {
      UsualMetadata.put(metadata);
    } else {
      UsualMetadata.complete(metadata);
    }
    put(metadata, version);
    return new TextHead(metadata, remarks, end);
  }

  /** An object of ours that is none has no version either. */
  private static void put(ObjectNode metadata, JsonNode version) {
    JsonNode own = metadata.path(LessonHead.KEY);
    if (own.isMissingNode()) {
      metadata.putObject(LessonHead.KEY).set(FORMAT, version);
    } else if (own instanceof ObjectNode object) {
      object.set(FORMAT, version);
    }
  }

  private static boolean isKnown(JsonNode version) {
    return version.isIntegralNumber() && version.bigIntegerValue().equals(KNOWN);
  }

  private static boolean isNewer(JsonNode version) {
    return version.isIntegralNumber() && version.bigIntegerValue().compareTo(KNOWN) > 0;
  }

  /** What is new in it could be lost on the way. */
  private static void refuseNewer(JsonNode version, String lesson) throws LessonException {
    if (isNewer(version)) {
      throw new LessonException(
          "%s is written in version %s of the format, and this program knows version %d; get a newer Plainscale."
              .formatted(lesson, version.asText(), LessonHead.VERSION));
    }
  }

  /** The head of a lesson, with its two rules. */
  static String write(Lesson lesson) throws LessonException {
    ObjectNode metadata = lesson.metadata().deepCopy();
    JsonNode version = IntNode.valueOf(LessonHead.VERSION);
    if (metadata.get(LessonHead.KEY) instanceof ObjectNode own) {
      JsonNode written = own.remove(FORMAT);
      version = written == null ? version : written;
      own.remove(Twin.KEY);
      if (own.isEmpty()) {
        metadata.remove(LessonHead.KEY);
      }
    }
    refuseNewer(version, lesson.name());
    Map<String, JsonNode> fields = new LinkedHashMap<>();
    fields.put(VERSION, version);
    fields.putAll(OwnFields.write(UsualMetadata.without(metadata), ORDER, RESERVED));
    JsonNode others = fields.putIfAbsent(OwnFields.OTHERS, LessonJson.MAPPER.createObjectNode());
    if (UsualMetadata.isUsual(others, WrittenIn.said(metadata))) {
      fields.remove(OwnFields.OTHERS);
    }
    return RULE + "\n" + YamlWriter.block(fields) + RULE + "\n";
  }
}
