package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;

/** A heading, tables and sentences, in text and in HTML. */
record Sections(String head, List<List<List<String>>> tables, List<String> sentences) {
  private static final int GAP = 3;

  static Sections of(ForcesText text) {
    return new Sections(text.head(), text.tables(), text.sentences());
  }

  static Sections of(CasesText text) {
    List<List<List<String>>> tables = new ArrayList<>(List.of(text.quantities()));
    if (!text.forces().isEmpty()) {
      tables.add(text.forces());
    }
    return new Sections(String.join(" ", text.relations()), tables, text.sentences());
  }

  /** The lines below the heading. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    tables.forEach(table -> lines.addAll(Columns.lines(table, GAP)));
    lines.addAll(sentences);
    return lines;
  }

  /** The same in pieces: each table in parts of so many rows, and so many sentences at a time. */
  List<Sections> parts(int rows, int lines) {
    boolean brief = tables.stream().mapToInt(List::size).sum() + sentences.size() <= rows;
    if (brief) {
      return isEmpty() ? List.of() : List.of(this);
    }
    List<Sections> parts = new ArrayList<>();
    for (List<List<String>> table : tables) {
      for (List<List<String>> part : split(table, rows)) {
        parts.add(new Sections(head, List.of(part), List.of()));
      }
    }
    for (int from = 0; from < sentences.size(); from += lines) {
      int to = Math.min(sentences.size(), from + lines);
      parts.add(new Sections(head, List.of(), sentences.subList(from, to)));
    }
    return parts;
  }

  private boolean isEmpty() {
    return tables.isEmpty() && sentences.isEmpty();
  }

  /** A table in parts of so many rows, each with the head. */
  static List<List<List<String>>> split(List<List<String>> table, int rows) {
    List<List<List<String>>> parts = new ArrayList<>();
    for (int from = 1; from < table.size(); from += rows) {
      List<List<String>> part = new ArrayList<>(List.of(table.get(0)));
      part.addAll(table.subList(from, Math.min(table.size(), from + rows)));
      parts.add(part);
    }
    return parts;
  }

  String html(Medium medium, String style) {
    return "<div class=\""
        + style
        + "\">"
        + (head.isEmpty() ? "" : "<p><b>" + medium.words().apply(head) + "</b></p>")
        + tables.stream().map(table -> HeadedTable.html(table, medium)).collect(joining())
        + sentences.stream()
            .map(sentence -> "<p>" + medium.words().apply(sentence) + "</p>")
            .collect(joining())
        + "</div>";
  }
}
