package plainscale.data;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import plainscale.units.UnitOfMeasure;

/**
 * The rows in which both of two columns have a number. Where one is missing the row is left out,
 * and counted.
 */
public final class Points {
  private final NumberColumn xColumn;
  private final NumberColumn yColumn;
  private final int[] rows;
  private final Numbers x;
  private final Numbers y;

  private Points(NumberColumn xColumn, NumberColumn yColumn, int[] rows) {
    this.xColumn = xColumn;
    this.yColumn = yColumn;
    this.rows = rows;
    this.x = xColumn.values().at(this::isWhole);
    this.y = yColumn.values().at(this::isWhole);
  }

  /** The points of two columns of one table; {@link DataException} if there is none. */
  public static Points of(NumberColumn x, NumberColumn y) {
    if (x.rows() != y.rows()) {
      throw new DataException(
          "“%s” has %d rows and “%s” has %d; points need both in each row."
              .formatted(x.name(), x.rows(), y.name(), y.rows()));
    }
    int[] rows =
        IntStream.rangeClosed(1, x.rows()).filter(row -> x.has(row) && y.has(row)).toArray();
    if (rows.length == 0) {
      throw new DataException("In no row stand both “%s” and “%s”.".formatted(x.name(), y.name()));
    }
    return new Points(x, y, rows);
  }

  private boolean isWhole(int place) {
    return xColumn.values().has(place) && yColumn.values().has(place);
  }

  /** How many points there are. */
  public int count() {
    return rows.length;
  }

  /** How many rows have none. */
  public int leftOut() {
    return xColumn.rows() - rows.length;
  }

  /** The row of the table in which the point of that place, counted from 0, stands. */
  public int row(int place) {
    return rows[place];
  }

  /** x of that point as written. */
  public BigDecimal x(int place) {
    return x.get(place);
  }

  /** y of that point as written. */
  public BigDecimal y(int place) {
    return y.get(place);
  }

  /** The name of x. */
  public String xName() {
    return xColumn.name();
  }

  /** The name of y. */
  public String yName() {
    return yColumn.name();
  }

  /** The unit of x. */
  public UnitOfMeasure xUnit() {
    return xColumn.unit();
  }

  /** The unit of y. */
  public UnitOfMeasure yUnit() {
    return yColumn.unit();
  }

  Centred centredX() {
    return Centred.of(x);
  }

  Centred centredY() {
    return Centred.of(y);
  }

  /** Differences from zero, for a line through it. */
  Centred plainX() {
    return Centred.from(x, BigDecimal.ZERO);
  }

  Centred plainY() {
    return Centred.from(y, BigDecimal.ZERO);
  }

  /** The standard uncertainties of y; complains of the first point without one. */
  double[] standardsOfY() {
    return standards(yColumn);
  }

  /** Those of x, likewise. */
  double[] standardsOfX() {
    return standards(xColumn);
  }

  private double[] standards(NumberColumn column) {
    return Sample.standards(column.uncertainties().at(this::isWhole), column, rows);
  }
}
