package plainscale.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import plainscale.language.Completeness;
import plainscale.language.Completion;
import plainscale.language.Language;
import plainscale.language.MimeBundle;

/** Replies that help while a cell is written; each may be asked while another cell runs. */
final class AssistHandlers {

  private AssistHandlers() {}

  static ObjectNode complete(Language language, ObjectNode asked) {
    String code = code(asked);
    Completion completion = language.complete(code, cursor(asked, code));
    int start = CodePoints.fromUtf16(code, completion.start());
    int end = CodePoints.fromUtf16(code, completion.end());
    ObjectNode reply = Contents.ok().put("cursor_start", start).put("cursor_end", end);
    ArrayNode matches = reply.putArray("matches");
    ArrayNode types = reply.putObject("metadata").putArray("_jupyter_types_experimental");
    for (Completion.Item item : completion.items()) {
      matches.add(item.text());
      types
          .addObject()
          .put("text", item.text())
          .put("type", item.kind())
          .put("start", start)
          .put("end", end);
    }
    return reply;
  }

  static ObjectNode inspect(Language language, ObjectNode asked) {
    String code = code(asked);
    int detail = asked.path("detail_level").asInt(0);
    var found = language.inspect(code, cursor(asked, code), detail);
    return Contents.ok()
        .put("found", found.isPresent())
        .setAll(Contents.bundle(found.orElse(MimeBundle.of(Map.of()))));
  }

  static ObjectNode isComplete(Language language, ObjectNode asked) {
    Completeness completeness = language.completeness(code(asked));
    ObjectNode reply =
        Contents.ok().put("status", completeness.status().name().toLowerCase(Locale.ROOT));
    // spec: for other statuses, this field does not exist
    return completeness.status() == Completeness.Status.INCOMPLETE
        ? reply.put("indent", completeness.indent())
        : reply;
  }

  private static String code(ObjectNode asked) {
    return asked.path("code").asText();
  }

  /** A request without cursor means the end. */
  private static int cursor(ObjectNode asked, String code) {
    return CodePoints.toUtf16(code, asked.path("cursor_pos").asInt(code.length()));
  }
}
