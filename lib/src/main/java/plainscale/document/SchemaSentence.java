package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.table.Table;
import plainscale.text.Near;
import plainscale.text.Printable;

/** What the validator has found, in a sentence of ours ({@code schema-sentences.tsv}). */
final class SchemaSentence {
  private static final List<Table.Row> ROWS = Table.read(Schema.class, "schema-sentences.tsv");
  private static final String ANY = "-";
  private static final int LONGEST_VALUE = 40;

  /** A whole number, perhaps with a unit behind it that somebody has written into the text. */
  private static final Pattern WHOLE = Pattern.compile("\\s*(\\d{1,6})(?:\\s*\\p{L}*\\.?)?\\s*");

  private final Error error;
  private final JsonNode value;
  private final List<String> path;
  private final SchemaNode schema;

  SchemaSentence(SchemaNode part, Error error, JsonNode head) {
    this.error = error;
    this.path = new ArrayList<>();
    SchemaNode schemaHere = part;
    JsonNode valueHere = head;
    for (int i = 0; i < error.getInstanceLocation().getNameCount(); i++) {
      Object step = error.getInstanceLocation().getElement(i);
      path.add(step.toString());
      schemaHere = valueHere.isArray() ? schemaHere.items() : schemaHere.field(step.toString());
      valueHere =
          step instanceof Integer index ? valueHere.path(index) : valueHere.path(step.toString());
    }
    this.value = valueHere;
    this.schema = schemaHere;
  }

  Schema.Fault fault() {
    return new Schema.Fault(sentence(), repair());
  }

  private String sentence() {
    String sentence =
        ROWS.stream()
            .filter(row -> row.get("keyword").equals(error.getKeyword()))
            .filter(row -> fits(row.get("asks")))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no sentence for " + error.getKeyword()))
            .get("sentence");
    return sentence
        .replace("{limit}", asked().asText())
        .replace("{choices}", choices())
        .replace("{kind}", kind())
        .replace("{field}", field())
        .replace("{value}", shown());
  }

  private boolean fits(String asks) {
    return asks.equals(ANY) || asks.equals(asked().asText()) || asks.equals(name());
  }

  private JsonNode asked() {
    return Objects.requireNonNull(error.getSchemaNode(), "a keyword has a value");
  }

  private String name() {
    return path.isEmpty() ? LessonHead.KEY : path.get(path.size() - 1);
  }

  /** “minutes”, “student of blank”, “item 2 of aims”. */
  private String field() {
    if (path.size() < 2) {
      return name();
    }
    String owner = path.get(path.size() - 2);
    boolean item = name().chars().allMatch(Character::isDigit);
    String inner = item ? "item " + (Integer.parseInt(name()) + 1) : name();
    return inner + " of " + owner;
  }

  private String choices() {
    List<String> choices = new ArrayList<>();
    asked().forEach(choice -> choices.add(choice.asText()));
    int last = choices.size() - 1;
    return last < 1
        ? String.join("", choices)
        : String.join(", ", choices.subList(0, last)) + " or " + choices.get(last);
  }

  private String shown() {
    String text = Printable.of(value.toString()).replace('\n', ' ');
    return text.codePointCount(0, text.length()) <= LONGEST_VALUE
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_VALUE)) + "…";
  }

  private String kind() {
    return switch (value.getNodeType()) {
      case STRING -> "a text";
      case NUMBER -> "a number";
      case BOOLEAN -> "a yes or no";
      case ARRAY -> "a list";
      case OBJECT -> "a set of fields";
      default -> "no value";
    };
  }

  private String repair() {
    return better()
        .map(better -> "write " + written(better))
        .or(() -> schema.example().map(example -> "write, for example, " + written(example)))
        .orElse("");
  }

  private String written(JsonNode better) {
    boolean item = name().chars().allMatch(Character::isDigit);
    return item ? better.toString() : name() + ": " + better;
  }

  /** What was probably meant by the value that stands there. */
  private Optional<JsonNode> better() {
    return switch (String.valueOf(error.getKeyword())) {
      case "minimum", "maximum" -> Optional.of(asked());
      case "enum" ->
          Near.to(value.asText(), texts(asked()), 1).stream().findFirst().map(SchemaSentence::text);
      case "type" -> converted(asked().asText());
      default -> Optional.empty();
    };
  }

  private Optional<JsonNode> converted(String wanted) {
    Matcher whole = WHOLE.matcher(value.asText());
    if (wanted.equals("integer") && value.isTextual() && whole.matches()) {
      return Optional.of(
          LessonJson.MAPPER.getNodeFactory().numberNode(Integer.parseInt(whole.group(1))));
    }
    if (wanted.equals("string") && value.isNumber()) {
      return Optional.of(text(value.asText()));
    }
    boolean one = wanted.equals("array") && value.isTextual() && !value.asText().isBlank();
    return one
        ? Optional.of(LessonJson.MAPPER.createArrayNode().add(value.asText()))
        : Optional.empty();
  }

  private static JsonNode text(String text) {
    return LessonJson.MAPPER.getNodeFactory().textNode(text);
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(item -> texts.add(item.asText()));
    return texts;
  }
}
