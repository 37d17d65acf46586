package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Part;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;

/** The declared forces in each case of a comparison, and what holds of them in all cases. */
final class CaseForces {
  private final Showing showing;
  private final List<Alternative> alternatives;
  private final List<List<BodyForces>> diagrams = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  CaseForces(Showing showing, Statement.Compare compare, List<Alternative> alternatives) {
    this.showing = showing;
    this.alternatives = alternatives;
    try {
      DeclaredBodies bodies = new DeclaredBodies(showing);
      alternatives.forEach(a -> diagrams.add(bodies.all(a.wave(), compare.span())));
    } catch (ProblemException noValue) {
      diagrams.clear();
      notes.add("The forces have no value in every case: " + noValue.problems().get(0).sentence());
    }
  }

  /** Why there are no forces, where there should be some. */
  List<String> notes() {
    return notes;
  }

  /** A row for each force of each body. */
  List<CaseTable.Row> rows() {
    List<CaseTable.Row> rows = new ArrayList<>();
    if (diagrams.isEmpty()) {
      return rows;
    }
    List<BodyForces> first = diagrams.get(0);
    for (int body = 0; body < first.size(); body++) {
      for (int force = 0; force < first.get(body).forces().size(); force++) {
        rows.add(row(body, force));
      }
    }
    return rows;
  }

  private CaseTable.Row row(int body, int force) {
    List<Optional<Quantity>> sizes =
        diagrams.stream()
            .map(all -> Optional.of(all.get(body).forces().get(force).size()))
            .toList();
    BodyForces diagram = diagrams.get(0).get(body);
    BodyForces.Force named = diagram.forces().get(force);
    Expr formula = named.formula();
    Result.Label label =
        new Result.Label(Optional.of(named.label()), Optional.of(formula), diagram.body());
    return new CaseTable.Row(
        label,
        Cases.shown(showing, sizes, new Part.Value(formula, Format.USUAL)),
        Cases.why(formula, sizes, alternatives));
  }

  /** Pairs and what looks like them, in the order of the first case. */
  List<CaseTable.Tie> ties() {
    List<List<Finding>> found =
        diagrams.stream().map(ForcePairs::among).map(CaseForces::told).toList();
    if (found.isEmpty()) {
      return List.of();
    }
    return IntStream.range(0, found.get(0).size())
        .mapToObj(i -> tie(found.stream().map(all -> all.get(i)).toList()))
        .toList();
  }

  /**
   * Which forces are meant does not hang on values, so that each case has the same in this order.
   */
  private static List<Finding> told(List<Finding> findings) {
    List<Finding> told = new ArrayList<>();
    findings.stream().filter(f -> f.kind().isPair()).forEach(told::add);
    findings.stream().filter(f -> f.kind() == Finding.Kind.ALIKE).forEach(told::add);
    return told;
  }

  private static CaseTable.Tie tie(List<Finding> found) {
    return new CaseTable.Tie(found, found.stream().map(CaseForces::isEqual).toList());
  }

  private static boolean isEqual(Finding finding) {
    Finding.Side first = finding.sides().get(0);
    return finding.sides().stream().allMatch(side -> ForcePairs.isEqual(first, side));
  }
}
