package plainscale.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plainscale.table.Table;

/** What quantities of a kind are called and in which unit they are shown ({@code kinds.tsv}). */
public final class Kinds {
  private static final Map<Kind, Named> TABLE =
      Table.read(Kinds.class, "kinds.tsv").stream()
          .map(
              row ->
                  new Named(row.get("kind"), row.get("article"), UnitParser.parse(row.get("unit"))))
          .collect(
              Collectors.toMap(
                  n -> n.unit().kind(), n -> n, (first, second) -> first, LinkedHashMap::new));

  private static final Named ANGLE = new Named("angle", "an", UnitParser.parse("rad"));

  private Kinds() {}

  /** A kind's usual name, the article before it, and its coherent unit for display. */
  public record Named(String name, String article, UnitOfMeasure unit) {
    /** "a length", "an energy". */
    public String withArticle() {
      return article + " " + name;
    }
  }

  /**
   * The row of that kind; a kind without a row is named by its unit in base units.
   *
   * @throws UnitException if the dimensions have broken exponents
   */
  public static Named of(Kind kind) {
    if (kind.angle()) {
      return ANGLE;
    }
    Named named = TABLE.get(kind);
    return named != null ? named : inBaseUnits(kind);
  }

  /** Whether the kind has a name of its own. */
  public static boolean isNamed(Kind kind) {
    return kind.angle() || TABLE.containsKey(kind);
  }

  private static Named inBaseUnits(Kind kind) {
    UnitOfMeasure unit = BaseUnits.of(kind);
    if (!unit.kind().equals(kind)) {
      throw new UnitException(
          "This would have the root of a unit (such as √m) as its unit.", 0, 0, List.of());
    }
    return new Named("quantity in " + unit.text(), "a", unit);
  }
}
