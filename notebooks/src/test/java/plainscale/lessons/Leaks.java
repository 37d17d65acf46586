package plainscale.lessons;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Searches all that a notebook holds for what it must not tell: each text of its JSON, names among
 * them, and what is packed in base64, in whatever spelling a number has there.
 */
final class Leaks {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String SPACE = "[ \\u00A0\\u2009\\u202F]";
  private static final String GROUPED = "\\d{1,3}(?:[ \\u00A0\\u2009\\u202F,'’]\\d{3})+";
  private static final String PART =
      "[.,]\\d{3}(?!\\d)(?:" + SPACE + "\\d{3})*(?:" + SPACE + "\\d{1,2}(?!\\d))?|[.,]\\d+";
  private static final String TEN = "\\s*(?:×|x|·|⋅|\\*|\\\\times|\\\\cdot)\\s*10\\s*";
  private static final String POWER =
      "\\s*[eE]([+−-]?\\d+)|"
          + TEN
          + "(?:\\^|\\*\\*|<sup>)\\s*\\{?([+−-]?\\d+)|"
          + TEN
          + "(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)";

  /** As one number with its groups, then without them: “14 500” may be two. */
  private static final List<Pattern> NUMBERS = List.of(number(GROUPED), number("\\d+"));

  private static final Pattern PACKED = Pattern.compile("[A-Za-z0-9+/=\\s]{4,}");
  private static final int LONGEST_EXPONENT = 4;

  private final List<String> texts = new ArrayList<>();

  private Leaks() {}

  private static Pattern number(String whole) {
    return Pattern.compile("(" + whole + ")(" + PART + ")?(?:" + POWER + ")?");
  }

  /** What of the hidden stands in the notebook. */
  static Set<String> of(String notebook, HiddenFromStudents hidden) throws JsonProcessingException {
    Leaks leaks = new Leaks();
    leaks.unpack(JSON.readTree(notebook));
    Set<String> found = new TreeSet<>();
    for (String text : leaks.texts) {
      found.addAll(found(text, hidden));
      found.addAll(found(text.replaceAll("<[^>]*>", ""), hidden));
    }
    return found;
  }

  private void unpack(JsonNode node) {
    node.properties().forEach(field -> texts.add(field.getKey()));
    node.forEach(this::unpack);
    if (node.isArray()) { // a source is a list of lines
      StringBuilder whole = new StringBuilder();
      node.forEach(item -> whole.append(item.asText()));
      texts.add(whole.toString());
    }
    if (node.isValueNode()) {
      texts.add(node.asText());
      Matcher packed = PACKED.matcher(node.asText());
      while (packed.find()) {
        unpack(packed.group());
      }
    }
  }

  private void unpack(String base64) {
    try {
      byte[] bytes = Base64.getMimeDecoder().decode(base64.strip());
      texts.add(new String(bytes, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException notPacked) {
      // then it is the text that has been looked at
    }
  }

  private static Set<String> found(String text, HiddenFromStudents hidden) {
    Set<String> found = new TreeSet<>();
    Set<BigDecimal> numbers = numbers(text);
    hidden.numbers().stream()
        .filter(numbers::contains)
        .forEach(number -> found.add(number.toString()));
    hidden.written().stream().filter(written -> isIn(text, written)).forEach(found::add);
    String lower = text.toLowerCase(Locale.ROOT);
    hidden.words().stream().filter(lower::contains).forEach(found::add);
    String tight = HiddenFromStudents.tight(text);
    hidden.formulas().stream().filter(tight::contains).forEach(found::add);
    return found;
  }

  /** Not as a part of a longer number. */
  private static boolean isIn(String text, String written) {
    return Pattern.compile("(?<![\\d.])" + Pattern.quote(written) + "(?!\\d|\\.\\d)")
        .matcher(text)
        .find();
  }

  private static Set<BigDecimal> numbers(String text) {
    Set<BigDecimal> numbers = new TreeSet<>();
    for (Pattern pattern : NUMBERS) {
      Matcher number = pattern.matcher(text);
      while (number.find()) {
        numbers.add(value(number));
      }
    }
    return numbers;
  }

  private static BigDecimal value(Matcher number) {
    String whole = number.group(1).replaceAll("\\D", "");
    String part = number.group(2) == null ? "" : number.group(2).replaceAll("\\D", "");
    BigDecimal value = new BigDecimal(whole + "." + part + (part.isEmpty() ? "0" : ""));
    return value.scaleByPowerOfTen(exponent(number)).stripTrailingZeros();
  }

  private static int exponent(Matcher number) {
    for (int group = 3; group <= 5; group++) {
      if (number.group(group) != null) {
        String digits = plain(number.group(group));
        return digits.length() > LONGEST_EXPONENT ? 0 : Integer.parseInt(digits);
      }
    }
    return 0;
  }

  private static String plain(String raised) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < raised.length(); i++) {
      char c = raised.charAt(i);
      int digit = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c);
      plain.append(digit >= 0 ? (char) ('0' + digit) : "⁻−".indexOf(c) >= 0 ? '-' : c);
    }
    return plain.toString();
  }
}
