package plainscale.data;

import java.math.BigDecimal;
import java.util.Optional;
import plainscale.quantity.Quantity;
import plainscale.units.UnitOfMeasure;

/**
 * A column of numbers in one unit, as they were written, with the standard uncertainties that stand
 * beside them or in a column of their own; both in the unit of the column. Missing cells are
 * missing numbers. Rows are counted from 1.
 */
public record NumberColumn(
    String name, String heading, UnitOfMeasure unit, Numbers values, Numbers uncertainties)
    implements Column {

  /** Refuses uncertainties that are not as many as the values. */
  public NumberColumn {
    if (values.size() != uncertainties.size()) {
      throw new IllegalArgumentException(values.size() + " and " + uncertainties.size());
    }
  }

  @Override
  public int rows() {
    return values.size();
  }

  @Override
  public boolean has(int row) {
    return values.has(row - 1);
  }

  /** The number in that row as written, or nothing if it is missing. */
  public Optional<BigDecimal> value(int row) {
    return has(row) ? Optional.of(values.get(row - 1)) : Optional.empty();
  }

  /** The standard uncertainty in that row, in the unit of the column. */
  public Optional<BigDecimal> uncertainty(int row) {
    return uncertainties.has(row - 1) ? Optional.of(uncertainties.get(row - 1)) : Optional.empty();
  }

  /**
   * The quantity in that row: each call makes a measurement of its own, named after the column and
   * the row, so ask once where it is to be the same one.
   */
  public Optional<Quantity> quantity(int row) {
    return value(row)
        .map(
            value ->
                uncertainty(row)
                    .map(u -> Quantity.measured(name + "_" + row, value, u, unit))
                    .orElseGet(() -> Quantity.written(value, unit)));
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.numbers(this);
  }
}
