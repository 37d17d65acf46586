package plainscale.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.Format;
import plainscale.notation.GuardStatement;
import plainscale.notation.LawStatement;
import plainscale.notation.Open;
import plainscale.notation.Part;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** Turns the statements of one cell into results, with the values of one wave. */
final class Presenter implements Statement.Visitor<Result> {
  private final String cellId;
  private final Showing showing;
  private final Comparisons comparisons;

  Presenter(String cellId, Showing showing) {
    this.cellId = cellId;
    this.showing = showing;
    this.comparisons = new Comparisons(showing);
  }

  /** A line whose name has found another definition since. */
  private Optional<Result> overtaken(String name) {
    Entry entry = showing.names().entries().get(name);
    return entry == null || entry.cellId().equals(cellId)
        ? Optional.empty()
        : Optional.of(
            new Result.Noted(
                "“" + name + "” is defined in another cell now; this line no longer counts."));
  }

  @Override
  public Result given(Statement.Given given) {
    return overtaken(given.name()).orElseGet(() -> valued(given));
  }

  private Result valued(Statement.Given given) {
    Quantity value = showing.value(new Expr.Name(given.span(), given.name()));
    Result.Label label =
        new Result.Label(Optional.of(given.name()), Optional.empty(), Measurements.words(given));
    return new Result.Valued(
        Result.Role.GIVEN, label, value, value.shown(), null, showing.writing());
  }

  @Override
  public Result definition(Statement.Definition definition) {
    return overtaken(definition.name()).orElseGet(() -> valued(definition));
  }

  private Result valued(Statement.Definition definition) {
    Quantity value = showing.value(new Expr.Name(definition.span(), definition.name()));
    Optional<Expr> formula =
        Optional.of(definition.formula())
            .filter(f -> !(f instanceof Expr.Literal)); // the value says it
    Result.Label label =
        new Result.Label(Optional.of(definition.name()), formula, definition.description());
    return valued(Result.Role.DEFINED, label, value, definition.format(), definition.span());
  }

  @Override
  public Result show(Statement.Show show) {
    Quantity value = showing.value(show.value());
    Result.Role role = show.bare() ? Result.Role.VALUE : Result.Role.SHOWN;
    return valued(
        role, showing.label(show.value(), show.description()), value, show.format(), show.span());
  }

  private Result valued(
      Result.Role role, Result.Label label, Quantity value, Format format, Span span) {
    if (format.style() != Format.Style.NUMBER) {
      return new Result.Written(label, showing.number(value, format, span));
    }
    Shown shown = showing.shown(value, format, span);
    boolean asked = format.unit().isPresent() || value.unit().isPresent();
    Shown prefixed = asked ? null : PrefixedForm.of(shown).orElse(null);
    return new Result.Valued(role, label, value, shown, prefixed, showing.writing());
  }

  @Override
  public Result say(Statement.Say say) {
    return new Result.Narrated(say.parts().stream().map(this::piece).toList());
  }

  private Piece piece(Part part) {
    Quotations quotations = new Quotations(showing);
    if (part instanceof Part.Text text) {
      return new Piece.Words(text.text());
    }
    if (part instanceof Part.EquationOf equation) {
      return quotations.equation(equation);
    }
    if (part instanceof Part.FigureOf figure) {
      int number = Figures.number(figure.figure(), showing);
      return new Piece.Words(showing.writing().phrases().say("figure", number));
    }
    if (part instanceof Part.StepsOf steps) {
      return quotations.steps(steps);
    }
    Part.Value value = (Part.Value) part;
    return quotations.relation(value).orElseGet(() -> live(value));
  }

  private Piece.Live live(Part.Value part) {
    Quantity value = showing.value(part.value());
    return new Piece.Live(showing.number(value, part.format(), part.value().span()));
  }

  @Override
  public Result contrast(Statement.Contrast contrast) {
    return comparisons.contrast(contrast);
  }

  @Override
  public Result near(Statement.Near near) {
    return comparisons.near(near);
  }

  @Override
  public Result expand(Statement.Expand expand) {
    return comparisons.expand(expand);
  }

  @Override
  public Result picture(Statement.Picture picture) {
    return comparisons.picture(picture);
  }

  @Override
  public Result relation(Statement.Relation relation) {
    return overtaken(relation.name()).orElseGet(() -> stated(relation));
  }

  private Result stated(Statement.Relation relation) {
    new RelationUnits(showing).refuseDisagreement(relation);
    return new Result.Stated(
        relation.name(),
        new Equation(relation.left(), relation.right()),
        relation.description(),
        showing.writing());
  }

  @Override
  public Result solve(Statement.Solve solve) {
    return overtaken(solve.unknown()).orElseGet(() -> new Solving(showing).solved(solve));
  }

  @Override
  public Result whatIf(Statement.WhatIf whatIf) {
    return new WhatIfs(showing).whatIf(whatIf);
  }

  @Override
  public Result compare(Statement.Compare compare) {
    return new Cases(showing, compare).compared();
  }

  @Override
  public Result forces(Statement.Forces forces) {
    return overtaken(Bodies.key(forces.body().text()))
        .orElseGet(
            () ->
                new Result.Forces(
                    new Forces(showing.wave(), showing.source()).on(forces), showing.writing()));
  }

  @Override
  public Result figure(Figure figure) {
    return overtaken(Figures.key(figure.name()))
        .orElseGet(
            () ->
                new Result.Captioned(
                    Figures.number(figure.name(), showing), figure.caption(), showing.writing()));
  }

  @Override
  public Result pairs(Statement.Pairs pairs) {
    List<String> notes = new ArrayList<>();
    List<BodyForces> bodies = new DeclaredBodies(showing).asked(pairs, notes);
    List<Finding> findings =
        ForcePairs.among(bodies).stream().sorted(Comparator.comparing(Finding::kind)).toList();
    return new Result.Paired(bodies, findings, notes, showing.writing());
  }

  @Override
  public Result field(FieldStatement field) {
    FieldPresenter presenter = new FieldPresenter(showing);
    return field instanceof FieldStatement.Declared declared
        ? overtaken(declared.name()).orElseGet(() -> presenter.declared(declared))
        : field.accept(presenter);
  }

  @Override
  public Result depends(Statement.Depends depends) {
    return new Variations(showing).depends(depends);
  }

  @Override
  public Result vary(Statement.Vary vary) {
    return new Variations(showing).vary(vary);
  }

  @Override
  public Result limit(Statement.Limit limit) {
    return new Limits(showing).limit(limit);
  }

  /** What can be shown of a statement that has no value. */
  Optional<Result> withoutValue(Statement statement) {
    return statement instanceof Statement.Solve solve
        ? new Solving(showing).unsolved(solve)
        : Optional.empty();
  }

  @Override
  public Result together(Statement.Together together) {
    return new Budgeting(showing).together(together, cellId);
  }

  @Override
  public Result budget(Statement.Budget budget) {
    return new Budgeting(showing).budgeted(budget);
  }

  @Override
  public Result choice(Statement.Choice choice) {
    Settings.check(choice, showing.source());
    return new Result.Noted(Settings.words(choice));
  }

  @Override
  public Result law(LawStatement law) {
    return law.acceptLaw(new LawPresenter(showing, this::overtaken));
  }

  @Override
  public Result data(DataStatement data) {
    return data.acceptData(new ClassData(cellId, showing));
  }

  @Override
  public Result open(Open open) {
    return Definitions.name(open)
        .flatMap(this::overtaken)
        .orElseGet(() -> new Unfinished(showing).open(open));
  }

  @Override
  public Result guard(GuardStatement guard) {
    return guard instanceof GuardStatement.Caution caution
        ? Cautions.cautioned(caution, showing)
        : new Expecting(showing, (GuardStatement.Expected) guard).judged();
  }

  @Override
  public Result unreadable(Statement.Unreadable unreadable) {
    return overtaken(unreadable.defines())
        .orElseGet(() -> new Result.Mistaken(unreadable.problem()));
  }
}
