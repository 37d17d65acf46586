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

  /** Puts them all in, as the lesson says of itself. */
  static void put(ObjectNode metadata) {
    WrittenIn language = WrittenIn.said(metadata);
    metadata.set(KERNEL, language.kernel());
    metadata.set(LANGUAGE, language.languageInfo());
  }

  /** Puts in what the usual kernel says of itself. */
  static void complete(ObjectNode metadata) {
    WrittenIn language = WrittenIn.said(metadata);
    if (metadata.path(KERNEL).equals(language.kernel()) && !metadata.has(LANGUAGE)) {
      metadata.set(LANGUAGE, language.languageInfo());
    }
  }

  /** The metadata without what the usual kernel says of itself. */
  static ObjectNode without(ObjectNode metadata) {
    WrittenIn language = WrittenIn.said(metadata);
    ObjectNode rest = metadata.deepCopy();
    if (!rest.path(KERNEL).equals(language.kernel())) {
      return rest;
    }
    if (!rest.has(LANGUAGE) || language.isLanguageInfo(rest.path(LANGUAGE))) {
      rest.remove(LANGUAGE);
    }
    return rest;
  }

  /** Whether metadata, ours apart, are the usual ones of a language. */
  static boolean isUsual(@Nullable JsonNode others, WrittenIn language) {
    return others != null && others.size() == 1 && others.path(KERNEL).equals(language.kernel());
  }
}
