package plainscale.magnitude;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;

/** A stretch of a written number in one role: {@code (SIGNIFICANT, "8")}. */
public record Run(Role role, String text) {

  /** The text of several runs. */
  public static String text(List<Run> runs) {
    return runs.stream().map(Run::text).collect(joining());
  }

  /** Neighbours in one role become one run. */
  static List<Run> joined(List<Run> runs) {
    List<Run> joined = new ArrayList<>();
    for (Run run : runs) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).role() == run.role()) {
        joined.set(last, new Run(run.role(), joined.get(last).text() + run.text()));
      } else {
        joined.add(run);
      }
    }
    return joined;
  }
}
