package plainscale.document.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * Finds the numbers of a text that can be results: decimals, digits in groups, powers of ten, named
 * powers. Years, and numbers that count figures, pages or steps, are none.
 */
final class NumberFinder {
  private static final String SPACE = "[ \\u00a0\\u2009\\u202f]";

  /** Digits, in groups if they have any; {@code D} is the decimal marker, {@code G} the other. */
  private static final String DIGITS =
      "(?:\\d{1,3}(?:SPACE\\d{3})+|\\d{1,3}(?:[G’']\\d{2,3})*[G’']\\d{3}|\\d{1,40})(?!\\d)"
          + "(?:D(?:\\d{3}(?:SPACE\\d{3})+(?:SPACE\\d{1,2})?|\\d{1,40}))?";

  private static final String POWER =
      "(?:\\s?[×·*]\\s?10(?:\\^\\(?([-−+]?\\d{1,3})\\)?|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3}))|[eE]([-−+]?\\d{1,3})(?![\\p{L}\\d]))?";

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** What counts something that is no quantity, before a number. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(?iu)(?:\\b(?:figures?|fig|tables?|equations?|eq|sections?|sec|chapters?|pages?|pp?|no|nr"
              + "|questions?|steps?|exercises?|parts?|volumes?|vol|versions?|lines?|iso|din|doi|codata|isbn)\\.?|§|#)"
              + "\\s*\\(?$");

  private static final Pattern YEAR = Pattern.compile("1[5-9]\\d\\d|20\\d\\d");

  private static final Pattern UNIT =
      Pattern.compile(
          "(?:[\\p{L}°%‰µΩ′″]+(?:\\^?\\(?[-−]?\\d\\)?|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)?|1(?=/))|\\s?[/·*]\\s?|SPACE|[()]"
              .replace("SPACE", SPACE));

  /** The name of a power of ten behind digits. */
  private static final Pattern WORD = Pattern.compile("\\s(\\p{L}+)");

  /** Characters before a number that can say that it counts something. */
  private static final int NEAR = 24;

  /** Characters behind a number that can be its unit. */
  private static final int FAR = 80;

  private static final int MOST_UNIT_PIECES = 9;
  private static final int LARGEST_POWER = 66;
  private static final BigDecimal MANY = BigDecimal.valueOf(2);

  private final Pattern number;
  private final char marker;
  private final Map<String, Integer> powers = new HashMap<>();

  /** For texts whose numbers are written so. */
  NumberFinder(Writing writing) {
    this.marker = writing.digits().marker().equals(",") ? ',' : '.';
    String digits =
        DIGITS
            .replace("SPACE", SPACE)
            .replace("D(", marker == ',' ? ",(" : "\\.(")
            .replace("G", marker == ',' ? "." : ",");
    this.number =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}_.,:/#^\\\\])(?<![\\p{L}\\p{N}][-–])(\\(?)("
                + digits
                + ")(?:\\(\\d{1,3}\\)|\\s?±\\s?"
                + digits
                + ")?\\)?"
                + POWER
                + "(?!\\d|[.,:/-]\\d)");
    names(Words.ENGLISH);
    names(writing.words());
  }

  private void names(Words words) {
    for (int power = -LARGEST_POWER; power <= LARGEST_POWER; power++) {
      if (Math.abs(power) > 2) {
        int exponent = power;
        words.nameOf(power, MANY).ifPresent(name -> powers.putIfAbsent(name, exponent));
        words.nameOf(power, BigDecimal.ONE).ifPresent(name -> powers.putIfAbsent(name, exponent));
      }
    }
  }

  List<TypedNumber> in(String text) {
    List<TypedNumber> numbers = new ArrayList<>();
    Matcher matcher = number.matcher(text);
    while (matcher.find()) {
      String before = text.substring(Math.max(0, matcher.start() - NEAR), matcher.start());
      if (!NUMBERED.matcher(before).find()) {
        typed(matcher.toMatchResult(), text).ifPresent(numbers::add);
      }
    }
    return numbers;
  }

  private Optional<TypedNumber> typed(MatchResult match, String text) {
    String digits = match.group(2);
    BigDecimal plain =
        new BigDecimal(digits.replaceAll("[^\\d" + marker + "]", "").replace(',', '.'));
    int written = exponent(match);
    boolean power = written != 0;
    String after = text.substring(match.end(), Math.min(text.length(), match.end() + FAR));
    Optional<String> name = power ? Optional.empty() : name(after);
    int exponent = name.map(n -> powers.getOrDefault(n, 0)).orElse(written);
    String rest = name.map(n -> after.substring(after.indexOf(n) + n.length())).orElse(after);
    List<TypedNumber.Reading> units = units(rest);
    boolean year = YEAR.matcher(digits).matches() && exponent == 0 && units.isEmpty();
    if (plain.signum() == 0 || year) {
      return Optional.empty();
    }
    String shown = match.group() + name.map(n -> " " + n).orElse("");
    return Optional.of(
        new TypedNumber(
            match.start(),
            shown,
            plain.scaleByPowerOfTen(exponent),
            figures(plain),
            exponent != 0,
            rest,
            units));
  }

  /** The digits without zeros before them, and without those behind a whole number. */
  private static int figures(BigDecimal plain) {
    return plain.scale() > 0 ? plain.precision() : plain.stripTrailingZeros().precision();
  }

  private static int exponent(MatchResult match) {
    String raised = match.group(4);
    if (raised != null) {
      StringBuilder plain = new StringBuilder();
      raised
          .chars()
          .forEach(
              c -> {
                int digit = RAISED.indexOf(c);
                plain.append(digit < 0 ? (c == '⁻' ? "-" : "+") : String.valueOf(digit));
              });
      return Integer.parseInt(plain.toString());
    }
    String flat = match.group(3) == null ? match.group(5) : match.group(3);
    return flat == null ? 0 : Integer.parseInt(flat.replace('−', '-'));
  }

  /** The name of a power of ten right after the digits. */
  private Optional<String> name(String after) {
    Matcher word = WORD.matcher(after);
    return word.lookingAt()
        ? Optional.of(word.group(1)).filter(w -> powers.containsKey(w))
        : Optional.empty();
  }

  /** What the beginning of a text can mean as a unit, the longest reading first. */
  private static List<TypedNumber.Reading> units(String after) {
    List<TypedNumber.Reading> readings = new ArrayList<>();
    int start = !after.isEmpty() && after.substring(0, 1).matches(SPACE + "|\\n") ? 1 : 0;
    Matcher piece = UNIT.matcher(after).region(start, after.length());
    for (int pieces = 0; pieces < MOST_UNIT_PIECES && piece.lookingAt(); pieces++) {
      String text = after.substring(start, piece.end()).strip();
      unit(text).ifPresent(unit -> readings.add(0, new TypedNumber.Reading(text, unit)));
      piece.region(piece.end(), after.length());
    }
    return readings;
  }

  private static Optional<UnitOfMeasure> unit(String text) {
    boolean ends = !text.isEmpty() && !text.matches("(?s).*[/·* (]");
    if (!ends) {
      return Optional.empty();
    }
    try {
      return Optional.of(UnitParser.parse(text.replace('−', '-')));
    } catch (UnitException e) {
      return Optional.empty();
    }
  }
}
