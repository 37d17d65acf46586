package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.FieldStatement;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.text.Near;

/** The fields that a sheet declares, as one cell sees them. */
final class DeclaredFields {
  private final Showing showing;

  DeclaredFields(Showing showing) {
    this.showing = showing;
  }

  /** The field of that name; a mistake in another cell is told here. */
  FieldModel of(Statement.Option name) {
    Entry entry = showing.names().entries().get(name.text());
    if (entry != null) {
      Blanks.refuse(entry);
    }
    if (entry == null || !(entry.statement() instanceof FieldStatement.Declared declared)) {
      throw unknown(name, entry != null);
    }
    try {
      return new FieldValues(showing.wave(), entry.source()).model(declared);
    } catch (ProblemException e) {
      Problem root = e.problems().get(0);
      if (e.isBlank() || entry.source().equals(showing.source())) {
        throw e;
      }
      if (root.kind() == Problem.Kind.LIMIT) {
        throw showing.problem(root.kind(), root.sentence(), name.span(), List.of());
      }
      String sentence =
          "The field “%s” has a mistake in another cell: %s"
              .formatted(name.text(), root.sentence());
      throw showing.problem(root.kind(), sentence, name.span(), List.of());
    }
  }

  private ProblemException unknown(Statement.Option name, boolean other) {
    List<String> fields =
        showing.names().entries().values().stream()
            .filter(entry -> entry.statement() instanceof FieldStatement.Declared)
            .map(Entry::name)
            .toList();
    List<String> near = Near.to(name.text(), fields, 2);
    List<String> repairs =
        new ArrayList<>((near.isEmpty() ? fields : near).stream().limit(3).toList());
    if (repairs.isEmpty()) {
      repairs.add("declare one: field " + name.text() + ": charge q at (0 cm, 0 cm)");
    }
    String sentence =
        other
            ? "“%s” is not a field of this sheet.".formatted(name.text())
            : "This sheet has no field “%s”.".formatted(name.text());
    return showing.problem(Problem.Kind.NAME, sentence, name.span(), repairs);
  }
}
