package plainscale.magnitude;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Which words name the powers of ten, as said in scale-names.tsv. {@code reach} is the power of ten
 * from which on nothing has a name any more.
 */
public enum Scale {
  /** A billion is 10⁹: the scale of English and Brazilian Portuguese today. */
  SHORT(66),
  /** A billion is 10¹² and 10⁹ a thousand million (Chuquet): Spanish, Portuguese of Portugal. */
  LONG(66),
  /** A milliard is 10⁹ and a billion 10¹² (Peletier): French, German, Italian. */
  MILLIARD(66),
  /** Lakh and crore, crore said as often as needed: "8.7 lakh crore". */
  INDIAN(42),
  /** Thousand and million only, million said as often as needed: "8.7 million million". */
  REPEATED(30);

  private final int reach;

  Scale(int reach) {
    this.reach = reach;
  }

  /** The scale that is called so in a sheet: "short", "long", "milliard", "indian", "repeated". */
  public static Optional<Scale> named(String word) {
    return Arrays.stream(values()).filter(scale -> scale.word().equals(word)).findFirst();
  }

  /** What the scale is called in a sheet. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  int reach() {
    return reach;
  }
}
