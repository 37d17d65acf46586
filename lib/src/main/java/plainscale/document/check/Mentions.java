package plainscale.document.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.notation.Greek;
import plainscale.notation.Statement;

/** Which lines of a lesson name what. A line or cell that cannot be read names all its words. */
final class Mentions {
  private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");

  private final Map<String, Set<CheckedLesson.Line>> lines = new HashMap<>();
  private final Set<String> unread = new HashSet<>();

  /** The names of a lesson. */
  static Mentions in(CheckedLesson lesson) {
    Mentions mentions = new Mentions();
    for (CheckedLesson.Line line : lesson.lines()) {
      boolean unreadable = line.statement() instanceof Statement.Unreadable;
      (unreadable ? words(line.text()) : line.read().mentions().stream())
          .forEach(name -> mentions.lines.computeIfAbsent(name, n -> new HashSet<>()).add(line));
    }
    lesson
        .code()
        .filter(cell -> lesson.sheet().lines(cell.id()).isEmpty())
        .forEach(cell -> words(cell.source()).forEach(mentions.unread::add));
    return mentions;
  }

  /** The words of a text that could be names, in one form. */
  static Stream<String> words(String text) {
    return WORD.matcher(text).results().map(match -> Greek.normal(match.group()));
  }

  /** Whether a line of that kind names it. */
  boolean any(String name, java.util.function.Predicate<CheckedLesson.Line> kind) {
    return unread.contains(name) || lines.getOrDefault(name, Set.of()).stream().anyMatch(kind);
  }
}
