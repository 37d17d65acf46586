package plainscale.api;

import java.util.List;
import java.util.Locale;
import plainscale.notation.DataStatement;
import plainscale.quantity.Quantity;
import plainscale.sheet.DataResult;
import plainscale.sheet.Result;

/**
 * A curve through the points of two columns. With names for its parameters these become quantities
 * of the situation, which keep their correlation.
 *
 * <pre>{@code
 * FitThrough fit = data(table("spring", "F (N),s (cm)\n1.0,2.1\n2.0,3.9\n3.0,6.1\n4.0,7.9\n"))
 *     .fitLine("F", "s").as("k", "F_0");
 * check(fit.value("k").toString().equals("(0.509 ± 0.015) N/cm"));
 * check(fit.situation().value("k*5.0 [cm] + F_0").in("N").shown().value().doubleValue() > 2.4);
 * }</pre>
 */
public final class FitThrough implements Displayed {
  private final Situation situation;
  private final DataStatement.Curve curve;
  private final String points;
  private final List<String> names;
  private final String weights;
  private final String title;

  private FitThrough(
      Situation situation,
      DataStatement.Curve curve,
      String points,
      List<String> names,
      String weights,
      String title) {
    this.situation = situation;
    this.curve = curve;
    this.points = points;
    this.names = List.copyOf(names);
    this.weights = weights;
    this.title = title;
  }

  static FitThrough of(Situation situation, DataStatement.Curve curve, String y, String x) {
    return new FitThrough(situation, curve, y + " against " + x, List.of(), "", "");
  }

  /** The same with names for its parameters: slope and intercept of a line, and so on. */
  public FitThrough as(String... parameters) {
    return new FitThrough(situation, curve, points, List.of(parameters), weights, title);
  }

  /** The same with the points weighted by the uncertainties of the upper axis. */
  public FitThrough weightedByY() {
    return new FitThrough(situation, curve, points, names, " with weights y", title);
  }

  /** The same with the points weighted by the uncertainties of both axes. */
  public FitThrough weightedByBoth() {
    return new FitThrough(situation, curve, points, names, " with weights both", title);
  }

  /** The same with a title. */
  public FitThrough titled(String other) {
    return new FitThrough(situation, curve, points, names, weights, other);
  }

  /** The situation in which the parameters have their names, to go on with. */
  public Situation situation() {
    return situation.with(cell(), statement());
  }

  private String cell() {
    return "fit " + curve.name().toLowerCase(Locale.ROOT) + " " + points;
  }

  private String statement() {
    return cell() + Written.clause("as", String.join(", ", names)) + weights + Written.after(title);
  }

  /** A parameter by the name that it was given. */
  public Quantity value(String parameter) {
    return situation().value(parameter);
  }

  /** The result as data. */
  public DataResult.Fitted result() {
    return Answer.first(results(), DataResult.Fitted.class);
  }

  @Override
  public List<Result> results() {
    return situation().results(cell());
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
