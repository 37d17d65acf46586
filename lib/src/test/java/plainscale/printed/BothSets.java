package plainscale.printed;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.printed.Verdict.Outcome;

/**
 * With which set of constants a printed answer comes out: each example that chooses a set is worked
 * with the other one too.
 */
final class BothSets {
  /** Which set gives the printed answer. */
  enum Match {
    BOTH,
    CODATA_ONLY,
    TEXTBOOK_ONLY,
    NEITHER
  }

  private static final Pattern CHOICE = Pattern.compile("(?m)^constants \\w+$");

  private BothSets() {}

  /** For each answer of the examples that choose a set, the set that gives it. */
  static List<Match> of(List<Worked> examples) {
    return examples.stream()
        .map(Worked::example)
        .filter(example -> CHOICE.matcher(example.cell()).find())
        .flatMap(BothSets::matches)
        .toList();
  }

  private static Stream<Match> matches(PrintedExample example) {
    List<Boolean> codata = printed(example, "codata");
    List<Boolean> textbook = printed(example, "textbook");
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < codata.size(); i++) {
      matches.add(match(codata.get(i), textbook.get(i)));
    }
    return matches.stream();
  }

  private static Match match(boolean codata, boolean textbook) {
    if (codata) {
      return textbook ? Match.BOTH : Match.CODATA_ONLY;
    }
    return textbook ? Match.TEXTBOOK_ONLY : Match.NEITHER;
  }

  private static List<Boolean> printed(PrintedExample example, String set) {
    return Judge.verdicts(
            new PrintedExample(
                example.chapter(),
                example.id(),
                example.title(),
                example.source(),
                CHOICE.matcher(example.cell()).replaceFirst("constants " + set),
                example.answers().stream().map(Answer::withoutNote).toList()))
        .stream()
        .map(verdict -> verdict.outcome() == Outcome.PASS)
        .toList();
  }

  /** The counts in one line. */
  static String line(List<Match> matches) {
    Map<Match, Long> counts =
        matches.stream().collect(groupingBy(match -> match, TreeMap::new, counting()));
    return String.format(
        "With both sets of constants: %d come out as printed, with CODATA only %d, with the textbook's only %d, with neither %d.",
        counts.getOrDefault(Match.BOTH, 0L),
        counts.getOrDefault(Match.CODATA_ONLY, 0L),
        counts.getOrDefault(Match.TEXTBOOK_ONLY, 0L),
        counts.getOrDefault(Match.NEITHER, 0L));
  }
}
