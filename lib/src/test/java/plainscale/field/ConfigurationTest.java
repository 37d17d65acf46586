package plainscale.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainscale.field.Fields.K_E;
import static plainscale.field.Fields.assertClose;
import static plainscale.field.Fields.in;

import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Sums of sources: published worked examples, and places that have no field. */
class ConfigurationTest {
  private static final double E = 1.602_176_634e-19;

  /** OpenStax, University Physics 2, example 5.3: 4.1 × 10¹² N/C. */
  @Test
  void theFieldOfAHeliumNucleusAtTheElectron() {
    Configuration nucleus = Fields.charges(PointCharge.at(0, 0, 2 * E));
    assertEquals(4.1e12, nucleus.field(in(26.5e-12, 0)).getX(), 0.05e12);
    assertEquals(4.10e12, nucleus.field(in(26.5e-12, 0)).getX(), 0.005e12);
  }

  /** OpenStax, University Physics 2, example 5.4: the field above the middle of two charges. */
  @Test
  void theFieldAboveTheMiddleOfTwoCharges() {
    double q = 3e-9;
    double d = 0.2;
    Configuration like = Fields.charges(PointCharge.at(-d / 2, 0, q), PointCharge.at(d / 2, 0, q));
    Configuration unlike =
        Fields.charges(PointCharge.at(-d / 2, 0, q), PointCharge.at(d / 2, 0, -q));
    for (double z : new double[] {0.01, 0.1, 1, 20}) {
      double cube = Math.pow(z * z + d * d / 4, 1.5);
      assertClose(in(0, 2 * K_E * q * z / cube), like.field(in(0, z)), 1e-13, "like");
      assertClose(in(K_E * q * d / cube, 0), unlike.field(in(0, z)), 1e-13, "unlike");
    }
    assertClose(in(K_E * q * d / 8000, 0), unlike.field(in(0, 20)), 1e-4, "far away");
  }

  /** OpenStax, College Physics, example 18.2: 7.19 × 10⁵ N/C. */
  @Test
  void theFieldOfASmallCharge() {
    Configuration charge = Fields.charges(PointCharge.at(0, 0, 2.00e-9));
    assertEquals(7.19e5, charge.field(in(5.00e-3, 0)).getX(), 0.005e5);
  }

  /** OpenStax, University Physics 2, example 7.10, and College Physics, example 19.6: −539 V. */
  @Test
  void thePotentialOfASmallCharge() {
    Configuration charge = Fields.charges(PointCharge.at(0, 0, -3.00e-9));
    assertEquals(-539, charge.potential(in(0, 5.00e-2)), 0.5);
  }

  /** OpenStax, University Physics 2, example 7.9: 300 V to two figures, 299.67 V unrounded. */
  @Test
  void theFallOfPotentialAwayFromACharge() {
    Configuration charge = Fields.charges(PointCharge.at(0, 0, 2.0e-9));
    double fall = charge.potential(in(0.04, 0)) - charge.potential(in(0.12, 0));
    assertEquals(299.6, fall, 0.1);
  }

  @Test
  void onAChargeTheAnswerIsExplicit() {
    Configuration charge = Fields.charges(PointCharge.at(1, 0, -2e-9), PointCharge.at(2, 0, 1e-9));
    FieldValue.Singular on = assertInstanceOf(FieldValue.Singular.class, charge.at(in(1, 0)));
    assertEquals(Double.NEGATIVE_INFINITY, on.potential());
    assertEquals(
        "This place is on: point charge. The field is not defined there, and the potential is"
            + " infinite.",
        on.remark());
    assertEquals(Double.NEGATIVE_INFINITY, charge.potential(in(1, 0)));
  }

  @Test
  void onLinesAndRingsThePotentialIsInfinite() {
    List<Source> sources =
        List.of(
            new LineCharge(in(0, 0), in(1, 1), 2),
            new InfiniteLine(in(5, 0), Vector3D.PLUS_K, 1, 2),
            new RingCharge(in(-3, 0), new Vector3D(0, 1, 1), 1, 2));
    Configuration configuration = Configuration.of(1, sources);
    for (Vector3D at : List.of(in(0.3, 0.3), new Vector3D(5, 0, 8), in(-4, 0))) {
      assertEquals(
          Double.POSITIVE_INFINITY,
          assertInstanceOf(FieldValue.Singular.class, configuration.at(at)).potential());
    }
  }

  @Test
  void whereInfinitePotentialsOfBothSignsMeetThereIsNone() {
    Configuration both =
        Configuration.of(
            1, List.of(new LineCharge(in(0, 0), in(1, 0), 2), PointCharge.at(0.5, 0, -1)));
    FieldValue value = both.at(in(0.5, 0));
    assertTrue(Double.isNaN(value.potential()));
    assertTrue(value.remark().endsWith("nor is the potential."), value.remark());
  }

  @Test
  void onASurfaceTheMeanOfBothSidesIsGivenAndToldSo() {
    Configuration shell = Configuration.of(1, List.of(new SphericalShell(Vector3D.ZERO, 2, 8)));
    FieldValue.OnSurface on = assertInstanceOf(FieldValue.OnSurface.class, shell.at(in(2, 0)));
    assertClose(in(1, 0), on.meanField(), 1e-15, "half of 8/2²");
    assertTrue(on.remark().contains("mean of both"));
    Configuration disc =
        Configuration.of(1, List.of(new DiscCharge(Vector3D.ZERO, Vector3D.PLUS_K, 2, 8)));
    assertInstanceOf(FieldValue.OnSurface.class, disc.at(in(1, 0)));
    assertInstanceOf(FieldValue.Singular.class, disc.at(in(2, 0)));
    assertInstanceOf(FieldValue.Defined.class, disc.at(in(2.1, 0)));
  }

  @Test
  void chargesAtOnePlaceAreAdded() {
    Configuration sum = Fields.charges(PointCharge.at(1, 1, 2e-9), PointCharge.at(1, 1, 3e-9));
    assertEquals(1, sum.sources().size());
    assertEquals(5e-9, sum.sources().get(0).amount(), 1e-24);
    assertEquals(
        List.of(
            "Of the kind point charge, 2.0E-9 and 3.0E-9 are at the same place; they count as one"
                + " of 5.0E-9."),
        sum.remarks());
  }

  @Test
  void oppositeChargesAtOnePlaceCancel() {
    Configuration none = Fields.charges(PointCharge.at(1, 1, 2e-9), PointCharge.at(1, 1, -2e-9));
    assertTrue(none.sources().isEmpty());
    assertEquals(
        List.of("Of the kind point charge, 2.0E-9 and -2.0E-9 are at the same place; they cancel."),
        none.remarks());
    assertEquals(new FieldValue.Defined(0, Vector3D.ZERO), none.at(in(1, 1)));
  }

  @Test
  void whatCannotBeIsRefusedInASentence() {
    assertRefused(
        "A point charge must be a finite number, not NaN.", () -> PointCharge.at(0, 0, Double.NaN));
    assertRefused(
        "The radius of a ring must be greater than zero, not -1.0.",
        () -> new RingCharge(Vector3D.ZERO, Vector3D.PLUS_K, -1, 1));
    assertRefused(
        "The axis of a disc needs a direction; it has length zero.",
        () -> new DiscCharge(Vector3D.ZERO, Vector3D.ZERO, 1, 1));
    assertRefused(
        "The length of a line of charge must be greater than zero, not 0.0.",
        () -> new LineCharge(in(1, 1), in(1, 1), 1));
    assertRefused(
        "201 charges are too many for one field; the most is 200.",
        () -> Configuration.of(1, Collections.nCopies(201, PointCharge.at(0, 0, 1))));
  }

  private static void assertRefused(String sentence, Runnable act) {
    assertEquals(sentence, assertThrows(IllegalArgumentException.class, act::run).getMessage());
  }
}
