package plainscale.api;

import java.util.List;
import plainscale.quantity.Quantity;
import plainscale.sheet.DataResult;
import plainscale.sheet.Result;

/**
 * A plot: the points of two columns, or, with a range, the curve of a quantity over a name.
 *
 * <pre>{@code
 * PlotOf fall = given("h", "1.00 m").define("t", "sqrt(2*h/g_n)")
 *     .plot("t", "h").along("0.1 m", "2 m");
 * check(fall.result().curve().size() > 10);
 * check(fall.logBoth().text().contains("power law is a straight line"));
 * }</pre>
 */
public final class PlotOf implements Displayed {
  private final Situation situation;
  private final String axes;
  private final String range;
  private final String with;
  private final String title;

  private PlotOf(Situation situation, String axes, String range, String with, String title) {
    this.situation = situation;
    this.axes = axes;
    this.range = range;
    this.with = with;
    this.title = title;
  }

  static PlotOf of(Situation situation, String y, String x) {
    return new PlotOf(situation, y + " against " + x, "", "", "");
  }

  /** The curve from one value of the lower axis to another. */
  public PlotOf along(String from, String to) {
    return new PlotOf(situation, axes, " from " + from + " to " + to, with, title);
  }

  /** The curve from one value of the lower axis to another. */
  public PlotOf along(Quantity from, Quantity to) {
    return along(Operand.of(from).written(), Operand.of(to).written());
  }

  /** And the points of two columns beside the curve. */
  public PlotOf points(String y, String x) {
    return with(" with points " + y + " against " + x);
  }

  /** With a logarithmic lower axis. */
  public PlotOf logX() {
    return with(" with log x");
  }

  /** With a logarithmic upper axis. */
  public PlotOf logY() {
    return with(" with log y");
  }

  /** With both axes logarithmic. */
  public PlotOf logBoth() {
    return with(" with log both");
  }

  private PlotOf with(String more) {
    return new PlotOf(situation, axes, range, with + more, title);
  }

  /** With a title. */
  public PlotOf titled(String other) {
    return new PlotOf(situation, axes, range, with, other);
  }

  /** The answer of the sheet. */
  public Answer<DataResult.Plotted> answer() {
    String statement = "plot " + axes + range + with + Written.after(title);
    return situation.ask(statement, DataResult.Plotted.class);
  }

  /** The result as data. */
  public DataResult.Plotted result() {
    return answer().result();
  }

  @Override
  public List<Result> results() {
    return answer().results();
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
