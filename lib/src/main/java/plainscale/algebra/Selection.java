package plainscale.algebra;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Which relations are needed for an unknown: sets of as many relations as unknowns, the smallest
 * sets first.
 */
final class Selection {
  private static final int MOST_SETS = 3000;
  private static final int MOST_FOUND = 12;

  private final List<Set<String>> unknowns;
  private boolean complete = true;

  /** The unknowns of each relation. */
  Selection(List<Line> relations, Predicate<String> isUnknown) {
    this.unknowns =
        relations.stream()
            .map(line -> line.names().stream().filter(isUnknown).toList())
            .map(names -> (Set<String>) new TreeSet<>(names))
            .toList();
  }

  /** The sets of numbers of relations, counted from zero. */
  List<BitSet> determining(String name) {
    Deque<BitSet> queue = new ArrayDeque<>();
    Set<BitSet> seen = new HashSet<>();
    List<BitSet> found = new ArrayList<>();
    with(name, new BitSet()).forEach(queue::add);
    while (!queue.isEmpty() && found.size() < MOST_FOUND) {
      BitSet set = queue.remove();
      if (!seen.add(set)) {
        continue;
      }
      if (seen.size() > MOST_SETS) {
        complete = false;
        break;
      }
      Set<String> names = names(set);
      if (names.size() <= set.cardinality()) {
        found.add(set);
      } else {
        names.forEach(other -> queue.addAll(with(other, set)));
      }
    }
    return found;
  }

  /** Whether the last search looked at every set. */
  boolean isComplete() {
    return complete;
  }

  private List<BitSet> with(String name, BitSet set) {
    List<BitSet> larger = new ArrayList<>();
    for (int i = 0; i < unknowns.size(); i++) {
      if (!set.get(i) && unknowns.get(i).contains(name)) {
        BitSet next = (BitSet) set.clone();
        next.set(i);
        larger.add(next);
      }
    }
    return larger;
  }

  Set<String> names(BitSet set) {
    Set<String> names = new TreeSet<>();
    set.stream().forEach(i -> names.addAll(unknowns.get(i)));
    return names;
  }

  /** Every relation that has to do with the name, directly or through others. */
  BitSet connected(String name) {
    BitSet set = new BitSet();
    Deque<String> names = new ArrayDeque<>(List.of(name));
    Set<String> seen = new HashSet<>(names);
    while (!names.isEmpty()) {
      String next = names.remove();
      for (BitSet larger : with(next, set)) {
        larger.andNot(set);
        int added = larger.nextSetBit(0);
        unknowns.get(added).stream().filter(seen::add).forEach(names::add);
        set.set(added);
      }
    }
    return set;
  }

  /**
   * Those of the connected relations whose other unknowns can go: a name that stands in one
   * relation only cannot be eliminated, and the relation is of no use.
   */
  BitSet entangled(String name) {
    BitSet set = connected(name);
    BitSet before = new BitSet();
    while (!before.equals(set)) {
      before = (BitSet) set.clone();
      BitSet now = before;
      now.stream().filter(i -> hasLonely(i, now, name)).forEach(set::clear);
    }
    return names(set).contains(name) ? set : new BitSet();
  }

  private boolean hasLonely(int relation, BitSet set, String name) {
    return unknowns.get(relation).stream()
        .filter(other -> !other.equals(name))
        .anyMatch(other -> set.stream().filter(i -> unknowns.get(i).contains(other)).count() == 1);
  }
}
