package plainscale.printed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.printed.Answer.Amount;
import plainscale.printed.Answer.Note;

/**
 * Reads files of examples; {@code README.md} beside them describes the lines. What does not fit is
 * refused with its place, so that no example is lost unseen.
 */
final class ExampleReader {
  private static final String INDENT = "  ";

  private final String chapter;
  private String id = "";
  private String title = "";
  private String source = "";
  private final List<String> cell = new ArrayList<>();
  private final List<Answer> answers = new ArrayList<>();

  private ExampleReader(String chapter) {
    this.chapter = chapter;
  }

  /** The examples of all files of a folder, by the names of the files. */
  static List<PrintedExample> all(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".txt"))
          .sorted()
          .flatMap(file -> read(file).stream())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<PrintedExample> read(Path file) {
    String chapter = file.getFileName().toString().replace(".txt", "");
    try {
      return read(chapter, Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The examples of one text. */
  static List<PrintedExample> read(String chapter, String text) {
    return Arrays.stream(text.split("\n\\s*\n"))
        .map(block -> block.lines().filter(line -> !line.startsWith("#")).toList())
        .filter(lines -> !lines.isEmpty())
        .map(lines -> new ExampleReader(chapter).example(lines))
        .toList();
  }

  private PrintedExample example(List<String> lines) {
    for (String line : lines) {
      try {
        take(line);
      } catch (RuntimeException e) {
        throw new IllegalArgumentException(chapter + ", " + id + ": " + line, e);
      }
    }
    if (id.isEmpty() || source.isEmpty() || cell.isEmpty() || answers.isEmpty()) {
      throw new IllegalArgumentException(chapter + ", " + id + " lacks a line in " + lines);
    }
    return new PrintedExample(chapter, id, title, source, String.join("\n", cell), answers);
  }

  private void take(String line) {
    if (line.startsWith(INDENT)) {
      cell.add(line.substring(INDENT.length()));
      return;
    }
    String[] words = line.split(" ", 2);
    String rest = words[1].strip();
    switch (words[0]) {
      case "example" -> name(rest);
      case "source" -> source = rest;
      case "printed" -> answers.add(answer(rest));
      case "note" -> answers.add(answers.remove(answers.size() - 1).with(note(rest)));
      default -> throw new IllegalArgumentException("no such line");
    }
  }

  private void name(String text) {
    String[] parts = text.split(": ", 2);
    id = parts[0];
    title = parts[1];
  }

  private static Answer answer(String text) {
    String[] sides = text.split(" = ", 2);
    return new Answer(sides[0].strip(), Amount.of(sides[1]), Optional.empty());
  }

  private static Note note(String text) {
    String[] parts = text.split(": ", 2);
    return new Note(Amount.of(parts[0]), parts[1]);
  }
}
