package plainscale.document.edition;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import plainscale.document.CellHead;
import plainscale.document.LessonHead;
import plainscale.document.Role;

/**
 * Metadata as students get them: what the format names and is for everybody. All else was written
 * for someone else, and nobody knows what it tells.
 */
final class StudentMetadata {
  private static final List<String> KERNEL = List.of("display_name", "language", "name");
  private static final List<String> LANGUAGE = List.of("name", "file_extension", "mimetype");

  private StudentMetadata() {}

  /** Those of the notebook. */
  static ObjectNode ofLesson(ObjectNode metadata) {
    ObjectNode own = JsonNodeFactory.instance.objectNode();
    copy(metadata.path("kernelspec"), KERNEL, own.putObject("kernelspec"));
    copy(metadata.path("language_info"), LANGUAGE, own.putObject("language_info"));
    own.set(LessonHead.KEY, head(LessonHead.of(metadata)));
    own.properties().removeIf(field -> field.getValue().isEmpty());
    return own;
  }

  private static void copy(JsonNode from, List<String> names, ObjectNode to) {
    names.stream()
        .filter(name -> from.path(name).isTextual())
        .forEach(name -> to.put(name, from.path(name).textValue()));
  }

  private static ObjectNode head(LessonHead head) {
    ObjectNode own = JsonNodeFactory.instance.objectNode();
    own.put("format", head.format());
    head.title().ifPresent(title -> own.put("title", title));
    head.level().ifPresent(level -> own.put("level", level));
    head.minutes().ifPresent(minutes -> own.put("minutes", minutes));
    list(own, "aims", head.aims());
    list(own, "hazards", head.hazards());
    head.locale().ifPresent(locale -> own.put("locale", locale));
    head.scale().ifPresent(scale -> own.put("scale", scale));
    head.constants().ifPresent(constants -> own.put("constants", constants));
    return own;
  }

  private static void list(ObjectNode own, String name, List<String> texts) {
    if (!texts.isEmpty()) {
      ArrayNode array = own.putArray(name);
      texts.forEach(array::add);
    }
  }

  /** Those of a cell. */
  static ObjectNode ofCell(CellHead head) {
    ObjectNode own = JsonNodeFactory.instance.objectNode();
    head.role().ifPresent(role -> own.put("role", role.word()));
    head.minutes().ifPresent(minutes -> own.put("minutes", minutes));
    head.lines().ifPresent(lines -> own.put("lines", lines));
    return own.isEmpty() ? own : under(own);
  }

  /** Those of a cell that is for everybody. */
  static ObjectNode ofText() {
    return under(JsonNodeFactory.instance.objectNode().put("role", Role.TEXT.word()));
  }

  /** None at all. */
  static ObjectNode nothing() {
    return JsonNodeFactory.instance.objectNode();
  }

  private static ObjectNode under(ObjectNode own) {
    return JsonNodeFactory.instance.objectNode().set(LessonHead.KEY, own);
  }
}
