package plainscale.magnitude;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.util.Optional;
import plainscale.magnitude.ScaleNames.Name;

/**
 * Spells numbers in full: groups below a million by the rules of ICU4J, names of powers from the
 * tables, by cutting the string of digits at the powers that have a name.
 */
final class Speller {
  private final Grammar grammar;
  private final IcuRules rules;
  private final ScaleNames names;

  Speller(Language language, ScaleNames names) {
    this.grammar = Grammar.of(language);
    this.rules = IcuRules.of(language);
    this.names = names;
  }

  /** A number below the reach of the scale; decimals are read one by one. */
  String spell(BigDecimal value, Form form) {
    if (value.scale() <= 0) {
      return whole(value.toBigInteger().toString(), form);
    }
    String plain = value.toPlainString();
    int point = plain.indexOf('.');
    String before = whole(plain.substring(0, point), Form.ALONE) + grammar.decimalMarker();
    return plain
        .substring(point + 1)
        .chars()
        .mapToObj(digit -> rules.spell(digit - '0', Form.ALONE))
        .collect(joining(" ", before, ""));
  }

  private String whole(String digits, Form form) {
    StringBuilder words = new StringBuilder();
    write(digits, form, words);
    return words.toString();
  }

  private void write(String digits, Form form, StringBuilder words) {
    Optional<Name> name = name(digits);
    if (name.isEmpty()) {
      words.append(rules.spell(Integer.parseInt(digits), form));
      return;
    }
    int cut = digits.length() - name.get().power();
    String count = digits.substring(0, cut);
    write(count, Form.COUNT, words);
    words.append(' ').append(name.get().word(count.equals("1")));
    String rest = withoutLeadingZeros(digits.substring(cut));
    if (!rest.isEmpty()) {
      words.append(joint(rest));
      write(rest, form, words);
    }
  }

  /** The name at which digits are cut; thousands belong to the small groups. */
  private Optional<Name> name(String digits) {
    return names.within(digits.length() - 1L).filter(n -> n.power() > 3);
  }

  /** What stands before the rest of a number, which depends on its first group. */
  private String joint(String rest) {
    int power = name(rest).map(Name::power).orElse(rest.length() > 3 ? 3 : 0);
    String group = rest.substring(0, rest.length() - power);
    boolean last = withoutLeadingZeros(rest.substring(group.length())).isEmpty();
    String count = group.endsWith("000") ? group.substring(0, group.length() - 3) : group;
    boolean below = count.length() < 3;
    boolean hundreds = count.length() == 3 && count.endsWith("00");
    return grammar.joint(last, below && power == 0, below || hundreds);
  }

  private static String withoutLeadingZeros(String digits) {
    int start = 0;
    while (start < digits.length() && digits.charAt(start) == '0') {
      start++;
    }
    return digits.substring(start);
  }
}
