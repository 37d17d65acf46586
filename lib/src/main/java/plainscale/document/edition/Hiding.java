package plainscale.document.edition;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import plainscale.document.Blank;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.GuardStatement;
import plainscale.notation.LawStatement;
import plainscale.notation.Line.What;
import plainscale.notation.Measurement;
import plainscale.notation.Open;
import plainscale.notation.Statement;

/**
 * Which parts of a statement a cell leaves to students. What computes from what they put in stays:
 * contrasts, sentences, tables, pictures.
 *
 * @param blank how much the cell leaves blank
 * @param measured whether the cell is for what is measured
 */
record Hiding(Blank blank, boolean measured) implements Statement.Visitor<Set<What>> {
  private static final Set<What> NOTHING = Set.of();
  private static final Set<What> MEASURED = Set.of(What.VALUE, What.UNCERTAINTY, What.CONCISE);

  /** The parts of that statement. */
  Set<What> of(Statement statement) {
    return statement.accept(this);
  }

  private boolean isAtLeast(Blank level) {
    return blank.compareTo(level) >= 0;
  }

  private Set<What> from(Blank level, What what) {
    return isAtLeast(level) ? EnumSet.of(what) : NOTHING;
  }

  /** What was measured is the students' to measure; a value from a book stays while it may. */
  @Override
  public Set<What> given(Statement.Given given) {
    Measurement measurement = given.measurement();
    boolean doubtful = measurement.uncertainty().isPresent() || !measurement.readings().isEmpty();
    boolean own = isAtLeast(Blank.VALUES) && (measured || doubtful);
    return own || isAtLeast(Blank.ALL) ? MEASURED : NOTHING;
  }

  /** Among measurements a number with a name is one of them. */
  @Override
  public Set<What> definition(Statement.Definition definition) {
    return measured && definition.formula() instanceof Expr.Literal
        ? from(Blank.VALUES, What.NUMBER)
        : from(Blank.FORMULAS, What.FORMULA);
  }

  @Override
  public Set<What> show(Statement.Show show) {
    boolean formula = show.bare() && !(show.value() instanceof Expr.Name);
    return formula ? from(Blank.FORMULAS, What.FORMULA) : NOTHING;
  }

  @Override
  public Set<What> relation(Statement.Relation relation) {
    return from(Blank.FORMULAS, What.RELATION);
  }

  @Override
  public Set<What> solve(Statement.Solve solve) {
    return from(Blank.FORMULAS, What.RELATIONS);
  }

  @Override
  public Set<What> forces(Statement.Forces forces) {
    return from(Blank.FORMULAS, What.FORCES);
  }

  @Override
  public Set<What> field(FieldStatement field) {
    return field instanceof FieldStatement.Declared ? from(Blank.ALL, What.SOURCES) : NOTHING;
  }

  /** An author's own blanks stay what they are. */
  @Override
  public Set<What> open(Open open) {
    return open.around().accept(this);
  }

  @Override
  public Set<What> say(Statement.Say say) {
    return NOTHING;
  }

  @Override
  public Set<What> contrast(Statement.Contrast contrast) {
    return NOTHING;
  }

  @Override
  public Set<What> near(Statement.Near near) {
    return NOTHING;
  }

  @Override
  public Set<What> expand(Statement.Expand expand) {
    return NOTHING;
  }

  @Override
  public Set<What> picture(Statement.Picture picture) {
    return NOTHING;
  }

  @Override
  public Set<What> whatIf(Statement.WhatIf whatIf) {
    return NOTHING;
  }

  @Override
  public Set<What> compare(Statement.Compare compare) {
    return NOTHING;
  }

  @Override
  public Set<What> pairs(Statement.Pairs pairs) {
    return NOTHING;
  }

  @Override
  public Set<What> depends(Statement.Depends depends) {
    return NOTHING;
  }

  @Override
  public Set<What> vary(Statement.Vary vary) {
    return NOTHING;
  }

  @Override
  public Set<What> limit(Statement.Limit limit) {
    return NOTHING;
  }

  @Override
  public Set<What> together(Statement.Together together) {
    return NOTHING;
  }

  @Override
  public Set<What> budget(Statement.Budget budget) {
    return NOTHING;
  }

  @Override
  public Set<What> choice(Statement.Choice choice) {
    return NOTHING;
  }

  @Override
  public Set<What> figure(Figure figure) {
    return NOTHING;
  }

  @Override
  public Set<What> guard(GuardStatement guard) {
    return NOTHING;
  }

  @Override
  public Set<What> data(DataStatement data) {
    return NOTHING;
  }

  /** Such a line stays, is left out, or becomes {@link #relation} as a whole. */
  @Override
  public Set<What> law(LawStatement law) {
    return NOTHING;
  }

  /** Whether nothing of a line may stay: of one that cannot be read nobody knows what it tells. */
  boolean leavesOut(Statement statement) {
    return statement instanceof Statement.Unreadable
        || (statement instanceof LawStatement
            && isAtLeast(Blank.FORMULAS)
            && relation(statement).isEmpty());
  }

  /** The name of the relation that students write in the place of a law that would tell it. */
  Optional<String> relation(Statement statement) {
    return isAtLeast(Blank.FORMULAS) && Open.within(statement) instanceof LawStatement.Use use
        ? Optional.of(use.name().text())
        : Optional.empty();
  }

  /** Such a line is left out as a whole. */
  @Override
  public Set<What> unreadable(Statement.Unreadable unreadable) {
    return NOTHING;
  }
}
