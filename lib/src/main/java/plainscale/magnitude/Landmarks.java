package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.table.Table;

/**
 * The reference magnitudes of landmarks.tsv. {@code Landmarks.near("electric charge", q, 1)} finds
 * that a ball's 6.0E-8 C lies between "charge of a pith ball in a classroom" and "charge of a glass
 * rod rubbed with silk". Nothing is read before the first question.
 */
public final class Landmarks {
  private Landmarks() {}

  /** Landmarks on either side of a value, the nearest first. */
  public record Neighbours(List<Landmark> below, List<Landmark> above) {}

  /** Holds the table, so that it is read when it is first needed. */
  private static final class Holder {
    private static final Map<String, List<Landmark>> BY_QUANTITY =
        Table.read(Landmarks.class, "landmarks.tsv").stream()
            .map(Landmarks::landmark)
            .sorted(Comparator.comparing(Landmark::value))
            .collect(Collectors.groupingBy(Landmark::quantity));
  }

  /** The landmarks of that kind from the smallest on; none for a kind that the table has not. */
  public static List<Landmark> of(String quantity) {
    return List.copyOf(Holder.BY_QUANTITY.getOrDefault(quantity, List.of()));
  }

  /**
   * Up to {@code each} landmarks on either side of the value, by size: its sign does not count. A
   * landmark of just that size is the first of those below. Zero has no neighbours.
   */
  public static Neighbours near(String quantity, BigDecimal value, int each) {
    if (value.signum() == 0) {
      return new Neighbours(List.of(), List.of());
    }
    BigDecimal size = value.abs();
    Stream<Landmark> below =
        of(quantity).stream()
            .filter(landmark -> landmark.value().compareTo(size) <= 0)
            .sorted(Comparator.comparing(Landmark::value).reversed());
    Stream<Landmark> above =
        of(quantity).stream().filter(landmark -> landmark.value().compareTo(size) > 0);
    return new Neighbours(below.limit(each).toList(), above.limit(each).toList());
  }

  private static Landmark landmark(Table.Row row) {
    return new Landmark(
        row.get("quantity"),
        new BigDecimal(row.get("value")),
        row.get("unit"),
        Known.parse(row.get("known")),
        row.get("name"),
        row.get("source"));
  }
}
