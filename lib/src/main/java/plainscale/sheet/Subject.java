package plainscale.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plainscale.notation.Open;
import plainscale.notation.Printer;
import plainscale.notation.Statement;
import plainscale.table.Table;

/**
 * What a sentence calls a statement: the name that it defines, the formula that it shows, else what
 * its first word makes.
 *
 * @param words in the middle of a sentence
 * @param begun at the beginning of a sentence; a name keeps its letters there
 * @param plural whether they are several
 */
record Subject(String words, String begun, boolean plural) {
  private static final Pattern FIRST_WORD = Pattern.compile("\\p{L}+");
  private static final String LINE = "this line";

  private static final Map<String, String> MADE =
      Table.read(Subject.class, "subjects.tsv").stream()
          .collect(Collectors.toMap(row -> row.get("word"), row -> row.get("subject")));

  /** What defines a name of the sheet. */
  static Subject of(Entry entry) {
    return of(entry.statement(), entry.source());
  }

  /** A statement of that source. */
  static Subject of(Statement statement, String source) {
    Statement plain = Open.within(statement);
    if (plain instanceof Statement.Forces forces) {
      return phrase("the forces on “" + forces.body().text() + "”", true);
    }
    return Definitions.name(statement)
        .or(() -> formula(plain))
        .map(name -> new Subject(name, name, false))
        .orElseGet(() -> phrase(made(plain, source), false));
  }

  private static Subject phrase(String words, boolean plural) {
    return new Subject(
        words, words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1), plural);
  }

  private static Optional<String> formula(Statement statement) {
    return statement instanceof Statement.Show show && !Open.isBlank(show.value())
        ? Optional.of(Printer.print(show.value()))
        : Optional.empty();
  }

  private static String made(Statement statement, String source) {
    Matcher word = FIRST_WORD.matcher(source.substring(statement.span().start()));
    return word.lookingAt() ? MADE.getOrDefault(word.group(), LINE) : LINE;
  }

  /** “m is still blank.” */
  String isAre(String what) {
    return begun + (plural ? " are " : " is ") + what + ".";
  }
}
