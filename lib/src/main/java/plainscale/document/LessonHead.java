package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a lesson says of itself under the key {@code plainscale} of its metadata, as far as it can
 * be read: what is missing or of a wrong type is as if it were not there, and {@link Schema} tells.
 *
 * @param format the version of the format in which it was written
 * @param title its title
 * @param level for whom, such as “upper secondary”
 * @param minutes how long a class takes for it
 * @param aims what students can do afterwards
 * @param hazards the hazards that it touches, by name
 * @param locale the language and the digits that its cells set
 * @param scale the names of powers of ten that its cells set
 * @param constants the set of constants that its cells set
 */
public record LessonHead(
    int format,
    Optional<String> title,
    Optional<String> level,
    OptionalInt minutes,
    List<String> aims,
    List<String> hazards,
    Optional<String> locale,
    Optional<String> scale,
    Optional<String> constants) {
  /** The one key of ours in the metadata of a notebook and of its cells. */
  public static final String KEY = "plainscale";

  /** The version of the format that this program writes. */
  public static final int VERSION = 1;

  /** Keeps its own copies of the lists. */
  public LessonHead {
    aims = List.copyOf(aims);
    hazards = List.copyOf(hazards);
  }

  /** The head in the metadata of a notebook. */
  public static LessonHead of(JsonNode metadata) {
    JsonNode head = metadata.path(KEY);
    return new LessonHead(
        whole(head.path("format")).orElse(VERSION),
        text(head.path("title")),
        text(head.path("level")),
        whole(head.path("minutes")),
        texts(head.path("aims")),
        texts(head.path("hazards")),
        text(head.path("locale")),
        text(head.path("scale")),
        text(head.path("constants")));
  }

  static OptionalInt whole(JsonNode node) {
    return node.canConvertToInt() && node.canConvertToExactIntegral()
        ? OptionalInt.of(node.intValue())
        : OptionalInt.empty();
  }

  private static Optional<String> text(JsonNode node) {
    return node.isTextual() && !node.textValue().isBlank()
        ? Optional.of(node.textValue())
        : Optional.empty();
  }

  private static List<String> texts(JsonNode node) {
    List<String> texts = new ArrayList<>();
    node.forEach(item -> text(item).ifPresent(texts::add));
    return texts;
  }
}
