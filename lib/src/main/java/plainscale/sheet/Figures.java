package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.notation.DataStatement;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.text.Near;

/**
 * The numbers of pictures. A figure keeps the number that it got first, so that what a class wrote
 * down stays true; in a lesson that is run from its start they follow its cells. Figures are
 * entries like names, under a key with a space, which no name has.
 */
final class Figures {
  private static final String KEY = "figure ";
  private static final int MOST_REPAIRS = 4;

  private Figures() {}

  /** Under which name a figure is entered. */
  static String key(Statement.Option name) {
    return KEY + name.text();
  }

  private static boolean isKey(String name) {
    return name.startsWith(KEY);
  }

  /** The entry of a figure with its number: the one that it had, or the next. */
  static Entry numbered(Entry entry, Map<String, Entry> before, Map<String, Entry> own) {
    Entry old = before.get(entry.name());
    int number = old != null ? old.figure() : 1 + Math.max(last(before), last(own));
    return entry.with(number);
  }

  private static int last(Map<String, Entry> entries) {
    return entries.values().stream().mapToInt(Entry::figure).max().orElse(0);
  }

  /** What is wrong with the figures of a cell: such a line needs a picture before it. */
  static List<Result> mistakes(List<Statement> statements, String source) {
    List<Result> mistakes = new ArrayList<>();
    for (int i = 0; i < statements.size(); i++) {
      boolean pictured = i > 0 && isPicture(Open.within(statements.get(i - 1)));
      if (statements.get(i) instanceof Figure figure && !pictured) {
        String sentence = "A figure stands on the line after its picture.";
        List<String> repairs = List.of("put it below forces, map, ruler or another picture");
        mistakes.add(
            new Result.Mistaken(
                new Problem(Problem.Kind.SYNTAX, sentence, source, figure.span(), repairs)));
      }
    }
    return mistakes;
  }

  /** Whether the statement draws what can have a number and a caption. */
  static boolean isPicture(Statement statement) {
    boolean scale =
        statement instanceof Statement.Contrast
            || statement instanceof Statement.Near
            || statement instanceof Statement.Picture;
    boolean forces = statement instanceof Statement.Forces || statement instanceof Statement.Pairs;
    boolean field =
        statement instanceof FieldStatement
            && !(statement instanceof FieldStatement.Declared)
            && !(statement instanceof FieldStatement.Probe);
    boolean data =
        statement instanceof DataStatement
            && !(statement instanceof DataStatement.Table)
            && !(statement instanceof DataStatement.Statistics);
    return scale || forces || field || data;
  }

  /** The number of a figure that a sentence names. */
  static int number(Statement.Option name, Showing showing) {
    Map<String, Entry> entries = showing.names().entries();
    return Optional.ofNullable(entries.get(key(name)))
        .orElseThrow(() -> unknown(name, entries, showing))
        .figure();
  }

  private static ProblemException unknown(
      Statement.Option name, Map<String, Entry> entries, Showing showing) {
    List<String> figures =
        entries.keySet().stream()
            .filter(Figures::isKey)
            .map(key -> key.substring(KEY.length()))
            .toList();
    List<String> near = Near.to(name.text(), figures, 2);
    List<String> repairs =
        (near.isEmpty() ? figures : near)
            .stream().limit(MOST_REPAIRS).map(figure -> "{figure " + figure + "}").toList();
    String sentence = "I know no figure “" + name.text() + "” in this sheet.";
    return showing.problem(
        Problem.Kind.NAME,
        sentence,
        name.span(),
        repairs.isEmpty()
            ? List.of("on the line after a picture: figure " + name.text() + " \"caption\"")
            : repairs);
  }
}
