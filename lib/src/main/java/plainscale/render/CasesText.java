package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plainscale.sheet.CaseTable;
import plainscale.sheet.Finding;
import plainscale.sheet.Result;

/** Cases side by side as tables and sentences, the same in every medium. */
final class CasesText {
  private static final Map<CaseTable.Why, String> WHY =
      Map.of(
          CaseTable.Why.CHANGED, "changed",
          CaseTable.Why.DIFFERS, "differs",
          CaseTable.Why.CANCELS, "the same: the change cancels",
          CaseTable.Why.NOT_CONTAINED, "the same: it does not contain the change");

  private final CaseTable table;
  private final Result.SideBySide result;

  CasesText(Result.SideBySide result) {
    this.result = result;
    this.table = result.table();
  }

  /** Which case has which relation in another form. */
  List<String> relations() {
    return table.relations().stream()
        .map(r -> "In “%s”, %s is %s.".formatted(r.inCase(), r.name(), r.equation().text()))
        .toList();
  }

  /** A row for each quantity. */
  List<List<String>> quantities() {
    return rows(table.rows(), "");
  }

  /** A row for each force; no row at all without forces. */
  List<List<String>> forces() {
    return table.forces().isEmpty() ? List.of() : rows(table.forces(), "force");
  }

  private List<List<String>> rows(List<CaseTable.Row> rows, String first) {
    List<List<String>> all = new ArrayList<>();
    all.add(Stream.of(List.of(first), table.cases(), List.of("")).flatMap(List::stream).toList());
    for (CaseTable.Row row : rows) {
      List<String> cells = new ArrayList<>();
      cells.add(first.isEmpty() ? TableText.name(row.label()) : force(row.label()));
      row.values()
          .forEach(v -> cells.add(v.map(s -> ValueText.number(s, result.writing())).orElse("–")));
      cells.add(WHY.getOrDefault(row.why(), ""));
      all.add(cells);
    }
    return all;
  }

  private static String force(Result.Label label) {
    return TableText.name(label) + " on " + Bodies.the(label.description());
  }

  /** What holds of the forces in all cases, and what was without a value. */
  List<String> sentences() {
    return Stream.concat(table.ties().stream().map(this::sentence), table.notes().stream())
        .toList();
  }

  private String sentence(CaseTable.Tie tie) {
    Finding first = tie.found().get(0);
    return first.kind() == Finding.Kind.ALIKE ? alike(first, tie) : pair(first, tie);
  }

  private String pair(Finding first, CaseTable.Tie tie) {
    String label = first.sides().get(0).force().label();
    List<String> broken =
        IntStream.range(0, tie.found().size())
            .filter(i -> tie.found().get(i).kind() != Finding.Kind.PAIR)
            .mapToObj(this::quoted)
            .toList();
    String bodies =
        first.sides().stream().map(s -> Bodies.the(s.body())).collect(joining(" and on "));
    return broken.isEmpty()
        ? "%s on %s: action and reaction, equal and opposite in every case, whatever else differs."
            .formatted(label, bodies)
        : "%s on %s: action and reaction, and so equal and opposite by the third law, but not here in %s: one of the two formulas is wrong."
            .formatted(label, bodies, String.join(", ", broken));
  }

  private String alike(Finding first, CaseTable.Tie tie) {
    String which = Bodies.list(first.sides().stream().map(PairsText::named).toList());
    List<String> unequal =
        IntStream.range(0, tie.equal().size())
            .filter(i -> !tie.equal().get(i))
            .mapToObj(this::quoted)
            .toList();
    return unequal.isEmpty()
        ? "%s: equal in every case, and yet no pair: none is exerted by the other body."
            .formatted(which)
        : "%s: not equal in %s; they are no pair, and no law makes them equal."
            .formatted(which, String.join(", ", unequal));
  }

  private String quoted(int number) {
    return "“" + table.cases().get(number) + "”";
  }
}
