package plainscale.magnitude;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import plainscale.table.Table;

/** How a language says numbers: its row of languages.tsv. */
final class Grammar {

  /** Loaded when the first word is asked for. */
  private static final class Loaded {
    static final Map<String, Grammar> ALL =
        Table.read(Grammar.class, "languages.tsv").stream()
            .collect(toMap(row -> row.get("tag"), Grammar::new));
  }

  private final Table.Row row;
  private final String joint;
  private final String lastJoint;
  private final boolean lastMayBeHundreds;

  private Grammar(Table.Row row) {
    this.row = row;
    this.joint = row.get("join") + " ";
    this.lastJoint = row.get("last").isEmpty() ? joint : " " + row.get("last") + " ";
    this.lastMayBeHundreds = row.get("when").equals("round");
  }

  static Grammar of(Language language) {
    return Objects.requireNonNull(Loaded.ALL.get(language.tag()), language.tag());
  }

  /** The tags that choose this language, "en-*" for all regions that choose no other. */
  List<String> locales() {
    return List.of(row.get("locales").split(" "));
  }

  Scale scale() {
    return Scale.named(row.get("scale")).orElseThrow();
  }

  ScaleNames names(Scale scale) {
    return ScaleNames.of(row.get("names"), scale);
  }

  Locale icuLocale() {
    return Locale.forLanguageTag(row.get("icu"));
  }

  String ruleSet(Form form) {
    return row.get(form.column());
  }

  /** Corrects what ICU4J writes otherwise than the language's authority. */
  String mend(String words) {
    String mended = words;
    for (String pair : row.get("mend").split(" ", -1)) {
      int arrow = pair.indexOf('→');
      if (arrow > 0) {
        mended =
            mended.replaceAll(
                pair.substring(0, arrow), pair.substring(arrow + 1).replace('_', ' '));
      }
    }
    return mended;
  }

  String minus() {
    return row.get("minus") + " ";
  }

  String decimalMarker() {
    return " " + row.get("decimal") + " ";
  }

  /** What stands between "million" and another "million". */
  String repeated() {
    return row.get("repeat").isEmpty() ? " " : " " + row.get("repeat") + " ";
  }

  /** What stands between a fraction and "1 C". */
  String ofOne() {
    return row.get("of");
  }

  /** Whether it is "1.5 thousand million" and not "1500 million". */
  boolean namesThousandsOfNames() {
    return row.get("thousands").equals("named");
  }

  /**
   * What parts a group from those after it: a word where one more group follows that is small
   * enough, either a number below a hundred or, in some languages, any group of round hundreds.
   */
  String joint(boolean oneFollows, boolean belowHundred, boolean round) {
    boolean word = oneFollows && (belowHundred || (lastMayBeHundreds && round));
    return word ? lastJoint : joint;
  }
}
