package plainscale.document.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.document.ProseText.Passage;
import plainscale.notation.Statement;
import plainscale.notation.Statement.Definition;
import plainscale.notation.Statement.Solve;

/**
 * Results to which nothing refers: no other line, and no text by their name or by the words that
 * describe them. What follows with a small angle shows by itself how far it misses.
 */
record UnusedResults() implements Rule {
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}]+");
  private static final int SHORTEST_WORD = 4;

  @Override
  public String name() {
    return "unused-result";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    if (lesson.lines().stream().anyMatch(line -> line.read().everything())) {
      return Stream.empty(); // a what-if shows all of them
    }
    Mentions mentions = Mentions.in(lesson);
    List<Text> texts = lesson.said().map(said -> Text.of(said.passage())).toList();
    return lesson.lines().stream()
        .flatMap(
            line ->
                Result.of(line)
                    .filter(result -> !line.isOpen())
                    .filter(result -> !mentions.any(result.name(), result::isUsedBy))
                    .filter(result -> texts.stream().noneMatch(result::standsIn))
                    .map(result -> unused(line, result))
                    .stream());
  }

  private Finding unused(CheckedLesson.Line line, Result result) {
    return CheckedLesson.at(line)
        .warning(
            this,
            "Nothing refers to %s after it is found.".formatted(result.name()),
            "say {%s} in a sentence, set it against another number, or take the line out"
                .formatted(result.name()));
  }

  /** What a line finds; {@code from} are the relations from which it is derived. */
  private record Result(String name, String description, Set<String> from) {
    static Optional<Result> of(CheckedLesson.Line line) {
      Statement statement = line.statement();
      if (statement instanceof Definition definition) {
        return Optional.of(new Result(definition.name(), definition.description(), Set.of()));
      }
      return statement instanceof Solve solve && solve.small().isEmpty()
          ? Optional.of(
              new Result(
                  solve.unknown(),
                  solve.description(),
                  solve.relations().stream()
                      .map(Statement.Option::text)
                      .collect(Collectors.toSet())))
          : Optional.empty();
    }

    /** The relations from which an unknown follows name it, and so does another way to it. */
    boolean isUsedBy(CheckedLesson.Line line) {
      boolean source = line.read().defines().stream().anyMatch(from::contains);
      return !source && !line.read().defines().contains(name);
    }

    boolean standsIn(Text text) {
      Set<String> described = content(description);
      return text.names().contains(name)
          || (!described.isEmpty() && text.content().containsAll(described));
    }
  }

  /** A passage: the names in it, and its longer words. */
  private record Text(Set<String> names, Set<String> content) {
    static Text of(Passage passage) {
      Stream<String> plain = Mentions.words(passage.text()).filter(Text::isNoWordOfALanguage);
      Stream<String> marked = passage.marked().stream().flatMap(Mentions::words);
      return new Text(
          Stream.concat(plain, marked).collect(Collectors.toSet()),
          UnusedResults.content(passage.text()));
    }

    /** “a” and “I” are words too, so a single Latin letter counts where it is marked only. */
    private static boolean isNoWordOfALanguage(String name) {
      return name.length() > 1 || name.charAt(0) > 'z';
    }
  }

  /** The longer words of a text, singular and plural as one. */
  private static Set<String> content(String text) {
    return BETWEEN_WORDS
        .splitAsStream(text.toLowerCase(Locale.ROOT))
        .filter(word -> word.length() >= SHORTEST_WORD)
        .map(word -> word.endsWith("s") ? word.substring(0, word.length() - 1) : word)
        .collect(Collectors.toSet());
  }
}
