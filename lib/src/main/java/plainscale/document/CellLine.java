package plainscale.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.text.Near;

/**
 * What the first line of a cell says: an id if it has one of its own, then its metadata as pairs.
 *
 * @param id its own id
 * @param metadata all its metadata
 * @param remarks keys that look misspelled
 */
record CellLine(Optional<String> id, ObjectNode metadata, List<String> remarks) {
  private static final List<String> KEYS =
      List.of("role", "minutes", "lines", "blank", "alternative");
  private static final String MISSPELLED = "a cell says nothing as “%s”; did you mean %s?";
  private static final Pattern WORD = Pattern.compile("([^\\s:,\"'{\\[?#]+),?(?:\\s+(.*))?");

  /** Reads what follows the word of a fence or marker. */
  static CellLine read(String rest, TextPlace place) throws LessonException {
    Matcher word = WORD.matcher(rest);
    if (!word.matches()) {
      return pairs(Optional.empty(), rest, place);
    }
    String id = word.group(1);
    if (!CellIds.isValid(id)) {
      throw place.refused(
          "“"
              + id
              + "” is no name of a cell; a name has letters a to z, digits, - and _, 64 at most");
    }
    return pairs(Optional.of(id), word.group(2) == null ? "" : word.group(2), place);
  }

  private static CellLine pairs(Optional<String> id, String pairs, TextPlace place)
      throws LessonException {
    if (pairs.startsWith("{")) {
      throw place.refused("pairs stand here without braces; write role: text, minutes: 5");
    }
    YamlReader.Mapping mapping = YamlReader.line(pairs, place);
    List<String> remarks = new ArrayList<>();
    for (String key : mapping.lines().keySet()) {
      if (!KEYS.contains(key) && !key.equals(OwnFields.OTHERS)) {
        Near.to(key, KEYS, 1)
            .forEach(near -> remarks.add(place.remark(MISSPELLED.formatted(key, near))));
      }
    }
    return new CellLine(id, OwnFields.read(mapping.values(), mapping.lines(), place), remarks);
  }

  /** The same as text, empty or with a space before it; {@code id} is empty if it is derived. */
  static String write(String id, ObjectNode metadata) {
    String pairs = YamlWriter.line(OwnFields.write(metadata, KEYS, Set.of(OwnFields.OTHERS)));
    return (id.isEmpty() ? "" : " " + id) + (pairs.isEmpty() ? "" : " " + pairs);
  }
}
