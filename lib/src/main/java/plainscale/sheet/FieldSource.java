package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import plainscale.field.ChargedSheet;
import plainscale.field.DiscCharge;
import plainscale.field.LineCharge;
import plainscale.field.PointCharge;
import plainscale.field.RingCharge;
import plainscale.field.SolidSphere;
import plainscale.field.Source;
import plainscale.field.SphericalShell;
import plainscale.notation.FieldItem;
import plainscale.quantity.Quantity;

/** One source of a field with its values. */
record FieldSource(
    FieldItem.Shape shape,
    Quantity amount,
    @Nullable Quantity size,
    Coordinates at,
    @Nullable Coordinates to,
    boolean flat) {

  /** A pair of quantities. */
  record Coordinates(Quantity x, Quantity y) {
    FieldResult.Spot spot() {
      return new FieldResult.Spot(x.shown(), y.shown());
    }

    Vector3D place() {
      return new Vector3D(x.value().doubleValue(), y.value().doubleValue(), 0);
    }
  }

  /** All that it is made from, in the order in which {@link #sources} takes it. */
  List<Quantity> inputs() {
    List<Quantity> inputs = new ArrayList<>(List.of(amount, at.x(), at.y()));
    Stream.ofNullable(size).forEach(inputs::add);
    Stream.ofNullable(to).forEach(end -> inputs.addAll(List.of(end.x(), end.y())));
    return inputs;
  }

  /** The same made from other numbers, in SI units. */
  List<Source> sources(PrimitiveIterator.OfDouble numbers) {
    double much = numbers.nextDouble();
    Vector3D place = place(numbers);
    Vector3D axis = flat ? Vector3D.PLUS_K : Vector3D.PLUS_I;
    double extent = size == null ? 0 : numbers.nextDouble();
    Vector3D end = to == null ? place : place(numbers);
    return switch (shape) {
      case CHARGE, MASS -> List.of(new PointCharge(place, much));
      case LINE -> List.of(new LineCharge(place, end, much));
      case RING -> List.of(new RingCharge(place, axis, extent, much));
      case DISC -> List.of(new DiscCharge(place, axis, extent, much));
      case SPHERE -> List.of(new SolidSphere(place, extent, much));
      case SHELL -> List.of(new SphericalShell(place, extent, much));
      case PLATES -> ChargedSheet.plates(place, axis, extent, much);
    };
  }

  private static Vector3D place(PrimitiveIterator.OfDouble numbers) {
    double x = numbers.nextDouble();
    return new Vector3D(x, numbers.nextDouble(), 0);
  }

  FieldResult.Row row() {
    return new FieldResult.Row(
        shape,
        readable(amount),
        size == null ? null : size.shown(),
        at.spot(),
        to == null ? null : to.spot(),
        flat);
  }

  private static plainscale.quantity.Shown readable(Quantity amount) {
    return amount.unit().isPresent()
        ? amount.shown()
        : PrefixedForm.of(amount.shown()).orElse(amount.shown());
  }
}
