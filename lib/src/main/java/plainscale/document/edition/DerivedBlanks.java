package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Outcome;
import plainscale.algebra.Relation;
import plainscale.algebra.Step;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.render.PageWords;
import plainscale.sheet.Result;

/**
 * What is left of a derivation: the relations, the first steps as worked, for each further step a
 * question for its principle (such prompts help to transfer: Atkinson, Renkl and Merrill, Journal
 * of Educational Psychology 95:774, 2003) and a line for its equation, and room for the value.
 */
final class DerivedBlanks {
  private final Task task;
  private final Result.Derived derived;
  private final Derivation derivation;

  DerivedBlanks(Task task, Result.Derived derived) {
    this.task = task;
    this.derived = derived;
    this.derivation = derived.derivation();
  }

  Worksheet worksheet() {
    List<Worksheet> items = new ArrayList<>();
    items.add(new Worksheet.Heading(PageWords.head(derived)));
    int number = 1;
    for (Relation relation : derivation.relations()) {
      items.add(relation(number++, relation));
    }
    if (derived.telling() != Statement.Telling.ANSWER) {
      int shown = task.key().shownSteps(derivation, task.blank());
      for (int i = 0; i < derivation.steps().size(); i++) {
        items.add(step(derivation.steps().get(i), i < shown));
      }
    }
    items.add(answer());
    return new Worksheet.Together(Worksheet.Together.Style.DERIVATION, items);
  }

  private Worksheet relation(int number, Relation relation) {
    List<Piece> pieces = new ArrayList<>(List.of(number(number)));
    boolean hidden = task.hidesRelations() || task.key().isHidden(relation.equation());
    pieces.add(hidden ? Piece.Gap.REST : line(relation.equation()));
    if (!relation.words().isEmpty()) {
      pieces.add(
          hidden ? pieces.size() - 1 : pieces.size(),
          new Piece.Words("  " + relation.words() + "  "));
    }
    return new Worksheet.Text(pieces);
  }

  private Worksheet step(Step step, boolean shown) {
    boolean tells = shown && derived.telling() != Statement.Telling.QUESTIONS;
    boolean leads =
        shown && derived.telling() != Statement.Telling.BOXES && !task.key().isHidden(step.after());
    List<Piece> why =
        tells
            ? List.of(new Piece.Words(PageWords.reason(derived, step)))
            : List.of(new Piece.Words(task.words().say("principle") + " "), Piece.Gap.REST);
    List<Piece> after = List.of(number(step.number()), leads ? line(step.after()) : Piece.Gap.REST);
    return new Worksheet.Together(
        Worksheet.Together.Style.STEP, List.of(new Worksheet.Text(why), new Worksheet.Text(after)));
  }

  private static Piece number(int number) {
    return new Piece.Words("(" + number + ") ");
  }

  private Piece line(Equation equation) {
    return new Piece.Line(equation, derived.writing());
  }

  /** The answer's formula is the last step's result, and stands only where that does. */
  private Worksheet answer() {
    List<Piece> pieces = new ArrayList<>();
    boolean shown =
        task.key().showsAnswer(derivation, task.blank())
            && derived.telling() != Statement.Telling.BOXES
            && derivation.outcome() instanceof Outcome.Solved;
    if (shown) {
      Expr answer = ((Outcome.Solved) derivation.outcome()).answer();
      Expr.Name unknown = new Expr.Name(new Span(0, 0), derivation.unknown());
      pieces.add(line(new Equation(unknown, answer)));
    } else {
      pieces.add(new Piece.Name(derivation.unknown()));
      if (derived.telling() == Statement.Telling.ANSWER) {
        pieces.add(new Piece.Words(" = "));
        pieces.add(Piece.Gap.REST);
      }
    }
    pieces.add(new Piece.Words(" = "));
    derived
        .value()
        .ifPresentOrElse(
            value -> pieces.addAll(Task.asked(value.shown().unit())),
            () -> pieces.add(Piece.Gap.VALUE));
    return new Worksheet.Text(pieces);
  }
}
