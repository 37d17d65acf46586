package plainscale.document.edition;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;

/**
 * How many boxes for digits stand before the decimal marker and behind it. The count is rounded up
 * to a multiple of six with three to spare at least, so that it does not tell how many digits there
 * are, and it is the same for all numbers that are set under one another.
 */
record BoxCount(int whole, int part, DigitStyle style) {
  private static final int ROUND = 6;
  private static final int SPARE = 3;

  /** More boxes fill a page. */
  private static final int MOST = 60;

  /** The boxes in one line on paper. */
  static final int IN_A_LINE = 24;

  /** Room for each of these numbers; none if they are too long for boxes. */
  static Optional<BoxCount> of(List<BigDecimal> numbers, DigitStyle style) {
    List<Digits> digits = numbers.stream().map(number -> Digits.of(number, style)).toList();
    int whole = digits.stream().mapToInt(Digits::integerPlaces).max().orElse(1);
    int part = digits.stream().mapToInt(Digits::decimalPlaces).max().orElse(0);
    BoxCount count = new BoxCount(rounded(whole), part == 0 ? 0 : rounded(part), style);
    boolean fits = digits.stream().allMatch(Digits::full) && count.whole + count.part <= MOST;
    return fits ? Optional.of(count) : Optional.empty();
  }

  private static int rounded(int places) {
    return (places + SPARE + ROUND - 1) / ROUND * ROUND;
  }

  /** A line of boxes: groups of them before the marker, and behind it. */
  record Line(List<Integer> whole, List<Integer> part) {}

  /** In one line if there is room, else what stands before the marker and what stands behind it. */
  List<Line> lines() {
    if (whole + part <= IN_A_LINE) {
      return List.of(new Line(before(whole, 0), behind(part)));
    }
    List<Line> lines = new ArrayList<>();
    int first = whole % IN_A_LINE;
    if (first > 0) {
      lines.add(new Line(before(first, whole - first), List.of()));
    }
    for (int rest = whole - first; rest > 0; rest -= IN_A_LINE) {
      lines.add(new Line(before(IN_A_LINE, rest - IN_A_LINE), List.of()));
    }
    for (int done = 0; done < part; done += IN_A_LINE) {
      lines.add(new Line(List.of(), behind(Math.min(IN_A_LINE, part - done))));
    }
    return lines;
  }

  /** Groups of boxes from left to right, the last of them {@code rest} places from the marker. */
  private List<Integer> before(int boxes, int rest) {
    List<Integer> groups = new ArrayList<>();
    int open = 0;
    for (int place = rest + boxes; place > rest; place--) {
      open++;
      if (endsGroup(place - 1)) {
        groups.add(open);
        open = 0;
      }
    }
    if (open > 0) {
      groups.add(open);
    }
    return groups;
  }

  /** Whether a group ends where so many places are left before the marker. */
  private boolean endsGroup(int left) {
    int first = style.grouping().first();
    return left == 0 || (left >= first && (left - first) % style.grouping().next() == 0);
  }

  private List<Integer> behind(int boxes) {
    List<Integer> groups = new ArrayList<>();
    int group = style.grouping().first();
    for (int done = 0; done < boxes; done += group) {
      groups.add(Math.min(group, boxes - done));
    }
    return groups;
  }
}
