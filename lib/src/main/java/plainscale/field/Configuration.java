package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;

/**
 * Sources and the constant of their field: the sum of what each gives. With k_e (N m²/C²) and
 * charges, potentials are in V and fields in V/m; with −G and masses in J/kg and N/kg. Sources of
 * the same shape at the same place are added, and what cancels is left out; {@link #remarks} says
 * so.
 */
public final class Configuration {
  /** The most sources that are taken. */
  public static final int MOST_SOURCES = 200;

  private static final double STRONGEST = 1e200;

  private final double constant;
  private final List<Source> sources;
  private final List<String> remarks;

  private Configuration(double constant, List<Source> sources, List<String> remarks) {
    this.constant = constant;
    this.sources = List.copyOf(sources);
    this.remarks = List.copyOf(remarks);
  }

  /** The sum of sources, of which there may be {@link #MOST_SOURCES}. */
  public static Configuration of(double constant, List<? extends Source> sources) {
    Checks.finite(constant, "The constant of a field");
    sources.forEach(source -> checkSize(constant * source.amount(), source));
    if (sources.size() > MOST_SOURCES) {
      throw new IllegalArgumentException(
          sources.size()
              + " charges are too many for one field; the most is "
              + MOST_SOURCES
              + ".");
    }
    List<Source> merged = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    sources.forEach(source -> add(source, merged, remarks));
    merged.removeIf(source -> source.amount() == 0);
    return new Configuration(constant, merged, remarks);
  }

  private static void checkSize(double strength, Source source) {
    if (!(Math.abs(strength) <= STRONGEST)) {
      throw new IllegalArgumentException(
          "The amount " + source.amount() + " of a " + source.name() + " is too large to compute.");
    }
  }

  private static void add(Source source, List<Source> merged, List<String> remarks) {
    for (int i = 0; i < merged.size(); i++) {
      Source there = merged.get(i);
      if (there.withAmount(0).equals(source.withAmount(0))) {
        Source sum = there.withAmount(there.amount() + source.amount());
        merged.set(i, sum);
        remarks.add(together(there, source, sum));
        return;
      }
    }
    merged.add(source);
  }

  private static String together(Source one, Source other, Source sum) {
    String amounts = one.amount() + " and " + other.amount() + " are at the same place";
    String name = "Of the kind " + one.name() + ", ";
    return sum.amount() == 0
        ? name + amounts + "; they cancel."
        : name + amounts + "; they count as one of " + sum.amount() + ".";
  }

  /** The constant that all potentials and fields are multiplied by. */
  public double constant() {
    return constant;
  }

  /** The sources, each place and shape once, none with amount zero. */
  public List<Source> sources() {
    return sources;
  }

  /** Sentences on sources that were added or cancelled. */
  public List<String> remarks() {
    return remarks;
  }

  /**
   * The potential. Infinite on a point, line or ring of charge; not a number only where infinite
   * ones of both signs meet ({@link #at} tells).
   */
  public double potential(Vector3D at) {
    double sum = 0;
    for (Source source : sources) {
      sum += source.potential(at);
    }
    return constant * sum;
  }

  /**
   * The field at a place that is on no charge; elsewhere use {@link #at}, since the numbers here
   * then mean nothing.
   */
  public Vector3D field(Vector3D at) {
    double x = 0;
    double y = 0;
    double z = 0;
    for (Source source : sources) {
      Vector3D one = source.field(at);
      x += one.getX();
      y += one.getY();
      z += one.getZ();
    }
    return new Vector3D(constant * x, constant * y, constant * z);
  }

  /** Potential and field at any place, with an explicit answer where they are not defined. */
  public FieldValue at(Vector3D at) {
    Checks.finite(at, "A place");
    Source worst = null;
    Standing standing = Standing.FREE;
    for (Source source : sources) {
      Standing here = source.standing(at);
      if (here.compareTo(standing) > 0) {
        standing = here;
        worst = source;
      }
    }
    return worst == null
        ? new FieldValue.Defined(potential(at), field(at))
        : on(worst, standing, at);
  }

  private FieldValue on(Source source, Standing standing, Vector3D at) {
    return switch (standing) {
      case FREE, ON_SURFACE -> new FieldValue.OnSurface(potential(at), field(at), source);
      case ON_EDGE -> new FieldValue.Singular(potential(at), source);
      case ON_CHARGE -> new FieldValue.Singular(infinite(at), source);
    };
  }

  /** The infinite potential on a charge, exactly so even where rounding makes it merely large. */
  private double infinite(Vector3D at) {
    double sum = 0;
    for (Source source : sources) {
      if (source.standing(at) == Standing.ON_CHARGE) {
        sum += Math.signum(constant * source.amount()) * Double.POSITIVE_INFINITY;
      }
    }
    return sum;
  }

  /** The source whose charge is nearest to a place. There must be one. */
  Source nearest(Vector3D at) {
    Source best = sources.get(0);
    for (Source source : sources) {
      if (distance(source, at) < distance(best, at)) {
        best = source;
      }
    }
    return best;
  }

  static double distance(Source source, Vector3D at) {
    return Vector3D.distance(at, source.nearest(at));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Configuration configuration
        && constant == configuration.constant
        && sources.equals(configuration.sources)
        && remarks.equals(configuration.remarks);
  }

  @Override
  public int hashCode() {
    return Objects.hash(constant, sources);
  }
}
