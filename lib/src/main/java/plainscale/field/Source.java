package plainscale.field;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A distribution of charge (or mass) whose field has a closed form. Potential and field are those
 * for a constant of the field of 1; {@link Configuration} multiplies by k_e or −G. Places in
 * metres.
 */
public sealed interface Source
    permits PointCharge,
        LineCharge,
        InfiniteLine,
        RingCharge,
        DiscCharge,
        SolidSphere,
        SphericalShell,
        ChargedSheet {

  /** The charge in C; of an infinite line the charge per length, C/m, of a sheet per area, C/m². */
  double amount();

  /** The same shape at the same place with another amount. */
  Source withAmount(double amount);

  /** The potential divided by the constant of the field, C/m; infinite on a point, line or ring. */
  double potential(Vector3D at);

  /**
   * The field divided by the constant of the field, C/m². On a charged surface, where the field
   * jumps, the mean of both sides; {@link #standing} tells where this has no meaning.
   */
  Vector3D field(Vector3D at);

  /** Whether the field is defined at that place. */
  Standing standing(Vector3D at);

  /** The point of the charge (of the surface of a sphere) that is nearest to that place. */
  Vector3D nearest(Vector3D at);

  /** Where the plane z = 0 cuts the charge, inside a frame; empty if it does not. */
  List<Footprint> footprints(Frame frame);

  /** Its name in a sentence. */
  String name();
}
