package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Whether a notebook and a text hold the same lesson. A notebook remembers the digest of its
 * content at the last conversion, so that it can be told which side has changed since.
 */
public final class Twin {
  static final String KEY = "twin";

  private Twin() {}

  /**
   * The digest of what a lesson holds in either form: outputs, counts of runs, the digest itself
   * and what a kernel says of itself are not in it.
   *
   * @throws LessonException if the lesson cannot be written as text
   */
  public static String digest(Lesson lesson) throws LessonException {
    byte[] text = lesson.text().getBytes(StandardCharsets.UTF_8);
    try {
      return "sha256-"
          + HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  /** The digest that the notebook of a lesson remembers. */
  public static Optional<String> remembered(Lesson lesson) {
    return Optional.ofNullable(lesson.metadata().path(LessonHead.KEY).path(KEY).textValue());
  }

  /** The lesson with the digest of its content, to be written as a notebook. */
  static Lesson remember(Lesson lesson) throws LessonException {
    ObjectNode metadata = lesson.metadata().deepCopy();
    put(metadata, digest(lesson));
    return new Lesson(
        lesson.name(), metadata, lesson.cells(), lesson.remarks(), lesson.folder().orElse(null));
  }

  /** Puts a digest into the metadata of a notebook; whether that changed them. */
  static boolean put(ObjectNode metadata, String digest) {
    JsonNode own = metadata.path(LessonHead.KEY);
    if (own.isMissingNode()) {
      own = metadata.putObject(LessonHead.KEY).put("format", LessonHead.VERSION);
    }
    if (!(own instanceof ObjectNode object) || digest.equals(object.path(KEY).textValue())) {
      return false; // what stands under our key is not ours to mend
    }
    object.put(KEY, digest);
    return true;
  }
}
