package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A statement about the results of a class: tables, their statistics, fits and plots. */
public sealed interface DataStatement extends Statement {

  /** Calls the visitor's method for this kind of statement about data. */
  <R> R acceptData(Visitor<R> visitor);

  /** What it defines, each with what the sheet says of it in words. */
  default List<Named> named() {
    return List.of();
  }

  @Override
  default <R> R accept(Statement.Visitor<R> visitor) {
    return visitor.data(this);
  }

  /** A name of the sheet that a statement about data defines. */
  record Named(String name, String description) {}

  /**
   * {@code data "class.csv" as d_c, q_c}: every column of numbers becomes a name.
   *
   * @param names what columns of numbers are called here, in their order; the others keep their
   *     names
   * @param named the columns that have a name once the file is read, before that none
   * @param content tells whether the file is still the one that was read
   */
  record Table(Span span, Option file, List<Option> names, List<Named> named, long content)
      implements DataStatement {
    /** Keeps its own copies of the names. */
    public Table {
      names = List.copyOf(names);
      named = List.copyOf(named);
    }

    /** A table that is not read yet. */
    public Table(Span span, Option file, List<Option> names) {
      this(span, file, names, List.of(), 0);
    }

    /** The same after its file was read. */
    public Table read(List<Named> columns, long contentRead) {
      return new Table(span, file, names, columns, contentRead);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.table(this);
    }
  }

  /** {@code statistics d against 14.2 cm}: a column alone, or beside a reference value. */
  record Statistics(Span span, Option column, @Nullable Expr reference) implements DataStatement {
    /** The value to compare with. */
    public Optional<Expr> against() {
      return Optional.ofNullable(reference);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.statistics(this);
    }
  }

  /** {@code histogram d against 14.2 cm "title"}. */
  record Histogram(Span span, Option column, @Nullable Expr reference, String title)
      implements DataStatement {
    /** The value to compare with. */
    public Optional<Expr> against() {
      return Optional.ofNullable(reference);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.histogram(this);
    }
  }

  /** {@code fit line U against I as R, U_0 with weights y "title"}. */
  record Fit(
      Span span, Curve curve, Option y, Option x, List<Option> names, Weights weights, String title)
      implements DataStatement {
    /** Keeps its own copy of the names. */
    public Fit {
      names = List.copyOf(names);
    }

    @Override
    public List<Named> named() {
      return names.stream().map(this::named).toList();
    }

    private Named named(Option name) {
      String role = curve.roles().get(names.indexOf(name));
      String points = "%s against %s".formatted(y.text(), x.text());
      return new Named(name.text(), "%s, from the fit of %s".formatted(role, points));
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.fit(this);
    }
  }

  /**
   * {@code plot q against d}: the points of two columns; with {@code from 8 cm to 40 cm}: what the
   * sheet says of q for each d, and the points of two columns beside it if {@code with points q_c
   * against d_c} asks for them.
   */
  record Plot(
      Span span,
      Part.Value y,
      Option x,
      @Nullable Range range,
      @Nullable Pair pair,
      Logs logs,
      String title)
      implements DataStatement {
    /** From where to where the curve goes; none for points alone. */
    public Optional<Range> along() {
      return Optional.ofNullable(range);
    }

    /** The points beside the curve. */
    public Optional<Pair> points() {
      return Optional.ofNullable(pair);
    }

    @Override
    public <R> R acceptData(Visitor<R> visitor) {
      return visitor.plot(this);
    }
  }

  /** From a value to another. */
  record Range(Expr from, Expr to) {}

  /** Two columns. */
  record Pair(Option y, Option x) {}

  /** Which axes are logarithmic. */
  record Logs(boolean x, boolean y) {
    /** None. */
    public static final Logs NONE = new Logs(false, false);
  }

  /** The curves that can be fitted, with what their parameters are, in the order of {@code as}. */
  enum Curve {
    /** y = m x + b. */
    LINE("slope", "intercept"),
    /** y = m x. */
    PROPORTIONAL("slope"),
    /** y = a (x/x₁)^p, x₁ one unit of x. */
    POWER("value at one unit", "exponent"),
    /** y = a e^(b x). */
    EXPONENTIAL("value at zero", "rate");

    private final List<String> roles;

    Curve(String... roles) {
      this.roles = List.of(roles);
    }

    /** What the parameters are. */
    public List<String> roles() {
      return roles;
    }

    /** The word of the notation. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Curve::word).toList();
    }

    static Optional<Curve> of(String word) {
      return Arrays.stream(values()).filter(curve -> curve.word().equals(word)).findFirst();
    }
  }

  /** Whose stated uncertainties are the weights of a fit. */
  enum Weights {
    /** All points count alike. */
    NONE,
    /** Those of y. */
    Y,
    /** Those of x and y. */
    BOTH
  }

  /** One method for each kind of statement about data. */
  interface Visitor<R> {
    R table(Table table);

    R statistics(Statistics statistics);

    R histogram(Histogram histogram);

    R fit(Fit fit);

    R plot(Plot plot);
  }
}
