package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.laws.Constant;
import plainscale.laws.Constants;
import plainscale.notation.Names;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;
import plainscale.units.UnitTable;

/** The names of a sheet at one moment, and the constants. */
record SheetNames(Map<String, Entry> entries, Constants constants) implements Names {
  private static final BigDecimal SAME = new BigDecimal("1e-6");

  @Override
  public boolean isQuantity(String name) {
    return isDefined(name) || constants.has(name);
  }

  @Override
  public boolean isDefined(String name) {
    Entry entry = entries.get(name);
    return entry != null && entry.isQuantity();
  }

  @Override
  public boolean isSameAsUnit(String name) {
    if (entries.containsKey(name)) {
      return false;
    }
    Optional<Constant> constant = constants.find(name);
    Optional<UnitSymbol> unit = UnitTable.standard().find(name);
    return constant.isPresent() && unit.isPresent() && isSame(constant.get(), unit.get());
  }

  private static boolean isSame(Constant constant, UnitSymbol symbol) {
    UnitOfMeasure unit = UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(symbol, 1)));
    BigDecimal value = constant.quantity().value();
    return unit.kind().equals(constant.quantity().kind())
        && value
                .divide(unit.factor(), MathContext.DECIMAL64)
                .subtract(BigDecimal.ONE)
                .abs()
                .compareTo(SAME)
            < 0;
  }

  @Override
  public String meaning(String name) {
    if (entries.containsKey(name)) {
      return "a quantity of this sheet";
    }
    return constants.find(name).map(c -> "a constant (" + c.meaning() + ")").orElse("a name");
  }

  @Override
  public Collection<String> all() {
    List<String> all = new ArrayList<>(entries.keySet());
    Bodies.in(entries).forEach(body -> all.remove(body.name()));
    all.addAll(constants.symbols());
    return all;
  }
}
