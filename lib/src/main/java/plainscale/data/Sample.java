package plainscale.data;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import plainscale.quantity.Decimals;
import plainscale.units.UnitOfMeasure;

/**
 * The values that are there in a column, in its unit, each with the row it comes from. Means are
 * taken in decimals, and doubles are differences from the mean, so that no written digit is lost.
 */
public final class Sample {
  private final NumberColumn column;
  private final Numbers values;
  private final Numbers uncertainties;
  private final int[] rows;
  private final BigDecimal mean;

  private Sample(NumberColumn column, int[] rows) {
    this.column = column;
    this.rows = rows;
    this.values = column.values().at(column.values()::has);
    this.uncertainties = column.uncertainties().at(column.values()::has);
    this.mean = mean(values);
  }

  /** The values of a column; {@link DataException} if there are none. */
  public static Sample of(NumberColumn column) {
    int[] rows = IntStream.rangeClosed(1, column.rows()).filter(column::has).toArray();
    if (rows.length == 0) {
      throw new DataException("There is no number in the column “%s”.".formatted(column.name()));
    }
    return new Sample(column, rows);
  }

  /** The arithmetic mean of decimals. */
  static BigDecimal mean(Numbers values) {
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < values.size(); i++) {
      sum = sum.add(values.get(i));
    }
    return sum.divide(BigDecimal.valueOf(values.size()), Decimals.DIGITS);
  }

  /** What decimals differ from another. */
  static double[] differences(Numbers values, BigDecimal from) {
    return IntStream.range(0, values.size())
        .mapToDouble(i -> values.get(i).subtract(from).doubleValue())
        .toArray();
  }

  /** The name of the column. */
  public String name() {
    return column.name();
  }

  /** The unit of the values. */
  public UnitOfMeasure unit() {
    return column.unit();
  }

  /** How many values there are. */
  public int count() {
    return rows.length;
  }

  /** How many rows have none. */
  public int leftOut() {
    return column.rows() - rows.length;
  }

  /** The value at that place, counted from 0. */
  public BigDecimal value(int place) {
    return values.get(place);
  }

  /** The row of the table in which it stands, counted from 1. */
  public int row(int place) {
    return rows[place];
  }

  /** The arithmetic mean, in the unit of the column. */
  public BigDecimal mean() {
    return mean;
  }

  /** What the values differ from the mean. */
  public double[] deviations() {
    return differences(values, mean);
  }

  /** The standard uncertainties of the values; complains of the first that is missing or zero. */
  double[] standards() {
    return standards(uncertainties, column, rows);
  }

  static double[] standards(Numbers uncertainties, NumberColumn column, int[] rows) {
    return IntStream.range(0, rows.length)
        .mapToDouble(
            i -> {
              if (!uncertainties.has(i) || uncertainties.get(i).signum() <= 0) {
                throw new DataException(
                    "Row %d of “%s” has no uncertainty to weight it by."
                        .formatted(rows[i], column.name()),
                    "14.0 ± 0.5",
                    "a column u(" + column.name() + ")");
              }
              return uncertainties.get(i).doubleValue();
            })
        .toArray();
  }

  /** How many coherent SI units one step of the unit is. */
  double step() {
    return Math.abs(unit().factor().doubleValue());
  }
}
