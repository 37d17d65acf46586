package plainscale.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import plainscale.language.MimeBundle;
import plainscale.language.Outcome.Failed;
import plainscale.wire.Json;

/** The parts that several messages have in common. */
final class Contents {

  private Contents() {}

  static ObjectNode ok() {
    return Json.object().put("status", "ok");
  }

  /** A reply with status error. */
  static ObjectNode error(Failed failure) {
    return Json.object().put("status", "error").setAll(problem(failure));
  }

  /** The three fields that every error has. */
  static ObjectNode problem(Failed failure) {
    ObjectNode content =
        Json.object().put("ename", failure.name()).put("evalue", failure.message());
    ArrayNode traceback = content.putArray("traceback");
    failure.lines().forEach(traceback::add);
    return content;
  }

  /** Data and metadata, both always there. */
  static ObjectNode bundle(MimeBundle bundle) {
    ObjectNode content = Json.object();
    content.set("data", Json.tree(bundle.data()));
    content.set("metadata", Json.tree(bundle.metadata()));
    return content;
  }
}
