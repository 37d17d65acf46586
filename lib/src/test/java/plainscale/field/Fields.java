package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What the tests of fields share. */
final class Fields {
  /** CODATA 2022, N m²/C². */
  static final double K_E = 8.987_551_786_2e9;

  /** CODATA 2022, m³/(kg s²). */
  static final double G = 6.674_30e-11;

  private Fields() {}

  static Effort effort() {
    return Effort.usual(() -> false);
  }

  static Vector3D in(double x, double y) {
    return new Vector3D(x, y, 0);
  }

  static Configuration charges(PointCharge... charges) {
    return Configuration.of(K_E, List.of(charges));
  }

  /** Charges of a few nanocoulombs in a square of a metre, none close to another. */
  static List<PointCharge> random(Random random, int number) {
    List<PointCharge> charges = new ArrayList<>();
    while (charges.size() < number) {
      Vector3D place = in(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
      if (charges.stream().allMatch(c -> Vector3D.distance(c.place(), place) > 0.12)) {
        double size = (1 + 4 * random.nextDouble()) * 1e-9;
        charges.add(new PointCharge(place, random.nextBoolean() ? size : -size));
      }
    }
    return charges;
  }

  /** Sources as the fixtures write them. */
  static List<Source> parse(String text) {
    return Arrays.stream(text.split("; ")).map(Fields::source).toList();
  }

  private static Source source(String text) {
    String[] words = text.split(" ", 2);
    double[] n = numbers(words[1]);
    double q = n[n.length - 1];
    Vector3D first = new Vector3D(n[0], n[1], n[2]);
    return switch (words[0]) {
      case "point" -> new PointCharge(first, q);
      case "line" -> new LineCharge(first, new Vector3D(n[3], n[4], n[5]), q);
      case "ring" -> new RingCharge(first, new Vector3D(n[3], n[4], n[5]), n[6], q);
      case "disc" -> new DiscCharge(first, new Vector3D(n[3], n[4], n[5]), n[6], q);
      case "sphere" -> new SolidSphere(first, n[3], q);
      case "shell" -> new SphericalShell(first, n[3], q);
      default -> throw new IllegalArgumentException(text);
    };
  }

  static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  static Vector3D vector(String text) {
    return new Vector3D(numbers(text));
  }

  static void assertClose(double expected, double actual, double relative, String what) {
    double off = Math.abs(actual - expected);
    assertTrue(
        off <= relative * Math.abs(expected), what + ": " + actual + " instead of " + expected);
  }

  static void assertClose(Vector3D expected, Vector3D actual, double relative, String what) {
    double off = Vector3D.distance(expected, actual);
    assertTrue(
        off <= relative * expected.getNorm(), what + ": " + actual + " instead of " + expected);
  }
}
