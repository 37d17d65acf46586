package plainscale.magnitude;

/**
 * Which words name the powers of ten, as a column of scale-names.tsv. {@code reach} is the power of
 * ten from which on nothing has a name any more.
 */
public enum Scale {
  /** A billion is 10⁹: the scale of English today. */
  SHORT("short", 66, true),
  /** A billion is 10¹², as in most of continental Europe (Chuquet). */
  LONG("long", 66, true),
  /** A milliard is 10⁹ and a billion 10¹² (Peletier). */
  MILLIARD("milliard", 66, true),
  /** Lakh and crore. It has no words for fractions. */
  INDIAN("indian", 21, false),
  /** Thousand and million only, said as often as needed: "8.7 million million". */
  REPEATED("repeated", 27, false);

  private final String column;
  private final int reach;
  private final boolean fractions;

  Scale(String column, int reach, boolean fractions) {
    this.column = column;
    this.reach = reach;
    this.fractions = fractions;
  }

  String column() {
    return column;
  }

  int reach() {
    return reach;
  }

  boolean fractions() {
    return fractions;
  }

  public static java.util.Optional<Scale> named(String name) {
    return java.util.Arrays.stream(values()).filter(v -> v.column.equals(name)).findFirst();
  }
}
