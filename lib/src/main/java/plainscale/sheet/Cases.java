package plainscale.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import plainscale.notation.Case;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Part;
import plainscale.notation.Printer;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** The sheet as it is beside the sheet with changes: cases in columns. */
final class Cases {
  private final Showing showing;
  private final Statement.Compare compare;
  private final List<Alternative> alternatives;
  private final Set<String> changed;
  private final Set<String> notes = new LinkedHashSet<>();

  Cases(Showing showing, Statement.Compare compare) {
    this.showing = showing;
    this.compare = compare;
    this.alternatives =
        compare.cases().stream().map(c -> new Alternative(showing, c.changes())).toList();
    this.changed = Alternative.quantities(alternatives);
  }

  Result compared() {
    List<CaseTable.Row> rows = new ArrayList<>();
    for (Part.Value asked : asked()) {
      rows.add(row(asked));
    }
    CaseForces forces = new CaseForces(showing, compare, alternatives);
    List<CaseTable.Row> sizes = forces.rows();
    List<CaseTable.Tie> ties = forces.ties();
    notes.addAll(forces.notes());
    return new Result.SideBySide(
        new CaseTable(
            compare.cases().stream().map(c -> c.name().text()).toList(),
            changes(),
            relations(),
            rows,
            sizes,
            ties,
            List.copyOf(notes)),
        showing.writing());
  }

  private List<CaseTable.Reworded> changes() {
    List<CaseTable.Reworded> changes = new ArrayList<>();
    for (Case one : compare.cases()) {
      Alternative.written(one.changes())
          .forEach(
              change ->
                  changes.add(
                      new CaseTable.Reworded(
                          one.name().text(), Printer.print(change.left()), change)));
    }
    return changes;
  }

  private List<CaseTable.Reworded> relations() {
    List<CaseTable.Reworded> relations = new ArrayList<>();
    for (int i = 0; i < alternatives.size(); i++) {
      String name = compare.cases().get(i).name().text();
      alternatives
          .get(i)
          .relations()
          .forEach(r -> relations.add(new CaseTable.Reworded(name, r.name(), r.after())));
    }
    return relations;
  }

  /** First what is changed, then what was asked for, else all that the sheet computes. */
  private List<Part.Value> asked() {
    Map<Expr, Part.Value> asked = new LinkedHashMap<>();
    for (Part.Value value : compare.shown()) {
      if (value.value() instanceof Expr.Name name) {
        asked.put(unplaced(name.text()), value);
      } else {
        asked.put(value.value(), value);
      }
    }
    if (compare.shown().isEmpty()) {
      Alternative.computed(showing, compare, changed)
          .forEach(e -> asked.put(e, new Part.Value(e, Format.USUAL)));
    }
    List<Part.Value> all = new ArrayList<>();
    for (String name : changed) {
      Part.Value usual = new Part.Value(new Expr.Name(compare.span(), name), Format.USUAL);
      all.add(Optional.ofNullable(asked.remove(unplaced(name))).orElse(usual));
    }
    all.addAll(asked.values());
    return all;
  }

  private Expr unplaced(String name) {
    return new Expr.Name(compare.span(), name);
  }

  private CaseTable.Row row(Part.Value asked) {
    Expr expr = asked.value();
    showing.value(expr); // what has no value in the sheet itself is a mistake, not an empty place
    List<Optional<Quantity>> values = new ArrayList<>();
    for (int i = 0; i < alternatives.size(); i++) {
      values.add(value(expr, i));
    }
    return new CaseTable.Row(
        showing.label(expr, ""), shown(showing, values, asked), why(expr, values));
  }

  private Optional<Quantity> value(Expr expr, int number) {
    try {
      return Optional.of(alternatives.get(number).after(expr));
    } catch (ProblemException noValue) {
      Case at = compare.cases().get(number);
      notes.add(
          "In “%s”, %s has no value: %s"
              .formatted(
                  at.name().text(), Printer.print(expr), noValue.problems().get(0).sentence()));
      return Optional.empty();
    }
  }

  /** All in the unit of the first, or in the one that was asked for. */
  static List<Optional<Shown>> shown(
      Showing showing, List<Optional<Quantity>> values, Part.Value asked) {
    Format format = asked.format();
    Optional<Quantity> first = values.stream().flatMap(Optional::stream).findFirst();
    if (format.unit().isEmpty() && first.isPresent()) {
      Shown plain = showing.shown(first.get(), format, asked.value().span());
      boolean own = first.get().unit().isPresent();
      Shown best = own ? plain : PrefixedForm.of(plain).orElse(plain);
      format = format.with(best.unit());
    }
    Format chosen = format;
    return values.stream()
        .map(value -> value.map(v -> showing.shown(v, chosen, asked.value().span())))
        .toList();
  }

  private CaseTable.Why why(Expr expr, List<Optional<Quantity>> values) {
    boolean itself = expr instanceof Expr.Name name && changed.contains(name.text());
    return itself ? CaseTable.Why.CHANGED : why(expr, values, alternatives);
  }

  /** Whether an expression has the same value in all cases, and why. */
  static CaseTable.Why why(
      Expr expr, List<Optional<Quantity>> values, List<Alternative> alternatives) {
    boolean same =
        IntStream.range(0, values.size())
            .allMatch(
                i ->
                    values.get(0).isPresent()
                        && values.get(i).isPresent()
                        && Alternative.isSame(values.get(0).get(), values.get(i).get()));
    if (!same) {
      return CaseTable.Why.DIFFERS;
    }
    return alternatives.stream().anyMatch(alternative -> alternative.hangsOn(expr))
        ? CaseTable.Why.CANCELS
        : CaseTable.Why.NOT_CONTAINED;
  }
}
