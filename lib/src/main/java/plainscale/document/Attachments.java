package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** Pictures attached to a cell of a notebook. */
final class Attachments {
  private Attachments() {}

  /** By name, as data URIs. */
  static Map<String, String> uris(ObjectNode attachments) {
    Map<String, String> uris = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> named : attachments.properties()) {
      for (Map.Entry<String, JsonNode> data : named.getValue().properties()) {
        String content = NotebookReader.source(data.getValue()).strip();
        uris.put(named.getKey(), "data:" + data.getKey() + ";base64," + content);
      }
    }
    return uris;
  }
}
