package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.render.BlankPictures;
import plainscale.render.PageWords;
import plainscale.sheet.Result;

/** What is left of forces: the body, paper with its dot, and empty tables. */
final class ForceBlanks {
  /** More rows than forces act on a body in a lesson; their number is part of the answer. */
  private static final int ROWS = 5;

  private final Task task;

  ForceBlanks(Task task) {
    this.task = task;
  }

  List<Worksheet> forces(Result.Forces forces) {
    List<Worksheet> items = new ArrayList<>();
    String body = PageWords.body(forces.diagram().body());
    items.add(new Worksheet.Heading(task.words().say("forces.on", body)));
    List<List<Piece>> head = task.head("force", "size", "direction", "by");
    items.add(new Worksheet.Grid(head, Task.emptyRows(ROWS, head.size())));
    items.add(new Worksheet.Picture(BlankPictures.forces(forces)));
    return items;
  }

  Worksheet paired() {
    List<List<Piece>> head = task.head("force", "on", "by", "partner");
    return new Worksheet.Grid(head, Task.emptyRows(ROWS, head.size()));
  }
}
