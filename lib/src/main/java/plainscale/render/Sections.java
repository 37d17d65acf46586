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
