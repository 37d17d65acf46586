package plainscale.document;

import plainscale.render.Renderers;
import plainscale.text.Printable;

/** A worked lesson as plain text for a terminal. */
public final class LessonText {
  private LessonText() {}

  /** The text of one cell: its prose, or its results. */
  public static String of(WorkedLesson.WorkedCell worked) {
    if (worked.cell() instanceof LessonCell.Prose prose) {
      return Printable.of(Prose.text(prose));
    }
    return Renderers.text(worked.results()).indent(2).stripTrailing();
  }
}
