package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import plainscale.field.Configuration;
import plainscale.field.FieldValue;
import plainscale.quantity.Decimals;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.quantity.Uncertainty;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * Potential and field at one place as quantities: the value from the closed forms, the figures of
 * the input that has fewest, the uncertainty by central differences over every input that has one.
 */
final class Probing {
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");
  private static final double STEP = 1e-5;

  /** Of a value that is made from exact numbers. */
  private static final int FIGURES = 4;

  /** What is smaller than this share of the terms of a sum is what rounding left of it. */
  private static final double DUST = 1e-13;

  private final FieldModel model;
  private final FieldSource.Coordinates at;
  private final List<Quantity> inputs;

  Probing(FieldModel model, FieldSource.Coordinates at) {
    this.model = model;
    this.at = at;
    this.inputs = new ArrayList<>(model.inputs());
    inputs.addAll(List.of(at.x(), at.y()));
  }

  /** What can be said about the place besides its values. */
  Optional<String> remark() {
    String remark = value().remark();
    return Optional.of(model.nature().said(remark)).filter(words -> !words.isEmpty());
  }

  private FieldValue value() {
    return model.configuration().at(at.place());
  }

  /** Potential, strength, direction and components, as far as they are defined. */
  List<FieldResult.Value> values() {
    String symbol = model.nature().fieldSymbol();
    double[] here = numbers(inputNumbers());
    double scale = scale();
    List<FieldResult.Value> values = new ArrayList<>();
    if (Double.isFinite(here[0])) {
      values.add(value("V", "potential", quantity(0, here, model.nature().potentialUnit())));
    }
    if (!(value() instanceof FieldValue.Singular)) {
      String unit = model.nature().fieldUnit();
      clean(here, scale);
      values.add(value(symbol, "size of the field", quantity(1, here, unit)));
      if (here[1] > 0) {
        values.add(value("φ", "its direction from the x-axis", direction(here)));
      }
      values.add(value(symbol + "_x", "its component along x", quantity(2, here, unit)));
      values.add(value(symbol + "_y", "its component along y", quantity(3, here, unit)));
    }
    return values;
  }

  /** The sum of the sizes of all that is added up in the field. */
  private double scale() {
    Configuration all = model.configuration();
    return all.sources().stream()
        .mapToDouble(source -> Math.abs(all.constant()) * source.field(at.place()).getNorm())
        .sum();
  }

  private static void clean(double[] values, double scale) {
    for (int i = 1; i <= 3; i++) {
      values[i] = Math.abs(values[i]) <= DUST * scale ? 0 : values[i];
    }
    values[4] = Math.atan2(values[3], values[2]);
  }

  private double[] inputNumbers() {
    return inputs.stream().mapToDouble(input -> input.value().doubleValue()).toArray();
  }

  /** V, |E|, E_x, E_y and the angle, from the numbers of the inputs. */
  private double[] numbers(double[] from) {
    Configuration configuration = model.configuration(from);
    Vector3D place = new Vector3D(from[from.length - 2], from[from.length - 1], 0);
    FieldValue value = configuration.at(place);
    Vector3D field =
        value instanceof FieldValue.OnSurface surface
            ? surface.meanField()
            : configuration.field(place);
    double angle = Math.atan2(field.getY(), field.getX());
    return new double[] {value.potential(), field.getNorm(), field.getX(), field.getY(), angle};
  }

  private Quantity direction(double[] here) {
    BigDecimal degrees = DEGREE.fromCoherent(Decimals.from(here[4]));
    return Quantity.estimated(degrees, uncertainty(4), DEGREE).keeping(written());
  }

  private Quantity quantity(int index, double[] here, String unitText) {
    UnitOfMeasure unit = UnitParser.parse(unitText);
    Quantity value = Quantity.estimated(Decimals.from(here[index]), uncertainty(index), unit);
    return here[index] == 0 ? value : value.keeping(written());
  }

  /** A coordinate that is zero says nothing about figures. */
  private List<Quantity> written() {
    return inputs.stream().filter(input -> input.value().signum() != 0).toList();
  }

  private boolean isExact() {
    return inputs.stream()
        .skip(1) // the constant
        .allMatch(input -> input.figures().exact() && input.uncertainty().derivatives().isEmpty());
  }

  private Uncertainty uncertainty(int index) {
    Uncertainty sum = Uncertainty.NONE;
    double[] numbers = inputNumbers();
    for (int i = 0; i < numbers.length; i++) {
      Uncertainty own = inputs.get(i).uncertainty();
      if (!own.derivatives().isEmpty()) {
        sum = Uncertainty.combine(1, sum, slope(index, numbers, i), own);
      }
    }
    return sum;
  }

  private double slope(int index, double[] numbers, int input) {
    double standard = inputs.get(input).uncertainty().standard();
    double step = STEP * Math.max(Math.abs(numbers[input]), standard);
    double up = moved(numbers, input, step)[index];
    double down = moved(numbers, input, -step)[index];
    double change = index == 4 ? Math.IEEEremainder(up - down, 2 * Math.PI) : up - down;
    double slope = change / (2 * step);
    return Double.isFinite(slope) ? slope : 0;
  }

  private double[] moved(double[] numbers, int input, double step) {
    double[] moved = numbers.clone();
    moved[input] += step;
    return numbers(moved);
  }

  /**
   * What is made from exact numbers would be limited by the constant alone, with digits that nobody
   * asked for.
   */
  private FieldResult.Value value(String symbol, String words, Quantity quantity) {
    Shown shown =
        isExact() && quantity.value().signum() != 0
            ? quantity.because(Uncertainty.NONE).shown(FIGURES)
            : quantity.shown();
    return new FieldResult.Value(symbol, words, shown, PrefixedForm.of(shown).orElse(null));
  }
}
