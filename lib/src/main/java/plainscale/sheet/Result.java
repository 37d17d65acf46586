package plainscale.sheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.magnitude.Expansion;
import plainscale.magnitude.Landmark;
import plainscale.magnitude.Perspective;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.notation.ScalePicture;
import plainscale.notation.Statement;
import plainscale.picture.Scene;
import plainscale.quantity.Contribution;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/**
 * What a statement shows. Renderers read nothing else; a new kind of result is a new record and a
 * method in each.
 */
public sealed interface Result
    permits Result.Valued,
        Result.Written,
        Result.Contrasted,
        Result.Placed,
        Result.Expanded,
        Result.Pictured,
        Result.Drawn,
        Result.Stated,
        Result.Derived,
        Result.Compared,
        Result.SideBySide,
        Result.Forces,
        Result.Paired,
        Result.Dependence,
        Result.Varied,
        Result.Limited,
        Result.Budgeted,
        Result.Narrated,
        Result.Captioned,
        Result.Noted,
        Result.Unfinished,
        Result.Mistaken,
        Result.Printed,
        Result.Failed,
        FieldResult,
        DataResult,
        GuardResult,
        LawResult {

  /** Calls the visitor's method for this kind of result. */
  <R> R accept(Visitor<R> visitor);

  /** A quantity: a given as written, a definition with its formula, or a value to show. */
  record Valued(
      Role role,
      Label label,
      Quantity quantity,
      Shown shown,
      @Nullable Shown otherwise,
      Writing writing)
      implements Result {
    /** The same with an SI prefix, where that reads better. */
    public Optional<Shown> prefixed() {
      return Optional.ofNullable(otherwise);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.valued(this);
    }
  }

  /** A number written out in a form that was asked for: digits, words, a share, roughly. */
  record Written(Label label, Numeral numeral) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.written(this);
    }
  }

  /**
   * Two to six numbers set against each other, in the same unit, with the ratio of the largest to
   * the smallest and, where one helps, a line of perspective on the ratio.
   */
  record Contrasted(
      String title,
      List<Side> sides,
      Shown times,
      Ratio ratio,
      @Nullable Perspective line,
      Set<Remark> remarks,
      Writing writing)
      implements Result {
    /** Keeps its own copy of the sides. */
    public Contrasted {
      sides = List.copyOf(sides);
      remarks = Set.copyOf(remarks);
    }

    /** What a reader should know about the comparison. */
    public enum Remark {
      /** Signs were left out. */
      SIZES,
      /** The ratio may be one. */
      EQUAL,
      /** The ratio is hardly known. */
      UNCERTAIN,
      /** The rule of perspective that was asked for does not fit. */
      RULE
    }

    /** Whether they are plain numbers, things that can be counted one by one. */
    public boolean counts() {
      return sides.get(0).shown().unit().equals(UnitOfMeasure.ONE);
    }

    /** The line of perspective: on the largest of counts, on the ratio of other quantities. */
    public Optional<Perspective> perspective() {
      return Optional.ofNullable(line);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.contrasted(this);
    }
  }

  /** A number between the landmarks of its kind, each list with the nearest first. */
  record Placed(Side side, List<Neighbour> below, List<Neighbour> above, Writing writing)
      implements Result {
    /** Keeps its own copies of the lists. */
    public Placed {
      below = List.copyOf(below);
      above = List.copyOf(above);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.placed(this);
    }
  }

  /** The steps from a power of ten to digits and words; with boxes, they are to be filled in. */
  record Expanded(Side side, Expansion expansion, boolean boxes, Writing writing)
      implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.expanded(this);
    }
  }

  /**
   * A picture of scale: one to six numbers in one unit, and landmarks of their kind where the
   * picture has room for them.
   */
  record Pictured(
      ScalePicture drawing,
      String title,
      List<Side> sides,
      List<Side> landmarks,
      @Nullable Ratio outermost,
      Writing writing)
      implements Result {
    /** The ratio of the largest to the smallest, if there are two or more. */
    public Optional<Ratio> ratio() {
      return Optional.ofNullable(outermost);
    }

    /** Keeps its own copies of the lists. */
    public Pictured {
      sides = List.copyOf(sides);
      landmarks = List.copyOf(landmarks);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pictured(this);
    }
  }

  /** A picture that a program has made; no statement of the notation does. */
  record Drawn(Scene scene) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.drawn(this);
    }
  }

  /** A relation by its name. */
  record Stated(String name, Equation equation, String description, Writing writing)
      implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stated(this);
    }
  }

  /**
   * An unknown derived from relations, and, where it has one, its value: the answer with the values
   * put in, what came out, and what makes it uncertain.
   */
  record Derived(
      Derivation derivation,
      String description,
      Statement.Telling telling,
      @Nullable Evaluated number,
      Writing writing)
      implements Result {
    /** The value of the unknown. */
    public Optional<Evaluated> value() {
      return Optional.ofNullable(number);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.derived(this);
    }
  }

  /**
   * Values before and after a change; {@code changes} are the names that were changed and what they
   * are instead, as it was written, {@code relations} the relations that were changed.
   */
  record Compared(List<Equation> changes, List<Reworded> relations, List<Row> rows, Writing writing)
      implements Result {
    /** Keeps its own copies of the lists. */
    public Compared {
      changes = List.copyOf(changes);
      relations = List.copyOf(relations);
      rows = List.copyOf(rows);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.compared(this);
    }
  }

  /** Several cases side by side. */
  record SideBySide(CaseTable table, Writing writing) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sideBySide(this);
    }
  }

  /** The forces on a body, their sum, and whether they balance. */
  record Forces(BodyForces diagram, Writing writing) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.forces(this);
    }
  }

  /** Which forces are action and reaction, and which are not; {@code notes} on what is left out. */
  record Paired(
      List<BodyForces> bodies, List<Finding> findings, List<String> notes, Writing writing)
      implements Result {
    /** Keeps its own copies of the lists. */
    public Paired {
      bodies = List.copyOf(bodies);
      findings = List.copyOf(findings);
      notes = List.copyOf(notes);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.paired(this);
    }
  }

  /**
   * How one quantity follows another: by a power law with that exponent, or, where it is none, by
   * {@code local} per cent for each per cent; {@code twice} is the factor for twice as much (not a
   * number if it has no value there).
   */
  record Dependence(Label label, String on, Optional<Fraction> exponent, double local, double twice)
      implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dependence(this);
    }
  }

  /** A table: a name takes values, and what follows from each; an empty place has no value. */
  record Varied(List<Label> head, List<List<Optional<Shown>>> rows, Writing writing)
      implements Result {
    /** Keeps its own copies of the lists. */
    public Varied {
      head = List.copyOf(head);
      rows = rows.stream().map(List::copyOf).toList();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.varied(this);
    }
  }

  /**
   * What comes of a name ever nearer to {@code to}, from above or below, or, without it, ever
   * larger: the rows, and one ending for each quantity.
   */
  record Limited(Varied table, String name, @Nullable Shown to, boolean above, List<Ending> endings)
      implements Result {
    /** Keeps its own copy of the endings. */
    public Limited {
      endings = List.copyOf(endings);
    }

    /** What the name comes near to; none if it grows without end. */
    public Optional<Shown> goal() {
      return Optional.ofNullable(to);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.limited(this);
    }
  }

  /** What makes a quantity uncertain. */
  record Budgeted(Label label, Shown shown, Account account, Writing writing) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.budgeted(this);
    }
  }

  /** A text with live values. */
  record Narrated(List<Piece> pieces) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.narrated(this);
    }
  }

  /** The number and the caption of the picture before it. */
  record Captioned(int number, String caption, Writing writing) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.captioned(this);
    }
  }

  /** A remark of the sheet about what it did. */
  record Noted(String remark) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.noted(this);
    }
  }

  /**
   * A line with that many blanks for students to fill in, or, with none of its own, one that waits
   * for the blanks of other lines: nothing is wrong, and the sentence says what is asked for.
   */
  record Unfinished(String sentence, int blanks) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unfinished(this);
    }
  }

  /** What is wrong. */
  record Mistaken(Problem problem) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.mistaken(this);
    }
  }

  /** What a cell in another language printed, or a value in its own words. */
  record Printed(String text, boolean error) implements Result {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.printed(this);
    }
  }

  /**
   * A cell in another language stopped at a mistake: what kind it is, and the lines that tell it,
   * the sentence first.
   */
  record Failed(String name, List<String> lines) implements Result {
    /** Keeps its own copy of the lines. */
    public Failed {
      lines = List.copyOf(lines);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.failed(this);
    }
  }

  /** Whether it tells that something is wrong. */
  default boolean isMistake() {
    return this instanceof Mistaken || this instanceof Failed;
  }

  /** What a quantity is in its sheet. */
  enum Role {
    GIVEN,
    DEFINED,
    SHOWN,
    /** The value of an expression that stands alone on its line. */
    VALUE
  }

  /**
   * What stands left of a value: a name, a formula, a description in words; each may be missing.
   */
  record Label(Optional<String> name, Optional<Expr> formula, String description) {}

  /** One side of a contrast; {@code exact} if no figure of it is a matter of rounding. */
  record Side(Label label, Shown shown, boolean exact) {}

  /** A landmark in the unit of the number beside it, and by which factor they differ. */
  record Neighbour(Side side, Ratio ratio, Landmark landmark) {}

  /**
   * The value of an answer: the answer with values in place of the names, the result, the same with
   * a prefix, and the shares of its uncertainty.
   */
  record Evaluated(
      @Nullable Expr withValues,
      List<String> notes,
      Shown shown,
      @Nullable Shown otherwise,
      List<Contribution> budget) {
    /** Keeps its own copies of the lists. */
    public Evaluated {
      notes = List.copyOf(notes);
      budget = List.copyOf(budget);
    }

    /** The answer with values in place of the names, if there is a closed form. */
    public Optional<Expr> inserted() {
      return Optional.ofNullable(withValues);
    }

    /** The same with an SI prefix, where that reads better. */
    public Optional<Shown> prefixed() {
      return Optional.ofNullable(otherwise);
    }
  }

  /** A relation before and after a change. */
  record Reworded(String name, Equation before, Equation after) {}

  /** A value before and after a change, by which factor it changed, and why. */
  record Row(Label label, Shown before, Shown after, Optional<BigDecimal> factor, Why why) {
    /** Why a value is what it is after the change. */
    public enum Why {
      /** It was changed. */
      CHANGED,
      /** It follows from what was changed. */
      FOLLOWS,
      /** It hangs on what was changed, which cancels. */
      CANCELS,
      /** It does not contain what was changed. */
      NOT_CONTAINED
    }
  }

  /**
   * A number in a form: rounded to the figures that it keeps, unrounded for a form that rounds by
   * itself, whether it is exact, {@code figures} if so many were asked for (else 0).
   */
  record Numeral(
      Shown shown,
      BigDecimal unrounded,
      boolean exact,
      int figures,
      Format.Style style,
      Writing writing) {}

  /** One method for each kind of result. */
  interface Visitor<R> {
    R valued(Valued valued);

    R written(Written written);

    R contrasted(Contrasted contrasted);

    R stated(Stated stated);

    R derived(Derived derived);

    R compared(Compared compared);

    R sideBySide(SideBySide sideBySide);

    R forces(Forces forces);

    R paired(Paired paired);

    R field(FieldResult field);

    R dependence(Dependence dependence);

    R varied(Varied varied);

    R limited(Limited limited);

    R budgeted(Budgeted budgeted);

    R placed(Placed placed);

    R expanded(Expanded expanded);

    R pictured(Pictured pictured);

    R drawn(Drawn drawn);

    R narrated(Narrated narrated);

    R captioned(Captioned captioned);

    R data(DataResult data);

    R guard(GuardResult guard);

    R law(LawResult law);

    R noted(Noted noted);

    R unfinished(Unfinished unfinished);

    R mistaken(Mistaken mistaken);

    R printed(Printed printed);

    R failed(Failed failed);
  }
}
