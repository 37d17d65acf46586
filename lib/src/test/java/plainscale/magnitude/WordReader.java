package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainscale.table.Table;

/**
 * Reads English number words of the short scale, for tests of the speller. It knows nothing of the
 * speller's tables except the names of powers, which the fixtures check one by one.
 */
final class WordReader {
  private static final List<String> UNITS =
      List.of(
          ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
                  + " fifteen sixteen seventeen eighteen nineteen")
              .split(" "));
  private static final List<String> TENS =
      List.of("ten twenty thirty forty fifty sixty seventy eighty ninety".split(" "));
  private static final Map<String, BigDecimal> POWERS = powers();

  private WordReader() {}

  static BigDecimal read(String words) {
    if (words.startsWith("minus ")) {
      return read(words.substring("minus ".length())).negate();
    }
    int last = words.lastIndexOf(' ');
    String ending = words.substring(last + 1).replaceAll("ths?$", "");
    boolean fraction = words.matches(".*ths?$") && POWERS.containsKey(ending);
    if (!fraction) {
      return point(words);
    }
    int power = POWERS.getOrDefault(ending, BigDecimal.ONE).precision() - 1;
    return point(words.substring(0, last)).movePointLeft(power);
  }

  private static BigDecimal point(String words) {
    String[] sides = words.split(" point ", 2);
    StringBuilder decimals = new StringBuilder();
    if (sides.length == 2) {
      for (String digit : sides[1].split(" ", -1)) {
        decimals.append(UNITS.indexOf(digit));
      }
    }
    String dot = decimals.isEmpty() ? "" : "." + decimals;
    return new BigDecimal(integer(sides[0]).toPlainString() + dot);
  }

  private static BigDecimal integer(String words) {
    BigDecimal total = BigDecimal.ZERO;
    BigDecimal group = BigDecimal.ZERO;
    for (String word : words.split("[ -]", -1)) {
      BigDecimal power = POWERS.get(word);
      if (word.equals("hundred")) {
        group = group.multiply(BigDecimal.valueOf(100));
      } else if (power != null && power.precision() > 3) {
        total = total.add(group.multiply(power));
        group = BigDecimal.ZERO;
      } else {
        group = group.add(small(word));
      }
    }
    return total.add(group);
  }

  private static BigDecimal small(String word) {
    int unit = UNITS.indexOf(word);
    int ten = TENS.indexOf(word);
    if (unit < 0 && ten < 0) {
      throw new IllegalArgumentException("Not a number word: " + word);
    }
    return BigDecimal.valueOf(unit >= 0 ? unit : 10L * (ten + 1));
  }

  private static Map<String, BigDecimal> powers() {
    Map<String, BigDecimal> powers = new HashMap<>();
    for (Table.Row row : Table.read(WordReader.class, "scale-names.tsv")) {
      int power = Integer.parseInt(row.get("power"));
      powers.put(row.get("short"), BigDecimal.TEN.pow(power));
    }
    powers.remove("");
    return powers;
  }
}
