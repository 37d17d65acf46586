package plainscale.document;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** What to do where YAML cannot be read. */
final class YamlRepairs {
  static final String NO_MAPPING = "here stand lines key: value, and nothing else";
  static final String QUOTES = "a value that begins with %s stands in quotation marks";

  private static final String TAB = "a tab stands here; use spaces";
  private static final String OTHER =
      "this cannot be read as YAML; write key: value, and a text with signs in it in quotation marks";

  /** What the parser says, or begins to say, and the repair; the first that fits. */
  private static final List<Map.Entry<String, String>> REPAIRS =
      List.of(
          Map.entry(
              "mapping values are not allowed",
              "there is a second colon in this line; put the value in quotation marks"),
          Map.entry("TAB", TAB),
          Map.entry("cannot start any token", "put the value in quotation marks"),
          Map.entry(
              "while scanning a quoted scalar",
              "a quotation mark is not closed, or a line is missing before it"),
          Map.entry(
              "while scanning a double-quoted scalar",
              "a backslash between quotation marks is written twice"),
          Map.entry(
              "while scanning a simple key",
              "a key has a colon and a space behind it; write key: value"),
          Map.entry("while parsing a flow", "a bracket is not closed, or a comma is missing"),
          Map.entry(
              "while parsing a block mapping",
              "this line belongs to none above it; begin it below the first letter of its neighbours"),
          Map.entry(
              "while parsing a block collection",
              "this line belongs to none above it; begin it below the first letter of its neighbours"),
          Map.entry("while scanning", "put the value in quotation marks"));

  private YamlRepairs() {}

  /** The sentence for what the parser found, at the place of that line of the YAML. */
  static LessonException refused(YamlEngineException e, String yaml, IntFunction<TextPlace> place) {
    if (e instanceof ReaderException reader) {
      int line = (int) yaml.codePoints().limit(reader.getPosition()).filter(c -> c == '\n').count();
      return place
          .apply(line)
          .refused("the sign U+%04X cannot be seen; take it out".formatted(reader.getCodePoint()));
    }
    if (e instanceof MarkedYamlEngineException marked) {
      int line = marked.getProblemMark().map(Mark::getLine).orElse(0);
      boolean tab = yaml.lines().skip(line).limit(1).anyMatch(text -> text.indexOf('\t') >= 0);
      return place.apply(line).refused(tab ? TAB : repair(marked));
    }
    return place.apply(0).refused("the head is larger than 64 million signs");
  }

  private static String repair(MarkedYamlEngineException e) {
    String said = e.getProblem() + "\n" + e.getContext();
    return REPAIRS.stream()
        .filter(row -> said.contains(row.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(OTHER);
  }
}
