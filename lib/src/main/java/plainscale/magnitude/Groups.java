package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The groups of digits before the decimal marker, each with the name of its power of ten. */
final class Groups {
  private static final int SIZE = 3;

  private Groups() {}

  /** The digits of a group and the name that is read after them; the last group has none. */
  record Group(String digits, String name) {
    String text() {
      return name.isEmpty() ? digits : digits + " " + name;
    }
  }

  /**
   * The groups from left to right, those after the marker for a number below one; none if there is
   * only one, or if a group has no name of its own in this scale.
   */
  static List<Group> of(Digits digits, Words words) {
    boolean fraction = digits.value().abs().compareTo(BigDecimal.ONE) < 0;
    String[] parts = side(digits, fraction).split(Pattern.quote(digits.style().separator()), -1);
    List<Group> groups = new ArrayList<>();
    int power = fraction ? 0 : digits.integerPlaces();
    for (String part : parts) {
      power -= fraction ? SIZE : part.length();
      BigDecimal count = new BigDecimal(fraction ? filled(part) : part);
      Optional<String> name = power == 0 ? Optional.of("") : words.nameOf(power, count);
      if (name.isEmpty()) {
        return List.of();
      }
      groups.add(new Group(fraction ? filled(part) : part, name.get()));
    }
    return groups.size() > 1 ? signed(groups, digits) : List.of();
  }

  private static List<Group> signed(List<Group> groups, Digits digits) {
    if (digits.value().signum() < 0) {
      Group first = groups.get(0);
      groups.set(0, new Group(DigitWriter.MINUS + first.digits(), first.name()));
    }
    return groups;
  }

  /** 53 at the end of a fraction is read as 530 of the smaller part. */
  private static String filled(String part) {
    return part + "0".repeat(Math.max(0, SIZE - part.length()));
  }

  /** The digits and separators on one side of the marker. */
  private static String side(Digits digits, boolean fraction) {
    StringBuilder[] sides = {new StringBuilder(), new StringBuilder()};
    int at = 0;
    for (Run run : digits.runs()) {
      if (run.role() == Role.MARKER) {
        at = 1;
      } else if (run.role() != Role.SIGN) {
        sides[at].append(run.text());
      }
    }
    return sides[fraction ? 1 : 0].toString();
  }
}
