package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jspecify.annotations.Nullable;

/**
 * What the notebook of a lesson says of its kernel; a text does not repeat it. What the kernel says
 * of itself ({@code language_info}) is written by front ends at every save, so it is no content.
 */
final class UsualMetadata {
  private static final String KERNEL = "kernelspec";
  private static final String LANGUAGE = "language_info";

  private UsualMetadata() {}

  private static ObjectNode kernel() {
    return LessonJson.MAPPER
        .createObjectNode()
        .put("display_name", "Plainscale")
        .put("language", LessonHead.KEY)
        .put("name", LessonHead.KEY);
  }

  private static ObjectNode language() {
    return LessonJson.MAPPER
        .createObjectNode()
        .put("file_extension", ".pls")
        .put("mimetype", "text/x-plainscale")
        .put("name", LessonHead.KEY);
  }

  /** Puts them all in. */
  static void put(ObjectNode metadata) {
    metadata.set(KERNEL, kernel());
    metadata.set(LANGUAGE, language());
  }

  /** Puts in what the usual kernel says of itself. */
  static void complete(ObjectNode metadata) {
    if (metadata.path(KERNEL).equals(kernel()) && !metadata.has(LANGUAGE)) {
      metadata.set(LANGUAGE, language());
    }
  }

  /** The metadata without what the usual kernel says of itself. */
  static ObjectNode without(ObjectNode metadata) {
    ObjectNode rest = metadata.deepCopy();
    if (!rest.path(KERNEL).equals(kernel())) {
      return rest;
    }
    if (!rest.has(LANGUAGE) || LessonHead.KEY.equals(rest.at("/language_info/name").textValue())) {
      rest.remove(LANGUAGE);
    }
    return rest;
  }

  /** Whether metadata, ours apart, are the usual ones. */
  static boolean isUsual(@Nullable JsonNode others) {
    return others != null && others.size() == 1 && others.path(KERNEL).equals(kernel());
  }
}
