package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Open;
import plainscale.notation.Part;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;

/** Relations, and lines of derivations, that a sentence refers to. */
final class Quotations {
  private final Showing showing;

  Quotations(Showing showing) {
    this.showing = showing;
  }

  /** The relation, if the value in braces is the name of one. */
  Optional<Piece> relation(Part.Value part) {
    if (!(part.value() instanceof Expr.Name name)) {
      return Optional.empty();
    }
    Entry entry = showing.names().entries().get(name.text());
    if (entry == null || !(entry.statement() instanceof Statement.Relation relation)) {
      return Optional.empty();
    }
    if (!part.format().equals(Format.USUAL)) {
      String sentence = "“" + name.text() + "” is a relation, which has no unit and no figures.";
      List<String> repairs = List.of("{" + name.text() + "}");
      throw showing.problem(Problem.Kind.UNIT, sentence, name.span(), repairs);
    }
    Equation equation = new Equation(relation.left(), relation.right());
    return Optional.of(new Piece.Quoted(0, equation, showing.writing()));
  }

  Piece equation(Part.EquationOf part) {
    Derivation derivation = derivation(part.unknown());
    int last = last(derivation);
    if (part.number() > last) {
      String sentence =
          last == 1
              ? "“%s” has one equation, (1).".formatted(part.unknown().text())
              : "“%s” has equations (1) to (%d).".formatted(part.unknown().text(), last);
      throw showing.problem(Problem.Kind.VALUE, sentence, part.span(), List.of());
    }
    Equation equation = derivation.equation(part.number());
    return new Piece.Quoted(part.number(), equation, showing.writing());
  }

  private static int last(Derivation derivation) {
    return derivation.relations().size() + derivation.steps().size();
  }

  Piece steps(Part.StepsOf part) {
    return new Piece.Words(Integer.toString(derivation(part.unknown()).steps().size()));
  }

  private Derivation derivation(Statement.Option unknown) {
    Entry entry = showing.names().entries().get(unknown.text());
    if (entry == null) {
      Expr.Name name = new Expr.Name(unknown.span(), unknown.text());
      throw UnknownName.problem(
          name, showing.source(), showing.names().entries().keySet(), showing.names().constants());
    }
    if (Open.within(entry.statement()) instanceof Statement.Solve) {
      Blanks.refuse(entry);
    }
    if (!(entry.statement() instanceof Statement.Solve solve)) {
      throw notDerived(unknown);
    }
    return showing.wave().derivations().of(solve, entry.source());
  }

  private ProblemException notDerived(Statement.Option unknown) {
    String name = unknown.text();
    List<String> repairs =
        showing.names().entries().values().stream()
            .filter(entry -> entry.statement() instanceof Statement.Solve)
            .map(Entry::name)
            .limit(4)
            .toList();
    String sentence = "“" + name + "” is not derived from relations, so it has no equations.";
    return showing.problem(
        Problem.Kind.NAME,
        sentence,
        unknown.span(),
        repairs.isEmpty() ? List.of("solve … for " + name) : repairs);
  }
}
