package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.stream.Stream;

/** What the cells of a lesson are written in; its kernelspec says it, and a text in its head. */
public enum WrittenIn {
  /** The notation, which can do nothing but compute. */
  NOTATION("plainscale", "Plainscale", "plainscale", ".pls", "text/x-plainscale"),

  /** Java, which can do whatever its user can. */
  JAVA("plainscale-java", "Plainscale Java (runs any code)", "java", ".java", "text/x-java");

  /** The field of a lesson that names it; without it, the notation. */
  static final String FIELD = "cells";

  private static final String KERNEL = "kernelspec";
  private static final String LANGUAGE = "language_info";

  private final String kernel;
  private final String title;
  private final String language;
  private final String ending;
  private final String mimeType;

  WrittenIn(String kernel, String title, String language, String ending, String mimeType) {
    this.kernel = kernel;
    this.title = title;
    this.language = language;
    this.ending = ending;
    this.mimeType = mimeType;
  }

  /** By the metadata of a notebook; empty for another language than ours. */
  static Optional<WrittenIn> of(JsonNode metadata) {
    String language = language(metadata);
    if (language.isEmpty()) {
      return Optional.of(NOTATION);
    }
    String kernel = metadata.path(KERNEL).path("name").asText("");
    return Stream.of(values())
        .filter(one -> one.language.equals(language))
        .filter(one -> one == NOTATION || one.kernel.equals(kernel))
        .findFirst();
  }

  /** The language that a notebook names; empty if it names none. */
  static String language(JsonNode metadata) {
    String language = metadata.path(KERNEL).path("language").asText("");
    return language.isEmpty() ? metadata.path(LANGUAGE).path("name").asText("") : language;
  }

  /** By what a lesson says of itself. */
  static WrittenIn said(JsonNode metadata) {
    String word = metadata.path(LessonHead.KEY).path(FIELD).asText("");
    return word.equals(JAVA.language) ? JAVA : NOTATION;
  }

  /** Lets a lesson say of itself what its kernelspec says. */
  void say(ObjectNode metadata) {
    if (said(metadata) == this) {
      return;
    }
    JsonNode own = metadata.path(LessonHead.KEY);
    if (this == NOTATION && own instanceof ObjectNode head) {
      head.remove(FIELD);
    } else if (this == JAVA && own instanceof ObjectNode head) {
      head.put(FIELD, language);
    } else if (this == JAVA && own.isMissingNode()) {
      metadata.putObject(LessonHead.KEY).put("format", LessonHead.VERSION).put(FIELD, language);
    }
  }

  /** The kernelspec, as notebooks name it. */
  ObjectNode kernel() {
    return LessonJson.MAPPER
        .createObjectNode()
        .put("display_name", title)
        .put("language", language)
        .put("name", kernel);
  }

  /** What the kernel says of its language. */
  ObjectNode languageInfo() {
    return LessonJson.MAPPER
        .createObjectNode()
        .put("file_extension", ending)
        .put("mimetype", mimeType)
        .put("name", language);
  }

  /** Whether a front end wrote this as what the kernel says of its language. */
  boolean isLanguageInfo(JsonNode info) {
    return language.equals(info.path("name").textValue());
  }
}
