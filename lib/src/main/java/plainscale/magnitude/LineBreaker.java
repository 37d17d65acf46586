package plainscale.magnitude;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Breaks the digits of a number into lines at whole groups, counted from the decimal marker. */
final class LineBreaker {
  private final int most;
  private final int mostBefore;

  /** At most so many digits on a line; of groups by three and then two, 29 of 30. */
  LineBreaker(int most, DigitStyle style) {
    DigitStyle.Grouping groups = style.grouping();
    this.most = most;
    this.mostBefore =
        groups.first() <= 0 ? most : most - Math.floorMod(most - groups.first(), groups.next());
  }

  /** The lines from top to bottom; the last line of the whole part is the first with the marker. */
  List<Alignment.Line> lines(Digits digits) {
    List<Run> signs = single(digits.runs());
    int marker = marker(signs);
    List<List<Run>> whole = fromRight(signs.subList(0, marker));
    List<List<Run>> part = fromLeft(signs.subList(marker, signs.size()));
    List<Alignment.Line> lines = new ArrayList<>();
    whole.subList(0, whole.size() - 1).forEach(line -> lines.add(line(line, List.of())));
    lines.add(line(whole.get(whole.size() - 1), part.isEmpty() ? List.of() : part.get(0)));
    part.stream().skip(1).forEach(line -> lines.add(line(List.of(), line)));
    return lines;
  }

  private static Alignment.Line line(List<Run> whole, List<Run> part) {
    return new Alignment.Line(Run.joined(whole), Run.joined(part));
  }

  private static List<Run> single(List<Run> runs) {
    List<Run> signs = new ArrayList<>();
    for (Run run : runs) {
      if (run.role() == Role.SEPARATOR || run.role() == Role.MARKER) {
        signs.add(run);
      } else {
        run.text().codePoints().forEach(c -> signs.add(new Run(run.role(), Character.toString(c))));
      }
    }
    return signs;
  }

  private static int marker(List<Run> signs) {
    for (int i = 0; i < signs.size(); i++) {
      if (signs.get(i).role() == Role.MARKER) {
        return i;
      }
    }
    return signs.size();
  }

  private List<List<Run>> fromRight(List<Run> signs) {
    List<Run> turned = new ArrayList<>(signs);
    Collections.reverse(turned);
    List<List<Run>> lines = broken(turned, mostBefore);
    lines.forEach(Collections::reverse);
    Collections.reverse(lines);
    return lines;
  }

  private List<List<Run>> fromLeft(List<Run> signs) {
    return broken(signs, most);
  }

  /** The separator at which a line is broken goes. */
  private static List<List<Run>> broken(List<Run> signs, int most) {
    List<List<Run>> lines = new ArrayList<>();
    List<Run> line = new ArrayList<>();
    int digits = 0;
    for (Run sign : signs) {
      boolean digit = sign.role().isDigit();
      boolean over = digits == most && (digit || sign.role() == Role.SEPARATOR);
      if (over) {
        lines.add(line);
        line = new ArrayList<>();
        digits = 0;
      }
      if (!(over && !digit)) {
        line.add(sign);
      }
      digits += digit ? 1 : 0;
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }
}
