package plainscale.printed;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import plainscale.printed.Verdict.Outcome;

/** How many of the printed answers the project gets, by chapter, with the notes one by one. */
final class Summary {
  private static final String COLUMNS = "%-14s %9s %8s %6s %6s %6s";

  private final List<Worked> examples;

  Summary(List<Worked> examples) {
    this.examples = examples;
  }

  /** The totals in one line. */
  String line() {
    return String.format(
        "Printed examples: %d with %d answers: %d as printed, %d with a note, %d wrong.",
        examples.size(),
        verdicts(examples).count(),
        count(examples, Outcome.PASS),
        count(examples, Outcome.NOTE),
        count(examples, Outcome.FAIL));
  }

  /** Writes a table by chapter, and what is not as printed. */
  void write(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(line());
    lines.add(BothSets.line(BothSets.of(examples)));
    lines.add("");
    lines.add(String.format(COLUMNS, "chapter", "examples", "answers", "PASS", "NOTE", "FAIL"));
    examples.stream()
        .collect(groupingBy(Worked::chapter, TreeMap::new, toList()))
        .forEach((chapter, its) -> lines.add(row(chapter, its)));
    lines.add(row("together", examples));
    lines.add("");
    verdicts(examples)
        .filter(verdict -> verdict.outcome() != Outcome.PASS)
        .forEach(verdict -> lines.add(verdict.line()));
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.write(file, lines);
  }

  private static String row(String chapter, List<Worked> examples) {
    return String.format(
        COLUMNS,
        chapter,
        examples.size(),
        verdicts(examples).count(),
        count(examples, Outcome.PASS),
        count(examples, Outcome.NOTE),
        count(examples, Outcome.FAIL));
  }

  private static Stream<Verdict> verdicts(List<Worked> examples) {
    return examples.stream().flatMap(example -> example.verdicts().stream());
  }

  private static long count(List<Worked> examples, Outcome outcome) {
    return verdicts(examples).filter(verdict -> verdict.outcome() == outcome).count();
  }
}
