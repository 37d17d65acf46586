package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import plainscale.document.LessonCell;
import plainscale.document.Prose;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.render.Html;

/**
 * When what begins: the cells that say how long a class takes for them, one after another. Such a
 * cell is called by the last heading up to it; what stands below one heading is one line.
 */
final class Timing {
  private final FixedWords words;
  private final List<Slot> slots = new ArrayList<>();

  private record Slot(String what, int minutes) {}

  Timing(Cells cells) {
    this.words = cells.words();
    String heading = cells.worked().lesson().title();
    for (WorkedCell cell : cells.shown()) {
      heading = heading(cell).orElse(heading);
      OptionalInt minutes = cell.cell().head().minutes();
      if (minutes.isPresent()) {
        add(heading, minutes.getAsInt());
      }
    }
  }

  private static Optional<String> heading(WorkedCell cell) {
    return cell.cell() instanceof LessonCell.Prose prose
        ? Prose.headings(prose).stream().findFirst()
        : Optional.empty();
  }

  private void add(String what, int minutes) {
    int last = slots.size() - 1;
    if (last >= 0 && slots.get(last).what().equals(what)) {
      slots.set(last, new Slot(what, slots.get(last).minutes() + minutes));
    } else {
      slots.add(new Slot(what, minutes));
    }
  }

  /** The table; empty if no cell says how long it takes. */
  String html() {
    if (slots.isEmpty()) {
      return "";
    }
    StringBuilder rows = new StringBuilder();
    int clock = 0;
    for (Slot slot : slots) {
      rows.append(row(clock + "–" + (clock + slot.minutes()), slot.what()));
      clock += slot.minutes();
    }
    String all = words.say("together") + ": " + words.say("minutes", clock);
    return "<table class=\"plan\"><thead><tr><th>"
        + Html.escape(words.say("minute"))
        + "</th><th>"
        + Html.escape(words.say("plan"))
        + "</th></tr></thead><tbody>"
        + rows
        + "</tbody></table>\n<p>"
        + Html.escape(all)
        + "</p>\n";
  }

  private static String row(String minutes, String what) {
    return "<tr><td>" + minutes + "</td><td>" + Html.escape(what) + "</td></tr>";
  }
}
