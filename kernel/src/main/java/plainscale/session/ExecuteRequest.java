package plainscale.session;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plainscale.language.Cell;
import plainscale.wire.Message;

/** An {@code execute_request} with the protocol's defaults put in. */
record ExecuteRequest(
    Cell cell, boolean storeHistory, boolean stopOnError, Map<String, String> userExpressions) {

  static ExecuteRequest of(Message message) {
    ObjectNode content = message.content();
    boolean silent = content.path("silent").asBoolean(false);
    // spec: silent=True forces store_history to be False
    boolean store = !silent && content.path("store_history").asBoolean(true);
    Optional<String> id =
        Optional.ofNullable(message.metadata().path("cellId").textValue())
            .filter(text -> !text.isEmpty());
    return new ExecuteRequest(
        new Cell(content.path("code").asText(), id, silent),
        store,
        content.path("stop_on_error").asBoolean(true),
        expressions(content.path("user_expressions")));
  }

  private static Map<String, String> expressions(JsonNode fields) {
    Map<String, String> expressions = new LinkedHashMap<>();
    fields.properties().forEach(e -> expressions.put(e.getKey(), e.getValue().asText()));
    return expressions;
  }
}
