package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plainscale.magnitude.Language;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.notation.Keywords;
import plainscale.notation.Statement.Setting;

/** The published schema says what the program reads, and its sentences say what is wrong. */
class SchemaTest {
  private static final List<String> WRONG =
      List.of(
          "null", "true", "-1", "3.5", "1e99", "\"\"", "\"x\"", "[]", "[[]]", "{}", "{\"a\": {}}");

  private static ObjectNode metadata(String head) {
    ObjectNode metadata = LessonJson.MAPPER.createObjectNode();
    metadata.set(LessonHead.KEY, json(head));
    return metadata;
  }

  private static JsonNode json(String text) {
    try {
      return LessonJson.MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  private static List<String> faults(Schema part, String head) {
    return part.faults(metadata(head)).stream()
        .map(fault -> fault.sentence() + " → " + fault.repair())
        .toList();
  }

  private static boolean accepts(Schema part, String field, JsonNode value) {
    ObjectNode head = LessonJson.MAPPER.createObjectNode();
    head.set(field, value);
    return part.faults(metadata(head.toString())).isEmpty();
  }

  private static Set<String> choices(Schema part, String field) {
    Set<String> choices = new HashSet<>();
    part.node().field(field).keyword("enum").forEach(choice -> choices.add(choice.asText()));
    return choices;
  }

  private static <T> Set<String> words(T[] values, Function<T, String> word) {
    Set<String> words = new HashSet<>();
    Arrays.stream(values).map(word).forEach(words::add);
    return words;
  }

  @Test
  void itsWordsAreThoseOfTheProgram() {
    assertEquals(words(Role.values(), Role::word), choices(Schema.CELL, "role"));
    assertEquals(Set.copyOf(Keywords.choices(Setting.SCALE)), choices(Schema.NOTEBOOK, "scale"));
    assertEquals(words(Scale.values(), Scale::word), choices(Schema.NOTEBOOK, "scale"));
    assertEquals(
        Set.copyOf(Keywords.choices(Setting.CONSTANTS)), choices(Schema.NOTEBOOK, "constants"));
    SchemaNode blank = Schema.CELL.node().field("blank");
    assertEquals(words(Edition.values(), Edition::word), blank.fields());
    for (String edition : blank.fields()) {
      Set<String> choices = new HashSet<>();
      blank.field(edition).keyword("enum").forEach(choice -> choices.add(choice.asText()));
      assertEquals(words(Blank.values(), Blank::word), choices);
    }
  }

  @Test
  void itAcceptsTheLocalesThatHaveNumberWords() {
    assertAll(
        Stream.concat(
                Arrays.stream(Language.values()).map(Language::locale),
                Arrays.stream(Locale.getAvailableLocales()))
            .map(Locale::toLanguageTag)
            .distinct()
            .map(
                tag ->
                    () ->
                        assertEquals(
                            Words.of(Locale.forLanguageTag(tag)).isPresent(),
                            accepts(
                                Schema.NOTEBOOK,
                                "locale",
                                LessonJson.MAPPER.getNodeFactory().textNode(tag)),
                            tag)));
    assertEquals(List.of(), faults(Schema.NOTEBOOK, "{\"locale\": \"SI\"}"));
  }

  @Test
  void itsFieldsAreThoseThatHeadsRead() {
    Set<String> lesson = components(LessonHead.class);
    lesson.addAll(List.of("twin", "cells")); // read by whoever converts or runs a lesson
    assertEquals(lesson, new TreeSet<>(Schema.NOTEBOOK.node().fields()));
    Set<String> cell = components(CellHead.class);
    assertTrue(cell.remove("blanks"));
    cell.addAll(List.of("blank", "alternative"));
    assertEquals(cell, new TreeSet<>(Schema.CELL.node().fields()));
  }

  private static Set<String> components(Class<? extends Record> type) {
    Set<String> names = new TreeSet<>();
    for (RecordComponent component : type.getRecordComponents()) {
      names.add(component.getName());
    }
    return names;
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void everyFieldIsDescribedAndItsExampleAndDefaultAreValid(Schema part) {
    for (String name : part.node().fields()) {
      SchemaNode field = part.node().field(name);
      assertFalse(field.description().isBlank(), name);
      assertTrue(accepts(part, name, field.example().orElseThrow()), name);
      JsonNode usual = field.keyword("default");
      assertTrue(usual.isMissingNode() || accepts(part, name, usual), name);
    }
  }

  @Test
  void theFormatThatIsWrittenIsTheDefault() {
    assertEquals(
        LessonHead.VERSION, Schema.NOTEBOOK.node().field("format").keyword("default").asInt());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"minutes\": \"45\"}    | minutes is \"45\", a text; a whole number belongs there. → write minutes: 45",
        "{\"minutes\": \"45 min\"} | minutes is \"45 min\", a text; a whole number belongs there. → write minutes: 45",
        "{\"minutes\": \"long\"}  | minutes is \"long\", a text; a whole number belongs there. → write, for example, minutes: 45",
        "{\"minutes\": 0}         | minutes is 0; the least is 1. → write minutes: 1",
        "{\"minutes\": 4.5}       | minutes is 4.5, a number; a whole number belongs there. → write, for example, minutes: 45",
        "{\"minutes\": null}      | minutes is null, no value; a whole number belongs there. → write, for example, minutes: 45",
        "{\"minutes\": true}      | minutes is true, a yes or no; a whole number belongs there. → write, for example, minutes: 45",
        "{\"format\": 0}          | format is 0; the least is 1. → write format: 1",
        "{\"title\": 3}           | title is 3, a number; a text belongs there. → write title: \"3\"",
        "{\"title\": \" \"}       | title is empty. → write, for example, title: \"Two balls that push each other apart\"",
        "{\"level\": [\"a\"]}     | level is [\"a\"], a list; a text belongs there. → write, for example, level: \"school, upper secondary\"",
        "{\"aims\": \"read a map\"} | aims is \"read a map\", a text; a list of texts belongs there. → write aims: [\"read a map\"]",
        "{\"aims\": [\"a\", 7]}   | item 2 of aims is 7, a number; a text belongs there. → write \"7\"",
        "{\"hazards\": [\"\"]}    | item 1 of hazards is empty. → write, for example, \"electrostatics\"",
        "{\"hazards\": {}}        | hazards is {}, a set of fields; a list of texts belongs there. → write, for example, hazards: [\"electrostatics\"]",
        "{\"locale\": \"xx\"}     | locale is \"xx\", for which there are no number words here. → write, for example, locale: \"de-CH\"",
        "{\"scale\": \"lng\"}     | scale is \"lng\"; it can be short, long, milliard, indian or repeated. → write scale: \"long\"",
        "{\"constants\": 7}       | constants is 7; it can be codata or textbook. → write, for example, constants: \"textbook\"",
        "{\"twin\": false}        | twin is false, a yes or no; a text belongs there. → write, for example, twin: \"sha256-9f86d081884c7d65\"",
        "\"a title\"              | plainscale is \"a title\", a text; named fields belong there. → ",
      })
  void aFaultOfALessonIsASentenceWithItsRepair(String head, String sentence) {
    assertEquals(List.of(sentence == null ? "" : sentence), trimmed(faults(Schema.NOTEBOOK, head)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"role\": \"measurment\"} | role is \"measurment\"; it can be text, measurement, relation, derivation, result, contrast, picture, question, answer, caution, note or slips. → write role: \"measurement\"",
        "{\"lines\": 1000}        | lines is 1000; the most is 100. → write lines: 100",
        "{\"blank\": \"values\"}  | blank is \"values\", a text; named fields belong there. → write, for example, blank: {\"student\":\"formulas\"}",
        "{\"blank\": {\"student\": \"value\"}} | student of blank is \"value\"; it can be nothing, values, formulas, all or cell. → write student: \"values\"",
        "{\"alternative\": 5}     | alternative is 5, a number; a text belongs there. → write alternative: \"5\"",
      })
  void aFaultOfACellIsASentenceWithItsRepair(String head, String sentence) {
    assertEquals(List.of(sentence), trimmed(faults(Schema.CELL, head)));
  }

  private static List<String> trimmed(List<String> faults) {
    return faults.stream().map(String::strip).toList();
  }

  @Test
  void aLongOrHostileValueIsCutAndPrintable() {
    String head = "{\"minutes\": \"" + "\\n\\u001b[2J{field}{limit}" + "x".repeat(100_000) + "\"}";
    assertEquals(
        List.of(
            "minutes is \"\\n\\u001B[2J{field}{limit}xxxxxxxxxxxxxx…, a text; a whole number belongs there. → write, for example, minutes: 45"),
        faults(Schema.NOTEBOOK, head));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void wrongTypesEverywhereAreSentencesAndNeverMore(Schema part) {
    for (String wrong : WRONG) {
      assertSentences(part, metadata(wrong));
      for (String field : part.node().fields()) {
        assertSentences(part, metadata("{\"%s\": %s}".formatted(field, wrong)));
      }
    }
  }

  private static void assertSentences(Schema part, ObjectNode metadata) {
    for (Schema.Fault fault : part.faults(metadata)) {
      assertTrue(fault.sentence().endsWith("."), metadata + ": " + fault);
      assertFalse(fault.sentence().contains("{field}"), metadata + ": " + fault);
    }
    assertEquals(LessonHead.class, LessonHead.of(metadata).getClass());
    assertEquals(CellHead.class, CellHead.of(metadata).getClass());
  }

  @Test
  void whatIsNotThereIsNotWrong() {
    ObjectNode others = LessonJson.MAPPER.createObjectNode().put("title", 3);
    for (Schema part : Schema.values()) {
      assertEquals(List.of(), part.faults(others));
      assertEquals(List.of(), part.faults(metadata("{}")));
      assertEquals(List.of(), part.faults(metadata("{\"mine\": {\"minutes\": \"45\"}}")));
      assertEquals(List.of(), part.nearMisses(metadata("{\"mine\": 3, \"x\": 4}")));
    }
  }

  @Test
  void aFieldThatIsNearlyKnownIsNamed() {
    assertEquals(
        List.of(
            new Schema.Fault(
                "I know no field “titel” of a lesson; did you mean title? It is kept and means nothing.",
                "write title")),
        Schema.NOTEBOOK.nearMisses(metadata("{\"titel\": \"T\", \"author\": \"A\"}")));
    assertEquals(
        List.of(
            new Schema.Fault(
                "I know no field “studnet” of blank; did you mean student? It is kept and means nothing.",
                "write student")),
        Schema.CELL.nearMisses(metadata("{\"blank\": {\"studnet\": \"all\"}}")));
  }

  @Test
  void aWholeNumberWithADecimalPointIsRead() {
    String head = "{\"minutes\": 45.0}";
    assertEquals(List.of(), faults(Schema.NOTEBOOK, head));
    assertEquals(OptionalInt.of(45), LessonHead.of(metadata(head)).minutes());
    assertEquals(OptionalInt.empty(), LessonHead.of(metadata("{\"minutes\": 45.5}")).minutes());
  }

  @Test
  void everyKeywordOfTheSchemaHasASentence() {
    Set<String> told = Set.of("type", "enum", "minimum", "maximum", "pattern");
    Set<String> says =
        Set.of("$ref", "title", "description", "default", "examples", "properties", "items");
    for (Schema part : Schema.values()) {
      assertKeywords(part.node().node(), told, says);
    }
    Map.of("minutes", 1, "blank", 1)
        .keySet()
        .forEach(
            shared -> assertKeywords(json(Schema.text()).path("$defs").path(shared), told, says));
  }

  private static void assertKeywords(JsonNode node, Set<String> told, Set<String> says) {
    node.fieldNames()
        .forEachRemaining(
            name -> assertTrue(told.contains(name) || says.contains(name), "keyword " + name));
    node.path("properties").forEach(field -> assertKeywords(field, told, says));
    if (node.has("items")) {
      assertKeywords(node.path("items"), told, says);
    }
  }
}
