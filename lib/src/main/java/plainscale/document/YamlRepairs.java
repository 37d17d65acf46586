package plainscale.document;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** What to do where YAML cannot be read. */
final class YamlRepairs {
  static final String NO_MAPPING = "here stand lines key: value, and nothing else";
  static final String QUOTES = "a value that begins with %s stands in quotation marks";

  private static final String TAB = "a tab stands here; use spaces";
  private static final String SECOND_COLON =
      "there is a second colon in this line; put the value in quotation marks";
  private static final String INDENT =
      "this line belongs to none above it; begin it below the first letter of its neighbours";
  private static final String BRACKET =
      "a bracket that opens here is not closed, or a comma is missing";
  private static final String PAIRS =
      "pairs are parted by commas, and brackets are closed; write role: text, minutes: 5";
  private static final String FLOW_MAPPING = "while parsing a flow mapping";
  private static final String OTHER =
      "this cannot be read as YAML; write key: value, and a text with signs in it in quotation marks";

  /** What the parser says, or begins to say, and the repair; the first that fits. */
  private static final List<Map.Entry<String, String>> REPAIRS =
      List.of(
          Map.entry("mapping values are not allowed", SECOND_COLON),
          Map.entry("TAB", TAB),
          Map.entry("cannot start any token", "put the value in quotation marks"),
          Map.entry(
              "while scanning a quoted scalar", "a quotation mark opens here and is not closed"),
          Map.entry(
              "while scanning a double-quoted scalar",
              "a backslash between quotation marks is written twice"),
          Map.entry(
              "while scanning a simple key",
              "a key has a colon and a space behind it; write key: value"),
          Map.entry("while parsing a flow", BRACKET),
          Map.entry("while parsing a block mapping", INDENT),
          Map.entry("while parsing a block collection", INDENT),
          Map.entry("while scanning", "put the value in quotation marks"));

  /** Repairs of what was opened: told where that was, not where the parser gave up. */
  private static final List<String> AT_OPENING =
      List.of(
          "while scanning a quoted scalar", "while scanning a simple key", "while parsing a flow");

  private YamlRepairs() {}

  /** The sentence for what the parser found in several lines, the first of which is there. */
  static LessonException inBlock(YamlEngineException e, String yaml, TextPlace first) {
    return refused(e, yaml, line -> first.at(first.line() + line));
  }

  /** The sentence for what the parser found in pairs that were put in braces for it. */
  static LessonException inPairs(YamlEngineException e, String yaml, TextPlace place) {
    boolean ours =
        e instanceof MarkedYamlEngineException marked
            && String.valueOf(marked.getContext()).startsWith(FLOW_MAPPING)
            && marked.getContextMark().map(Mark::getColumn).orElse(1) == 0;
    return ours ? place.refused(PAIRS) : refused(e, yaml, line -> place);
  }

  private static LessonException refused(
      YamlEngineException e, String yaml, IntFunction<TextPlace> place) {
    if (e instanceof ReaderException reader) {
      int line = (int) yaml.codePoints().limit(reader.getPosition()).filter(c -> c == '\n').count();
      return place
          .apply(line)
          .refused("the sign U+%04X cannot be seen; take it out".formatted(reader.getCodePoint()));
    }
    if (e instanceof MarkedYamlEngineException marked) {
      Mark mark = mark(marked);
      int line = mark == null ? 0 : mark.getLine();
      String text = yaml.lines().skip(line).findFirst().orElse("");
      return place.apply(line).refused(repair(marked, text, mark));
    }
    return place.apply(0).refused("the head is larger than 64 million signs");
  }

  private static @Nullable Mark mark(MarkedYamlEngineException e) {
    boolean opened = AT_OPENING.stream().anyMatch(String.valueOf(e.getContext())::startsWith);
    return (opened ? e.getContextMark().or(e::getProblemMark) : e.getProblemMark()).orElse(null);
  }

  private static String repair(MarkedYamlEngineException e, String line, @Nullable Mark mark) {
    if (line.indexOf('\t') >= 0) {
      return TAB;
    }
    String said = e.getProblem() + "\n" + e.getContext();
    String repair =
        REPAIRS.stream()
            .filter(row -> said.contains(row.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(OTHER);
    boolean first = mark != null && line.indexOf(':') >= mark.getColumn();
    return repair.equals(SECOND_COLON) && first ? INDENT : repair;
  }
}
