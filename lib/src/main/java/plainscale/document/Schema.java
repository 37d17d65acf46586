package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import plainscale.text.Near;

/**
 * The published JSON Schema (2020-12) of what lessons and cells say of themselves, {@code
 * lesson.schema.json} beside this class. Nothing of it is loaded before it is asked.
 *
 * <pre>{@code
 * List<Schema.Fault> faults = Schema.NOTEBOOK.faults(lesson.metadata());
 * }</pre>
 */
public enum Schema {
  /** What a lesson says of itself in the metadata of its notebook. */
  NOTEBOOK,
  /** What a cell says of itself in its metadata. */
  CELL;

  /** The schema's own name. */
  public static final String ID = "urn:plainscale:lesson:1";

  private static final String FILE = "lesson.schema.json";

  /** What is wrong, in a sentence, and what to write instead; the repair may be empty. */
  public record Fault(String sentence, String repair) {}

  /** What breaks the schema in these metadata; what is not under our key is not looked at. */
  public List<Fault> faults(JsonNode metadata) {
    JsonNode head = metadata.path(LessonHead.KEY);
    if (head.isMissingNode()) {
      return List.of();
    }
    return Loaded.of(this).validate(head).stream()
        .map(error -> new SchemaSentence(node(), error, head).fault())
        .distinct()
        .toList();
  }

  /** Fields that the schema does not know and that look like one that it knows. */
  public List<Fault> nearMisses(JsonNode metadata) {
    List<Fault> faults = new ArrayList<>();
    nearMisses(metadata.path(LessonHead.KEY), node(), "", faults);
    return faults;
  }

  private void nearMisses(JsonNode head, SchemaNode schema, String of, List<Fault> faults) {
    for (Map.Entry<String, JsonNode> field : head.properties()) {
      String name = field.getKey();
      if (schema.fields().contains(name)) {
        nearMisses(field.getValue(), schema.field(name), " of " + name, faults);
      } else {
        unknown(name, schema, of).ifPresent(faults::add);
      }
    }
  }

  private Optional<Fault> unknown(String name, SchemaNode schema, String of) {
    return Near.to(name, new TreeSet<>(schema.fields()), 3).stream()
        .filter(near -> beginsAlike(near, name))
        .findFirst()
        .map(
            near ->
                new Fault(
                    "I know no field “%s”%s; did you mean %s? It is kept and means nothing."
                        .formatted(name, of.isEmpty() ? whose() : of, near),
                    "write " + near));
  }

  /** Short names are near to each other by chance; a slip is seldom in the first letter. */
  private static boolean beginsAlike(String near, String name) {
    return near.regionMatches(true, 0, name, 0, 1);
  }

  private String whose() {
    return this == NOTEBOOK ? " of a lesson" : " of a cell";
  }

  /** The text of the schema's file. */
  public static String text() {
    try (InputStream in = Schema.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + FILE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  SchemaNode node() {
    return Loaded.NODE.definition(definition());
  }

  private String definition() {
    return this == NOTEBOOK ? "notebook" : "cell";
  }

  /** Made when it is asked for the first time. */
  private static final class Loaded {
    private static final SchemaNode NODE = SchemaNode.of(text());
    private static final SchemaRegistry REGISTRY =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(Map.of(ID, text())));

    private static com.networknt.schema.Schema of(Schema part) {
      return REGISTRY.getSchema(SchemaLocation.of(ID + "#/$defs/" + part.definition()));
    }
  }
}
