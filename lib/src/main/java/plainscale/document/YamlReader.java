package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A YAML mapping to JSON, value by value: {@code null}, {@code true}, {@code false} and JSON's
 * numbers are what they are in JSON, and every other word is text ({@code no}, {@code 2026-05-01},
 * {@code 0x1F}). Anchors, references and tags are refused, so nothing grows and nothing is
 * constructed.
 */
final class YamlReader {
  private static final int LARGEST = 1 << 26; // code points
  private static final int DEEPEST = 1000;
  private static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(LARGEST).build();

  /** A mapping and the lines in which its own keys stand. */
  record Mapping(ObjectNode values, Map<String, Integer> lines) {}

  private final TextPlace place;
  private final boolean oneLine;
  private final Iterator<Event> events;

  private YamlReader(String yaml, TextPlace place, boolean oneLine) {
    this.place = place;
    this.oneLine = oneLine;
    this.events = new Parse(SETTINGS).parseString(yaml).iterator();
  }

  /** The mapping in these lines, the first of which stands at that place; empty if all are. */
  static Mapping block(String yaml, TextPlace place) throws LessonException {
    return read(yaml, place, false);
  }

  /** The mapping in this part of a line, written without its braces. */
  static Mapping line(String yaml, TextPlace place) throws LessonException {
    return read("{" + yaml + "\n}", place, true); // a line feed, since # begins a comment
  }

  private static Mapping read(String yaml, TextPlace place, boolean oneLine)
      throws LessonException {
    try {
      return new YamlReader(yaml, place, oneLine).document();
    } catch (YamlEngineException e) {
      throw oneLine ? YamlRepairs.inPairs(e, yaml, place) : YamlRepairs.inBlock(e, yaml, place);
    }
  }

  private TextPlace place(Event event) {
    int mark = event.getStartMark().map(Mark::getLine).orElse(0);
    return oneLine ? place : place.at(place.line() + mark);
  }

  private Mapping document() throws LessonException {
    events.next(); // the stream
    Mapping mapping = new Mapping(LessonJson.MAPPER.createObjectNode(), Map.of());
    Event start = events.next();
    if (start instanceof DocumentStartEvent) {
      Event root = events.next();
      if (root instanceof MappingStartEvent event) {
        mapping = mapping(plain(event), 1);
      } else if (!(root instanceof ScalarEvent scalar && scalar.getValue().isEmpty())) {
        throw place(root).refused(YamlRepairs.NO_MAPPING);
      }
      events.next(); // its end
      Event after = events.next();
      if (after instanceof DocumentStartEvent) {
        throw place(after).refused(YamlRepairs.NO_MAPPING);
      }
    }
    return mapping;
  }

  private Mapping mapping(MappingStartEvent start, int depth) throws LessonException {
    ObjectNode values = LessonJson.MAPPER.createObjectNode();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (Event event = events.next(); !ends(event); event = events.next()) {
      TextPlace here = place(event);
      if (!(event instanceof ScalarEvent key)) {
        throw here.refused("a key is a word or a text in quotation marks, before its colon");
      }
      String name = plain(key).getValue();
      Integer before = lines.putIfAbsent(name, here.line());
      if (before != null) {
        String where = oneLine ? "" : " (first in line " + before + ")";
        throw here.refused("“" + name + "” stands twice" + where + "; keep one of them");
      }
      values.set(name, value(events.next(), name, depth, start.isFlow()));
    }
    return new Mapping(values, lines);
  }

  /** In braces and in the line of a cell a word alone is no pair: its colon was forgotten. */
  private JsonNode value(Event event, String key, int depth, boolean flow) throws LessonException {
    if (flow && event instanceof ScalarEvent scalar && scalar.isPlain()) {
      if (scalar.getValue().isEmpty()) {
        throw place(event)
            .refused("“" + key + "” has no value; write pairs key: value, parted by commas");
      }
    }
    return node(event, depth);
  }

  private JsonNode node(Event event, int depth) throws LessonException {
    if (depth > DEEPEST) {
      throw place(event).refused("brackets are nested more than " + DEEPEST + " deep");
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(plain(scalar));
    }
    if (event instanceof MappingStartEvent start) {
      return mapping(plain(start), depth + 1).values();
    }
    if (event instanceof SequenceStartEvent start) {
      plain(start);
      ArrayNode items = LessonJson.MAPPER.createArrayNode();
      for (Event item = events.next(); !ends(item); item = events.next()) {
        items.add(node(item, depth + 1));
      }
      return items;
    }
    throw place(event).refused(YamlRepairs.QUOTES.formatted("*"));
  }

  private static boolean ends(Event event) {
    return event.getEventId() == Event.ID.MappingEnd || event.getEventId() == Event.ID.SequenceEnd;
  }

  /** The event, which has neither an anchor nor a tag. */
  private <E extends NodeEvent> E plain(E event) throws LessonException {
    Optional<String> tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
    if (event.getAnchor().isPresent() || event instanceof AliasEvent) {
      throw place(event).refused(YamlRepairs.QUOTES.formatted("&"));
    }
    if (tag.isPresent()) {
      throw place(event).refused(YamlRepairs.QUOTES.formatted("!"));
    }
    return event;
  }

  private static JsonNode scalar(ScalarEvent scalar) {
    return scalar.isPlain() ? YamlWord.value(scalar.getValue()) : new TextNode(scalar.getValue());
  }
}
