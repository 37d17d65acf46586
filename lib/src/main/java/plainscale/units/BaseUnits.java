package plainscale.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.Dimension;
import tech.units.indriya.unit.UnitDimension;

/** The coherent unit of any dimensions as a product of SI base units: kg·m²/(A·s³). */
final class BaseUnits {
  static final List<Map.Entry<Dimension, String>> BASE =
      List.of(
          Map.entry(UnitDimension.MASS, "kg"),
          Map.entry(UnitDimension.LENGTH, "m"),
          Map.entry(UnitDimension.ELECTRIC_CURRENT, "A"),
          Map.entry(UnitDimension.TEMPERATURE, "K"),
          Map.entry(UnitDimension.AMOUNT_OF_SUBSTANCE, "mol"),
          Map.entry(UnitDimension.LUMINOUS_INTENSITY, "cd"),
          Map.entry(UnitDimension.TIME, "s"));

  private BaseUnits() {}

  /**
   * Broken exponents (a root of a length alone) have no unit text; they are shown by their square.
   */
  static UnitOfMeasure of(Kind kind) {
    Map<? extends Dimension, Integer> exponents = kind.dimension().getBaseDimensions();
    List<UnitOfMeasure.Factor> factors = new ArrayList<>();
    for (Map.Entry<Dimension, String> base : BASE) {
      int exponent =
          exponents == null
              ? single(kind, base.getKey())
              : exponents.getOrDefault(base.getKey(), 0);
      if (exponent != 0) {
        UnitSymbol symbol = UnitTable.standard().find(base.getValue()).orElseThrow();
        factors.add(new UnitOfMeasure.Factor(symbol, exponent));
      }
    }
    return UnitOfMeasure.of(factors);
  }

  private static int single(Kind kind, Dimension base) {
    return kind.dimension().equals(base) ? 1 : 0;
  }
}
