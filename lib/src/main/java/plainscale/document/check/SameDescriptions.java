package plainscale.document.check;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.notation.Statement;

/** Quantities that are told apart by their names only. */
record SameDescriptions() implements Rule {
  @Override
  public String name() {
    return "same-description";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    Map<String, String> first = new HashMap<>();
    return lesson.lines().stream().flatMap(line -> check(line, first).stream());
  }

  private Optional<Finding> check(CheckedLesson.Line line, Map<String, String> first) {
    Optional<Described> described = Described.of(line.statement());
    if (described.isEmpty() || described.get().words().isBlank()) {
      return Optional.empty();
    }
    String name = described.get().name();
    String other = first.putIfAbsent(described.get().key(), name);
    if (other == null || other.equals(name)) {
      return Optional.empty();
    }
    String sentence =
        "“%s” describes %s and %s.".formatted(described.get().words().strip(), other, name);
    return Optional.of(
        CheckedLesson.at(line).warning(this, sentence, "say in words how they differ"));
  }

  private record Described(String name, String words) {
    static Optional<Described> of(Statement statement) {
      if (statement instanceof Statement.Given given) {
        return Optional.of(new Described(given.name(), given.description()));
      }
      if (statement instanceof Statement.Definition definition) {
        return Optional.of(new Described(definition.name(), definition.description()));
      }
      return statement instanceof Statement.Solve solve
          ? Optional.of(new Described(solve.unknown(), solve.description()))
          : Optional.empty();
    }

    String key() {
      return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
  }
}
