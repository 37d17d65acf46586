package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import plainscale.algebra.Evaluator;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Part;
import plainscale.notation.Problem;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;

/** How one quantity follows another: by a power, or in a table. */
final class Variations {
  /** Factors at which a power law must show the same exponent. */
  private static final double[] FACTORS = {0.5, 0.8, 1.25, 2, 3};

  private static final double SAME_EXPONENT = 1e-6;
  private static final int LARGEST_DENOMINATOR = 6;
  private static final double SMALL_STEP = 1e-4;
  private static final int USUAL_ROWS = 9;
  private static final int MOST_ROWS = 100;
  private static final int FIGURES = 3;

  private final Showing showing;

  Variations(Showing showing) {
    this.showing = showing;
  }

  Result depends(Statement.Depends depends) {
    Quantity on = value(depends.on());
    double here = number(showing.value(depends.value()));
    if (number(on) == 0 || here == 0) {
      String sentence = "From zero nothing changes by a factor.";
      throw showing.problem(Problem.Kind.VALUE, sentence, depends.span(), List.of());
    }
    double local = exponent(depends, on, 1 + SMALL_STEP, here);
    return new Result.Dependence(
        showing.label(depends.value(), ""),
        depends.on().text(),
        powerLaw(depends, on, here, local),
        local,
        ratio(depends, on, 2, here));
  }

  /** The exponent as a fraction, if it is the same at all factors. */
  private Optional<Fraction> powerLaw(
      Statement.Depends depends, Quantity on, double here, double local) {
    Fraction fraction = nearest(local);
    for (double factor : FACTORS) {
      double exponent = exponent(depends, on, factor, here);
      if (!(Math.abs(exponent - fraction.doubleValue()) < SAME_EXPONENT)) {
        return Optional.empty();
      }
    }
    return Optional.of(fraction);
  }

  /** The nearest fraction with a small denominator. */
  static Fraction nearest(double value) {
    Fraction best = new Fraction((int) Math.rint(value));
    for (int d = 2; d <= LARGEST_DENOMINATOR; d++) {
      Fraction candidate = new Fraction((int) Math.rint(value * d), d);
      if (Math.abs(candidate.doubleValue() - value) < Math.abs(best.doubleValue() - value) - 1e-4) {
        best = candidate;
      }
    }
    return best;
  }

  private double exponent(Statement.Depends depends, Quantity on, double factor, double here) {
    return Math.log(Math.abs(ratio(depends, on, factor, here))) / Math.log(factor);
  }

  /** By which factor the value changes when the name does; not a number where it has no value. */
  private double ratio(Statement.Depends depends, Quantity on, double factor, double here) {
    Quantity changed = on.times(Quantity.number(BigDecimal.valueOf(factor)));
    OtherValues other = new OtherValues(showing, Map.of(depends.on().text(), changed));
    return other.find(depends.value()).map(value -> number(value) / here).orElse(Double.NaN);
  }

  private Quantity value(Statement.Option name) {
    return showing.value(new Expr.Name(name.span(), name.text()));
  }

  private static double number(Quantity quantity) {
    return quantity.value().doubleValue();
  }

  Result vary(Statement.Vary vary) {
    Quantity now = value(vary.name());
    Quantity from = valueOf(vary.from(), vary.name(), now);
    Quantity to = valueOf(vary.to(), vary.name(), now);
    Expr.Name name = new Expr.Name(vary.name().span(), vary.name().text());
    List<Result.Label> head = new ArrayList<>(List.of(showing.label(name, "")));
    vary.shown().forEach(shown -> head.add(showing.label(shown.value(), "")));
    List<List<Optional<Shown>>> rows = new ArrayList<>();
    for (Quantity value : values(vary, from, to)) {
      rows.add(row(vary, value, from));
    }
    return new Result.Varied(head, rows, showing.writing());
  }

  /** An end or a step, which is of the kind of what varies. */
  private Quantity valueOf(Expr expr, Statement.Option name, Quantity now) {
    Quantity value = showing.value(expr);
    if (!value.kind().equals(now.kind())) {
      String sentence =
          "“%s” is %s; it cannot become %s."
              .formatted(
                  name.text(),
                  showing.words(now.kind(), expr.span()),
                  showing.words(value.kind(), expr.span()));
      throw showing.problem(Problem.Kind.UNIT, sentence, expr.span(), List.of());
    }
    return value;
  }

  /** A step of 5 °C is a difference of five kelvins. */
  private static Quantity step(Quantity written) {
    return written.isReading()
        ? written.minus(Quantity.exact(BigDecimal.ZERO, written.displayUnit()))
        : written;
  }

  private List<Quantity> values(Statement.Vary vary, Quantity from, Quantity to) {
    Span span = vary.span();
    return Evaluator.at(
        showing.source(),
        span,
        () -> {
          Quantity way = to.minus(from);
          Quantity step =
              vary.by()
                  .map(by -> step(valueOf(by, vary.name(), from)))
                  .orElseGet(() -> way.over(Quantity.number(BigDecimal.valueOf(USUAL_ROWS - 1))));
          double steps = number(way) / number(step);
          if (!(steps >= 1 && steps < MOST_ROWS)) {
            String sentence =
                "From row to row it must go towards the end, in at most " + MOST_ROWS + " rows.";
            throw showing.problem(Problem.Kind.LIMIT, sentence, span, List.of());
          }
          List<Quantity> values = new ArrayList<>();
          for (int i = 0; i <= Math.floor(steps + 1e-9); i++) {
            values.add(from.plus(step.times(Quantity.number(BigDecimal.valueOf(i)))));
          }
          return values;
        });
  }

  /** A value that cannot be computed leaves its place empty. */
  private List<Optional<Shown>> row(Statement.Vary vary, Quantity value, Quantity from) {
    List<Optional<Shown>> row = new ArrayList<>();
    row.add(Optional.of(exactly(value, from)));
    OtherValues other = new OtherValues(showing, Map.of(vary.name().text(), value));
    for (Part.Value shown : vary.shown()) {
      Format format = shown.format().figures() > 0 ? shown.format() : shown.format().to(FIGURES);
      Span span = shown.value().span();
      row.add(other.find(shown.value()).map(result -> showing.shown(result, format, span)));
    }
    return row;
  }

  private static Shown exactly(Quantity value, Quantity from) {
    Quantity inUnit = from.unit().map(value::in).orElse(value);
    BigDecimal rounded =
        inUnit.displayUnit().fromCoherent(value.value()).round(new MathContext(FIGURES + 1));
    BigDecimal plain = rounded.stripTrailingZeros();
    return new Shown(plain.scale() < 0 ? plain.setScale(0) : plain, null, inUnit.displayUnit());
  }
}
