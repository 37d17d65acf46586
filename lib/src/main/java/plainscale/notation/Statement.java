package plainscale.notation;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One statement of a cell. */
public sealed interface Statement
    permits Statement.Given,
        Statement.Definition,
        Statement.Show,
        Statement.Say,
        Statement.Contrast,
        Statement.Near,
        Statement.Expand,
        Statement.Picture,
        Statement.Relation,
        Statement.Solve,
        Statement.WhatIf,
        Statement.Compare,
        Statement.Forces,
        Statement.Pairs,
        Statement.Depends,
        Statement.Vary,
        Statement.Limit,
        Statement.Together,
        Statement.Budget,
        Statement.Choice,
        Statement.Unreadable,
        Open,
        Figure,
        FieldStatement,
        DataStatement,
        GuardStatement,
        LawStatement {

  /** Where it stands. */
  Span span();

  /** Calls the visitor's method for this kind of statement. */
  <R> R accept(Visitor<R> visitor);

  /**
   * {@code given m = 2.70 ± 0.05 g "mass"}; {@code together} are the names of the givens of its
   * cell whose readings belong to its own, itself included, if there are any.
   */
  record Given(
      Span span, String name, Measurement measurement, String description, List<String> together)
      implements Statement {
    /** Keeps its own copy of the names. */
    public Given {
      together = List.copyOf(together);
    }

    /** A given that stands for itself. */
    public Given(Span span, String name, Measurement measurement, String description) {
      this(span, name, measurement, description, List.of());
    }

    /** The same with readings that belong to those of others. */
    public Given with(List<String> others) {
      return new Given(span, name, measurement, description, others);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.given(this);
    }
  }

  /** {@code q = d sqrt(…) "charge"}. */
  record Definition(Span span, String name, Expr formula, Format format, String description)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.definition(this);
    }
  }

  /** {@code show q in nC to 2 figures "charge"}; {@code bare}: an expression alone on its line. */
  record Show(Span span, Expr value, Format format, String description, boolean bare)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.show(this);
    }
  }

  /** {@code say "Rubbing moved {n in words} electrons."}. */
  record Say(Span span, List<Part> parts) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.say(this);
    }
  }

  /**
   * {@code contrast a with b by counting "what for"}: two to six quantities; the same unit for all
   * if one is asked for; {@code by} names the rule of the line of perspective.
   */
  record Contrast(
      Span span, List<Expr> sides, Format format, @Nullable Option by, String description)
      implements Statement {
    /** The rule of the line of perspective, if one is asked for. */
    public Optional<Option> rule() {
      return Optional.ofNullable(by);
    }

    /** Keeps its own copy of the sides. */
    public Contrast {
      sides = List.copyOf(sides);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.contrast(this);
    }
  }

  /** {@code near q}: the landmarks below and above a quantity. */
  record Near(Span span, Expr value, Format format, String description) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.near(this);
    }
  }

  /**
   * {@code expand n with boxes}: the steps from a power of ten to digits and words; with {@code
   * boxes} they are left to be filled in.
   */
  record Expand(Span span, Expr value, Format format, boolean boxes, String description)
      implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.expand(this);
    }
  }

  /** {@code ruler a with b}, {@code squares a with b}, {@code dots a}: a picture of scale. */
  record Picture(
      Span span, ScalePicture drawing, List<Expr> sides, Format format, String description)
      implements Statement {
    /** Keeps its own copy of the sides. */
    public Picture {
      sides = List.copyOf(sides);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.picture(this);
    }
  }

  /** {@code relation level: k_e q^2/d^2 = T sin(θ) "push = pull"}: an equation with a name. */
  record Relation(
      Span span, String name, Expr left, Expr right, String description, @Nullable Origin from)
      implements Statement {
    /** A relation that was written out. */
    public Relation(Span span, String name, Expr left, Expr right, String description) {
      this(span, name, left, right, description, null);
    }

    /** The law that it comes from, if it was not written out. */
    public Optional<Origin> origin() {
      return Optional.ofNullable(from);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.relation(this);
    }
  }

  /**
   * {@code solve level, upright for q}: defines the unknown by deriving it from relations; how much
   * of the steps is shown is {@code telling}; the {@code bounds} say which of several answers is
   * meant.
   */
  record Solve(
      Span span,
      List<Option> relations,
      String unknown,
      Format format,
      Telling telling,
      @Nullable Option smallAngle,
      List<Bound> bounds,
      String description)
      implements Statement {
    /** Keeps its own copies of the lists. */
    public Solve {
      relations = List.copyOf(relations);
      bounds = List.copyOf(bounds);
    }

    /** The angle that is taken to be small: sin θ ≈ tan θ ≈ θ, cos θ ≈ 1. */
    public Optional<Option> small() {
      return Optional.ofNullable(smallAngle);
    }

    /** The same without the approximation. */
    public Solve exactly() {
      return new Solve(span, relations, unknown, format, telling, null, bounds, description);
    }

    /** The same relations solved for another of their quantities. */
    public Solve turnedTo(String other) {
      return new Solve(span, relations, other, Format.USUAL, Telling.ANSWER, null, List.of(), "");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.solve(this);
    }
  }

  /** {@code what if m = 2*m, s = 1 m show q, θ}: results with some names changed. */
  record WhatIf(Span span, List<Change> changes, List<Expr> shown) implements Statement {
    /** Keeps its own copies of the lists. */
    public WhatIf {
      changes = List.copyOf(changes);
      shown = List.copyOf(shown);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.whatIf(this);
    }
  }

  /** {@code compare "now" with "twice": m = 2*m show q}: cases side by side. */
  record Compare(Span span, List<Case> cases, List<Part.Value> shown) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.compare(this);
    }
  }

  /** {@code forces on "ball": weight m g_n down by "Earth"}: what acts on a body. */
  record Forces(
      Span span,
      Option body,
      @Nullable Option mirrored,
      @Nullable Expr slope,
      List<Acting> acting,
      ForcesEdition edition)
      implements Statement {
    /** Keeps its own copy of the forces. */
    public Forces {
      acting = List.copyOf(acting);
    }

    /** The body whose mirror image this one is; then it has no forces of its own. */
    public Optional<Option> mirrors() {
      return Optional.ofNullable(mirrored);
    }

    /** The angle of the slope on which the body stands, if that was said. */
    public Optional<Expr> onSlope() {
      return Optional.ofNullable(slope);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.forces(this);
    }
  }

  /** {@code pairs "left ball", "right ball"}: which forces belong together; no body means all. */
  record Pairs(Span span, List<Option> bodies) implements Statement {
    /** Keeps its own copy of the bodies. */
    public Pairs {
      bodies = List.copyOf(bodies);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pairs(this);
    }
  }

  /** {@code depends q on d}: how one quantity follows another. */
  record Depends(Span span, Expr value, Option on) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.depends(this);
    }
  }

  /** {@code vary d from 8 cm to 40 cm by 4 cm show q in nC}: a table of values. */
  record Vary(
      Span span, Option name, Expr from, Expr to, @Nullable Expr step, List<Part.Value> shown)
      implements Statement {
    /** Keeps its own copy of the list. */
    public Vary {
      shown = List.copyOf(shown);
    }

    /** From row to row; none if it was not said. */
    public Optional<Expr> by() {
      return Optional.ofNullable(step);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.vary(this);
    }
  }

  /** {@code limit θ to 90° show T}: what comes of a name ever nearer to a value, or ever larger. */
  record Limit(Span span, Option name, @Nullable Expr to, List<Part.Value> shown)
      implements Statement {
    /** Keeps its own copy of the list. */
    public Limit {
      shown = List.copyOf(shown);
    }

    /** What the name comes near to; none if it grows without end. */
    public Optional<Expr> goal() {
      return Optional.ofNullable(to);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.limit(this);
    }
  }

  /** {@code together V, I, φ}: the readings of these givens belong together, one by one. */
  record Together(Span span, List<Option> names) implements Statement {
    /** Keeps its own copy of the names. */
    public Together {
      names = List.copyOf(names);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.together(this);
    }
  }

  /**
   * {@code budget q with 100000 trials seed 7 "charge"}: what makes a quantity uncertain, and, if
   * trials are asked for, what comes of drawing all its sources at random.
   */
  record Budget(Span span, Expr value, Format format, @Nullable Trials with, String description)
      implements Statement {
    /** The trials that are asked for. */
    public Optional<Trials> trials() {
      return Optional.ofNullable(with);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.budget(this);
    }
  }

  /** How many trials, and where their random numbers begin. */
  record Trials(int count, long seed) {
    /** The fewest trials whose limits of 95 % mean something. */
    public static final int FEWEST = 100;

    /** The most trials of one statement. */
    public static final int MOST = 1_000_000;

    /** The seed if none is written. */
    public static final long SEED = 1;

    /** The largest seed. */
    public static final long LARGEST_SEED = 999_999_999;
  }

  /** How much of a derivation is told. */
  enum Telling {
    /** Every step with its reason. */
    STEPS,
    /** The answer; the steps can be opened where the medium can do that. */
    ANSWER,
    /** The reasons; what they lead to is left to be filled in. */
    BOXES,
    /** What each step leads to; which principle does it is asked. */
    QUESTIONS
  }

  /** {@code constants textbook}, {@code locale de-CH}: a choice for the whole sheet. */
  record Choice(Span span, Setting setting, Option option) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.choice(this);
    }
  }

  /** A line that cannot be read; {@code defines} is the name that it seems to define, or empty. */
  record Unreadable(Span span, String defines, Problem problem) implements Statement {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unreadable(this);
    }
  }

  /** A word that chooses something, and where it stands. */
  record Option(Span span, String text) {}

  /** What a sheet can be told once for all its cells. */
  enum Setting {
    /** The set of constants. */
    CONSTANTS,
    /** The language and the digits of the reader. */
    LOCALE,
    /** The names of powers of ten. */
    SCALE,
    /** How digits are grouped. */
    DIGITS,
    /** What is meant by an order of magnitude. */
    ORDERS
  }

  /** One method for each kind of statement. */
  interface Visitor<R> {
    R given(Given given);

    R definition(Definition definition);

    R show(Show show);

    R say(Say say);

    R contrast(Contrast contrast);

    R near(Near near);

    R expand(Expand expand);

    R picture(Picture picture);

    R relation(Relation relation);

    R solve(Solve solve);

    R whatIf(WhatIf whatIf);

    R compare(Compare compare);

    R forces(Forces forces);

    R pairs(Pairs pairs);

    R field(FieldStatement field);

    R depends(Depends depends);

    R vary(Vary vary);

    R limit(Limit limit);

    R together(Together together);

    R budget(Budget budget);

    R choice(Choice choice);

    R figure(Figure figure);

    R data(DataStatement data);

    R open(Open open);

    R guard(GuardStatement guard);

    R law(LawStatement law);

    R unreadable(Unreadable unreadable);
  }
}
