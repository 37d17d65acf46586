package plainscale.language;

import java.util.Map;

/**
 * One thing to show, in several mime types; keys carry no parameters, values are texts or JSON-like
 * trees.
 */
public record MimeBundle(Map<String, Object> data, Map<String, Object> metadata) {

  /** A bundle without metadata. */
  public static MimeBundle of(Map<String, Object> data) {
    return new MimeBundle(data, Map.of());
  }
}
