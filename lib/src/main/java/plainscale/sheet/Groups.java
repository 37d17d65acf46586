package plainscale.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;

/** Readings of one cell that belong together: which may, and what is in the way. */
final class Groups {
  private final Map<String, Entry> entries;

  /** Among these names. */
  Groups(Map<String, Entry> entries) {
    this.entries = entries;
  }

  /** Tells the givens of a cell, which these names are, with whom they belong together. */
  void join(List<Statement> statements) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.Together together && fault(together, "").isEmpty()) {
        together.names().forEach(name -> join(name.text(), names(together)));
      }
    }
  }

  private void join(String name, List<String> names) {
    entries.computeIfPresent(
        name,
        (same, entry) -> {
          Statement.Given given = (Statement.Given) entry.statement();
          return new Entry(name, entry.cellId(), entry.source(), given.with(names));
        });
  }

  private static List<String> names(Statement.Together together) {
    return together.names().stream().map(Statement.Option::text).toList();
  }

  /** Refuses readings that cannot belong together. */
  void check(Statement.Together together, String source) {
    Optional<ProblemException> fault = fault(together, source);
    if (fault.isPresent()) {
      throw fault.get();
    }
  }

  private Optional<ProblemException> fault(Statement.Together together, String source) {
    Statement.Option first = together.names().get(0);
    for (Statement.Option name : together.names()) {
      Entry entry = entries.get(name.text());
      if (entry != null && entry.statement() instanceof Open) {
        return Optional.of(Blanks.problem(entry));
      }
      int count = count(name.text());
      if (count == 0) {
        String sentence = "“%s” is not a given with readings of this cell.".formatted(name.text());
        String repair = "given %s = 5.007, 4.994, 5.005 [unit]".formatted(name.text());
        return Optional.of(problem(sentence, source, name.span(), List.of(repair)));
      }
      if (count != count(first.text())) {
        String sentence =
            "Readings belong together one by one; here are %d of %s and %d of %s."
                .formatted(count(first.text()), first.text(), count, name.text());
        return Optional.of(problem(sentence, source, name.span(), List.of()));
      }
    }
    return Optional.empty();
  }

  private int count(String name) {
    Entry entry = entries.get(name);
    return entry != null && entry.statement() instanceof Statement.Given given
        ? given.measurement().readings().size()
        : 0;
  }

  private static ProblemException problem(
      String sentence, String source, Span span, List<String> repairs) {
    return new ProblemException(new Problem(Problem.Kind.VALUE, sentence, source, span, repairs));
  }

  /** The givens with which a given's readings belong together, as they stand in its cell now. */
  List<Statement.Given> with(Statement.Given given) {
    return given.together().stream()
        .flatMap(name -> Optional.ofNullable(entries.get(name)).stream())
        .map(Entry::statement)
        .filter(Statement.Given.class::isInstance)
        .map(Statement.Given.class::cast)
        .filter(other -> other.together().equals(given.together()))
        .collect(Collectors.toUnmodifiableList());
  }
}
