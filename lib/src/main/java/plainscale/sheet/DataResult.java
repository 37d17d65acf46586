package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Equation;
import plainscale.data.Agreement;
import plainscale.data.FitQuality;
import plainscale.data.Histogram;
import plainscale.data.Outliers;
import plainscale.data.Remarks;
import plainscale.data.Weighting;
import plainscale.magnitude.Writing;
import plainscale.notation.DataStatement;
import plainscale.quantity.Shown;
import plainscale.units.UnitOfMeasure;

/** What a statement about the results of a class shows: numbers only, pictures are made of them. */
public sealed interface DataResult extends Result {

  /** Calls the visitor's method for this kind of result. */
  <R> R acceptData(Visitor<R> visitor);

  @Override
  default <R> R accept(Result.Visitor<R> visitor) {
    return visitor.data(this);
  }

  /** A file that was read: its columns, what the reader of the file remarks, and what the sheet. */
  record Listed(
      String file,
      int rows,
      List<Line> columns,
      Remarks remarks,
      List<String> notes,
      Writing writing)
      implements DataResult {
    /** Keeps its own copies of the lists. */
    public Listed {
      columns = List.copyOf(columns);
      notes = List.copyOf(notes);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.listed(this);
    }
  }

  /**
   * A column of a file.
   *
   * @param name what it is called in the sheet, empty if it has no name there
   * @param heading what stands in the file
   * @param values how many values are there
   * @param missing how many rows have none
   * @param numbers what the numbers are; none for a column of words
   */
  record Line(String name, String heading, int values, int missing, Optional<Numbers> numbers) {}

  /** The smallest and the largest number of a column, and the mean. */
  record Numbers(Shown smallest, Shown largest, Shown mean) {}

  /** The statistics of a column. */
  record Described(
      String name,
      int count,
      Left left,
      List<Entry> entries,
      List<Far> far,
      @Nullable Weighted withWeights,
      @Nullable Beside reference,
      Writing writing)
      implements DataResult {
    /** Keeps its own copies of the lists. */
    public Described {
      entries = List.copyOf(entries);
      far = List.copyOf(far);
    }

    /** The weighted mean, if all values have an uncertainty. */
    public Optional<Weighted> weighted() {
      return Optional.ofNullable(withWeights);
    }

    /** The comparison with a reference value, if there is one. */
    public Optional<Beside> beside() {
      return Optional.ofNullable(reference);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.described(this);
    }
  }

  /** Rows that are apart from the others: how many, and the first of them. */
  record Left(int count, List<Integer> rows) {
    /** Keeps its own copy of the rows. */
    public Left {
      rows = List.copyOf(rows);
    }
  }

  /** One number that describes a column; none where the values do not tell it. */
  record Entry(Measure measure, Optional<Shown> value) {}

  /** What a number says of a column. */
  enum Measure {
    MEAN,
    DEVIATION,
    STANDARD,
    MEDIAN,
    LOWER_QUARTILE,
    UPPER_QUARTILE,
    SMALLEST,
    LARGEST
  }

  /** Values far from the others by a rule: its limits, how many there are, the first of them. */
  record Far(Outliers.Rule rule, Shown low, Shown high, int count, List<InRow> first) {
    /** Keeps its own copy of the values. */
    public Far {
      first = List.copyOf(first);
    }
  }

  /** A value and the row in which it stands. */
  record InRow(int row, Shown value) {}

  /** A weighted mean: with the stated uncertainties, with the scatter, and whether they agree. */
  record Weighted(Shown mean, Shown widened, OptionalDouble birge, OptionalDouble probability) {}

  /** A column beside a reference value, with the scores of {@link Agreement}. */
  record Beside(
      String name,
      Shown reference,
      Shown difference,
      OptionalDouble zeta,
      OptionalDouble normalizedError,
      Agreement.Verdict verdict,
      Scores scores) {}

  /** Single results beside the reference: how many agree, which are doubtful, which disagree. */
  record Scores(int agree, List<Score> others, int more) {
    /** Keeps its own copy of the scores. */
    public Scores {
      others = List.copyOf(others);
    }
  }

  /** A single result that lies far from the reference, in standard deviations of the class. */
  record Score(int row, double z) {}

  /** How many values lie where. */
  record Counted(
      String title,
      Side side,
      Histogram histogram,
      int count,
      Shown mean,
      @Nullable Shown reference,
      Writing writing)
      implements DataResult {
    /** The value to compare with. */
    public Optional<Shown> against() {
      return Optional.ofNullable(reference);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.counted(this);
    }
  }

  /** What stands along an axis: a quantity in a unit. */
  record Side(String name, UnitOfMeasure unit) {}

  /** A curve through points. */
  record Fitted(
      String title,
      DataStatement.Curve kind,
      Equation formula,
      List<Parameter> parameters,
      Cloud cloud,
      List<Double> residuals,
      List<Step> curve,
      Goodness goodness,
      Writing writing)
      implements DataResult {
    /** Keeps its own copies of the lists. */
    public Fitted {
      parameters = List.copyOf(parameters);
      residuals = List.copyOf(residuals);
      curve = List.copyOf(curve);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.fitted(this);
    }
  }

  /** A parameter of a curve: its name, what it is, its value. */
  record Parameter(String name, String role, Shown value) {}

  /**
   * How well a curve follows its points.
   *
   * @param deviation the standard deviation of the residuals
   * @param correlation of the two parameters; none if there is one only
   * @param far points whose residual is beyond twice its standard deviation, by row
   */
  record Goodness(
      FitQuality quality,
      Weighting weighting,
      Optional<Shown> deviation,
      OptionalDouble correlation,
      Left far) {}

  /** A place of a curve with its standard uncertainty there, in the units of the axes. */
  record Step(double x, double y, double standard) {}

  /** Points, a curve, or both. */
  record Plotted(
      String title,
      Side across,
      Side up,
      @Nullable Cloud cloud,
      List<Step> curve,
      DataStatement.Logs logs,
      Writing writing)
      implements DataResult {
    /** Keeps its own copy of the curve. */
    public Plotted {
      curve = List.copyOf(curve);
    }

    /** The points, if there are any. */
    public Optional<Cloud> points() {
      return Optional.ofNullable(cloud);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.plotted(this);
    }
  }

  /** One method for each kind of result about data. */
  interface Visitor<R> {
    R listed(Listed listed);

    R described(Described described);

    R counted(Counted counted);

    R fitted(Fitted fitted);

    R plotted(Plotted plotted);
  }
}
