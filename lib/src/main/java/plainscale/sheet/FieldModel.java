package plainscale.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PrimitiveIterator;
import plainscale.field.Configuration;
import plainscale.field.Nature;
import plainscale.field.Source;
import plainscale.quantity.Quantity;

/** A field with the values of one wave; {@code constant} is k_e, or −G for masses. */
record FieldModel(Nature nature, Quantity constant, List<FieldSource> parts) {

  /** Keeps its own copy of the parts. */
  FieldModel {
    parts = List.copyOf(parts);
  }

  /** All that the field is made from; the constant comes first. */
  List<Quantity> inputs() {
    List<Quantity> inputs = new ArrayList<>(List.of(constant));
    parts.forEach(part -> inputs.addAll(part.inputs()));
    return inputs;
  }

  /** The numbers of the inputs in SI units. */
  double[] numbers() {
    return inputs().stream().mapToDouble(input -> input.value().doubleValue()).toArray();
  }

  /** The field as it is. */
  Configuration configuration() {
    return configuration(numbers());
  }

  /** The field with other numbers for its inputs. */
  Configuration configuration(double[] numbers) {
    PrimitiveIterator.OfDouble each = Arrays.stream(numbers).iterator();
    double strength = each.nextDouble();
    List<Source> sources = new ArrayList<>();
    parts.forEach(part -> sources.addAll(part.sources(each)));
    return Configuration.of(strength, sources);
  }
}
