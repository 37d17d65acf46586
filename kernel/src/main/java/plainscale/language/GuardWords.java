package plainscale.language;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.laws.Hazard;
import plainscale.laws.Hazards;

/** Words of {@code expect} and {@code caution}: where a value should lie, and names of hazards. */
final class GuardWords {
  private static final Pattern IN_CAUTION =
      Pattern.compile("(^|\\n)\\h*caution\\h+(\\w+\\h*,\\h*)*$");
  private static final Pattern AFTER_VALUE =
      Pattern.compile("(^|\\n)\\h*expect\\h+[^\"\\n]*\\S\\h+$");
  private static final List<String> RANGES = List.of("between", "below", "above", "about");
  private static final Pattern WITH_RANGE =
      Pattern.compile("\\b(" + String.join("|", RANGES) + ")\\b[^\\n]*$");

  private GuardWords() {}

  /** The hazards, where their names stand; elsewhere empty. */
  static Optional<List<Completion.Item>> hazards(String prefix, String before) {
    return IN_CAUTION.matcher(before).find()
        ? Optional.of(items(Hazards.names(), prefix, "hazard"))
        : Optional.empty();
  }

  /** The words that begin a range, after a value that is expected somewhere. */
  static List<Completion.Item> ranges(String prefix, String before) {
    boolean asked = AFTER_VALUE.matcher(before).find() && !WITH_RANGE.matcher(before).find();
    return asked ? items(RANGES, prefix, "keyword") : List.of();
  }

  private static List<Completion.Item> items(List<String> words, String prefix, String kind) {
    return words.stream()
        .filter(word -> word.startsWith(prefix))
        .map(word -> new Completion.Item(word, kind))
        .toList();
  }

  /** The cautions of a hazard, for inspection. */
  static Optional<String> inspected(String word) {
    return Hazards.find(word).map(GuardWords::text);
  }

  private static String text(Hazard hazard) {
    Stream<String> head = Stream.of(hazard.name() + ": " + hazard.title());
    Stream<String> end = Stream.of("Source: " + hazard.source(), Hazards.LAST_WORD);
    return String.join(
        "\n", Stream.of(head, hazard.cautions().stream(), end).flatMap(s -> s).toList());
  }
}
