package plainscale.magnitude;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongFunction;

/**
 * The words for 0 to 999 999 in one form, from ICU4J. ICU4J itself stops at 10^18 and turns larger
 * doubles into 2^63 − 1 without a word, so it is given nothing but small longs, and each group of
 * three digits only once: a number is put together from "deux cent mille" and " un".
 */
final class SmallNumbers {
  /** What follows a thousand is what ICU4J adds to the words for this number. */
  private static final int THOUSANDS = 100_000;

  private static final int MOST = 1_000_000;

  private final LongFunction<String> rules;
  private final Map<Integer, String> whole = new ConcurrentHashMap<>();
  private final Map<Integer, String> afterThousands = new ConcurrentHashMap<>();

  /** Numbers as the rules say them, which are asked once for each group. */
  SmallNumbers(LongFunction<String> rules) {
    this.rules = rules;
  }

  String spell(int number) {
    if (number < 0 || number >= MOST) {
      throw new IllegalArgumentException("Not a number below a million: " + number);
    }
    int rest = number % 1000;
    if (rest == number || rest == 0) {
      return whole.computeIfAbsent(number, rules::apply);
    }
    return whole.computeIfAbsent(number - rest, rules::apply)
        + afterThousands.computeIfAbsent(rest, this::afterThousands);
  }

  private String afterThousands(int rest) {
    return rules.apply(THOUSANDS + rest).substring(rules.apply(THOUSANDS).length());
  }
}
