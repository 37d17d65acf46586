package plainscale.picture.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import plainscale.field.ChargedSheet;
import plainscale.field.Configuration;
import plainscale.field.DiscCharge;
import plainscale.field.InfiniteLine;
import plainscale.field.LineCharge;
import plainscale.field.Nature;
import plainscale.field.PointCharge;
import plainscale.field.RingCharge;
import plainscale.field.SolidSphere;
import plainscale.field.Source;
import plainscale.field.SphericalShell;

/** The sources in words, numbered from one. */
final class SourceWords {
  private final Nature nature;
  private final Configuration configuration;
  private final Measure length;

  SourceWords(Nature nature, Configuration configuration, Measure length) {
    this.nature = nature;
    this.configuration = configuration;
    this.length = length;
  }

  /** "1: point charge, 3 nC, at (−7 cm, 0 cm)". */
  List<String> all() {
    List<String> words = new ArrayList<>();
    int number = 1;
    for (Source source : configuration.sources()) {
      words.add(number++ + ": " + name(source) + ", " + amount(source) + ", " + where(source));
    }
    return words;
  }

  /** All of them as a sentence. */
  String sentence() {
    List<String> all = all();
    return all.isEmpty() ? "There is no source." : "Sources: " + String.join("; ", all) + ".";
  }

  private String name(Source source) {
    return nature.said(source.name());
  }

  String amount(Source source) {
    String unit =
        source instanceof ChargedSheet
            ? nature.amountUnit() + "/m²"
            : source instanceof InfiniteLine ? nature.amountUnit() + "/m" : nature.amountUnit();
    return Measure.of(unit, source.amount(), length.writing()).text(source.amount());
  }

  private String where(Source source) {
    if (source instanceof PointCharge point) {
      return "at " + place(point.place());
    }
    if (source instanceof LineCharge line) {
      return "from " + place(line.start()) + " to " + place(line.end());
    }
    if (source instanceof RingCharge ring) {
      return round(ring.radius(), ring.centre()) + turned(ring.axis());
    }
    if (source instanceof DiscCharge disc) {
      return round(disc.radius(), disc.centre()) + turned(disc.axis());
    }
    if (source instanceof SolidSphere sphere) {
      return round(sphere.radius(), sphere.centre());
    }
    if (source instanceof SphericalShell shell) {
      return round(shell.radius(), shell.centre());
    }
    if (source instanceof ChargedSheet sheet) {
      return "upright at x = " + length.text(sheet.through().getX());
    }
    return "through " + place(((InfiniteLine) source).through());
  }

  private String round(double radius, Vector3D centre) {
    return "radius " + length.text(radius) + ", centre at " + place(centre);
  }

  private static String turned(Vector3D axis) {
    return axis.getZ() == 0 ? ", seen from the side" : ", in the plane of the drawing";
  }

  String place(Vector3D place) {
    return length.place(place.getX(), place.getY());
  }
}
