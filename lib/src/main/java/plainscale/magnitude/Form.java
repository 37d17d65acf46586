package plainscale.magnitude;

import java.util.Locale;

/** Where a number stands in a sentence; many languages then say it in another way. */
enum Form {
  /** At the end of a number, or by itself: "veintiuno", "eins". */
  ALONE,
  /** Before the name of a large power: "veintiún millones", "eine Million". */
  COUNT,
  /** Before the name of a fraction: "veintiuna millonésimas", "ein Millionstel". */
  PARTS;

  /** The column of languages.tsv with the rule set of ICU4J. */
  String column() {
    return name().toLowerCase(Locale.ROOT);
  }
}
