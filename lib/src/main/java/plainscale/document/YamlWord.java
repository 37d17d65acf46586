package plainscale.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Words of YAML without quotation marks: what they stand for, and which texts may stand so. */
final class YamlWord {
  private static final int LONGEST_NUMBER = 1000; // digits, as for JSON
  private static final Map<String, JsonNode> VALUES =
      Map.of(
          "", NullNode.getInstance(),
          "~", NullNode.getInstance(),
          "null", NullNode.getInstance(),
          "true", BooleanNode.TRUE,
          "false", BooleanNode.FALSE);

  /** Source: RFC 8259, section 6. */
  private static final Pattern NUMBER =
      Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?");

  /** Other values than texts, some of them in YAML 1.1 only: quoted for other programs' sake. */
  private static final Set<String> OTHERS =
      Set.of("y", "n", "yes", "no", "on", "off", "null", "true", "false");

  /** Signs that neither begin nor end anything in YAML, nor in a fence or a comment. */
  private static final String SIGNS = " .;-_'()/%+±°²³·×−–—…“”‘’!?*&~$€=|^";

  /** Signs that do so between brackets or in the line of a cell, and nowhere else. */
  private static final String LINE_SIGNS = SIGNS + ",\"[]{}<>`@";

  private YamlWord() {}

  /** What a word stands for. */
  static JsonNode value(String word) {
    JsonNode value = VALUES.get(word);
    if (value != null) {
      return value;
    }
    if (word.length() <= LONGEST_NUMBER && NUMBER.matcher(word).matches()) {
      try {
        return LessonJson.MAPPER.readTree(word);
      } catch (JsonProcessingException e) {
        return new TextNode(word); // an exponent beyond all bounds
      }
    }
    return new TextNode(word);
  }

  /** Whether a text needs no quotation marks, wherever it stands. */
  static boolean isPlain(String text) {
    return isPlain(text, SIGNS);
  }

  /** Whether a text needs no quotation marks as the rest of a line in a head. */
  static boolean isPlainLine(String text) {
    return isPlain(text, LINE_SIGNS);
  }

  /** It begins with a letter, has quiet signs only, and is no other value. */
  private static boolean isPlain(String text, String signs) {
    return !text.isEmpty()
        && Character.isLetter(text.codePointAt(0))
        && !text.endsWith(" ")
        && !OTHERS.contains(text.toLowerCase(Locale.ROOT))
        && text.codePoints().allMatch(c -> isWordPart(c) || signs.indexOf(c) >= 0);
  }

  private static boolean isWordPart(int c) {
    return Character.isLetterOrDigit(c)
        || Character.getType(c) == Character.NON_SPACING_MARK
        || Character.getType(c) == Character.COMBINING_SPACING_MARK;
  }

  /** Whether it is one word of that kind. */
  static boolean isOnePlainWord(String text) {
    return isPlain(text) && text.indexOf(' ') < 0;
  }
}
