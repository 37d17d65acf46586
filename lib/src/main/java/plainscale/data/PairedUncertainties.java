package plainscale.data;

import static plainscale.data.Remark.Kind.UNCERTAINTY;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plainscale.units.UnitOfMeasure;

/**
 * Puts a column of uncertainties ({@code u(d)/cm}, {@code ±d}, or {@code ±} behind the column) to
 * the values of its column. In per cent it is relative.
 */
final class PairedUncertainties {
  private final List<Heading> headings;
  private final List<Column> columns;
  private final Remarks.Builder remarks;

  PairedUncertainties(List<Heading> headings, List<Column> columns, Remarks.Builder remarks) {
    this.headings = headings;
    this.columns = new ArrayList<>(columns);
    this.remarks = remarks;
  }

  /** The columns, those of uncertainties gone into theirs. */
  List<Column> join() {
    List<Column> joined = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).uncertainty()) {
        if (join(i)) {
          joined.add(columns.get(i));
        } else {
          remarks.add(lone(headings.get(i)));
        }
      }
    }
    columns.removeAll(joined);
    return columns;
  }

  private static Remark lone(Heading heading) {
    return Remark.ofHeading(
        UNCERTAINTY, heading, "I find no column that these uncertainties belong to.");
  }

  private boolean join(int place) {
    Optional<Integer> owner = owner(place);
    if (owner.isEmpty()
        || !(columns.get(place) instanceof NumberColumn by)
        || !(columns.get(owner.get()) instanceof NumberColumn of)) {
      return false;
    }
    @Nullable Scale scale = Scale.of(of.unit(), headings.get(place));
    if (scale == null) {
      return false;
    }
    columns.set(owner.get(), with(of, by, scale, headings.get(place)));
    return true;
  }

  /** The column of that quantity, or for a bare ± the one before. */
  private Optional<Integer> owner(int place) {
    String quantity = headings.get(place).quantity();
    if (quantity.isEmpty()) {
      return place > 0 ? Optional.of(place - 1) : Optional.empty();
    }
    return IntStream.range(0, headings.size())
        .filter(i -> !headings.get(i).uncertainty())
        .filter(i -> headings.get(i).quantity().equals(quantity))
        .boxed()
        .findFirst();
  }

  /** How an uncertainty as written becomes one in the unit of the value. */
  private record Scale(BigDecimal factor, boolean relative) {
    static @Nullable Scale of(UnitOfMeasure unit, Heading heading) {
      UnitOfMeasure own = heading.unit().orElse(unit);
      if (own.text().equals("%") && !unit.text().equals("%")) {
        return new Scale(new BigDecimal("0.01"), true);
      }
      return own.kind().equals(unit.kind())
          ? new Scale(own.factor().divide(unit.factor(), MathContext.DECIMAL64), false)
          : null;
    }

    BigDecimal apply(BigDecimal uncertainty, BigDecimal value) {
      BigDecimal scaled = uncertainty.multiply(relative ? factor.multiply(value.abs()) : factor);
      boolean asWritten = !relative && factor.compareTo(BigDecimal.ONE) == 0;
      return asWritten ? uncertainty : scaled.round(MathContext.DECIMAL64).stripTrailingZeros();
    }
  }

  private NumberColumn with(NumberColumn of, NumberColumn by, Scale scale, Heading heading) {
    Numbers.Builder uncertainties = new Numbers.Builder();
    for (int row = 1; row <= of.rows(); row++) {
      uncertainties.add(paired(of, by, scale, heading, row));
    }
    return new NumberColumn(of.name(), of.heading(), of.unit(), of.values(), uncertainties.build());
  }

  private @Nullable BigDecimal paired(
      NumberColumn of, NumberColumn by, Scale scale, Heading heading, int row) {
    Optional<BigDecimal> own = of.uncertainty(row);
    Optional<BigDecimal> value = of.value(row);
    Optional<BigDecimal> beside = by.value(row);
    if (beside.isPresent() && (own.isPresent() || beside.get().signum() < 0)) {
      String sentence =
          own.isPresent()
              ? "The uncertainty stands in the cell and beside it; the one in the cell is used."
              : "An uncertainty is not negative; it was left out.";
      String found = beside.get().toString();
      remarks.add(new Remark(UNCERTAINTY, row, 0, heading.name(), found, sentence, List.of()));
      return own.orElse(null);
    }
    return own.isPresent() || value.isEmpty() || beside.isEmpty()
        ? own.orElse(null)
        : scale.apply(beside.get(), value.get());
  }
}
