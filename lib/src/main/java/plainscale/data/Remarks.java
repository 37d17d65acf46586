package plainscale.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The remarks about a file: the first hundred of each kind in the order of the file, and how many
 * there were of each.
 */
public record Remarks(List<Remark> first, Map<Remark.Kind, Integer> counts) {
  /** How many of a kind are kept; a file may have a million bad cells. */
  public static final int KEPT = 100;

  /** Keeps its own copies. */
  public Remarks {
    first = List.copyOf(first);
    counts = Collections.unmodifiableMap(new TreeMap<>(counts));
  }

  /** How many there were of a kind. */
  public int count(Remark.Kind kind) {
    return counts.getOrDefault(kind, 0);
  }

  /** Those of a kind that were kept. */
  public List<Remark> of(Remark.Kind kind) {
    return first.stream().filter(remark -> remark.kind() == kind).toList();
  }

  /** Collects remarks while a file is read. */
  static final class Builder {
    private final List<Remark> first = new ArrayList<>();
    private final Map<Remark.Kind, Integer> counts = new EnumMap<>(Remark.Kind.class);

    void add(Remark remark) {
      if (counts.merge(remark.kind(), 1, Integer::sum) <= KEPT) {
        first.add(remark);
      }
    }

    Remarks build() {
      return new Remarks(first, counts);
    }
  }
}
