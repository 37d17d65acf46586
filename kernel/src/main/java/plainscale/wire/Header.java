package plainscale.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * A message's header. All fields that came are kept, known or not, because an answer carries the
 * header of its question as its parent. The tree is not to be changed.
 */
public record Header(ObjectNode fields) {

  /** The version of the Jupyter protocol that this package speaks. */
  public static final String PROTOCOL = "5.5";

  /** A new header of ours; {@code id} must be unique. */
  public static Header of(String type, String session, String id) {
    return new Header(
        Json.object()
            .put("msg_id", id)
            .put("msg_type", type)
            .put("session", session)
            .put("username", "kernel")
            .put("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString())
            .put("version", PROTOCOL));
  }

  public String id() {
    return fields.path("msg_id").asText();
  }

  public String type() {
    return fields.path("msg_type").asText();
  }

  public String session() {
    return fields.path("session").asText();
  }

  /** Without these two nothing can be dispatched or answered. */
  boolean isUsable() {
    return fields.path("msg_id").isTextual()
        && fields.path("msg_type").isTextual()
        && !type().isEmpty();
  }
}
