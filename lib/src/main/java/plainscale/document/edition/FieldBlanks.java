package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.SquaredPaper;
import plainscale.render.PageWords;
import plainscale.sheet.FieldResult;

/** What is left of fields: what the sources are, the symbols, and paper to draw on. */
final class FieldBlanks implements FieldResult.Visitor<List<Worksheet>> {
  private static final int PAPER = 18;
  private static final int MOMENTS = 4;

  private final Task task;

  FieldBlanks(Task task) {
    this.task = task;
  }

  private Worksheet heading(String words, String description) {
    return new Worksheet.Heading(description.isEmpty() ? words : words + " (" + description + ")");
  }

  /** Amounts and places may have been computed. */
  @Override
  public List<Worksheet> declared(FieldResult.Declared declared) {
    List<List<List<Piece>>> rows = new ArrayList<>();
    declared
        .rows()
        .forEach(row -> rows.add(Task.row(List.of(new Piece.Words(PageWords.source(row))), 2)));
    return List.of(
        heading(task.words().say("field", declared.name()), declared.description()),
        new Worksheet.Grid(task.head("source", "amount", "where"), rows));
  }

  @Override
  public List<Worksheet> probed(FieldResult.Probed probed) {
    List<Worksheet> items = new ArrayList<>();
    items.add(heading(task.words().say("field.at", probed.name()), probed.description()));
    items.add(new Worksheet.Text(task.words().line("place", Piece.Gap.VALUE)));
    for (FieldResult.Value value : probed.values()) {
      List<Piece> pieces = new ArrayList<>(List.of(new Piece.Name(value.symbol())));
      pieces.add(new Piece.Words(" = "));
      pieces.addAll(Task.gap(value.shown().unit()));
      items.add(new Worksheet.Entry(pieces, List.of(), value.words()));
    }
    return items;
  }

  private Worksheet paper(String title, String key) {
    String alternative = task.words().say("draw", task.words().say(key));
    return new Worksheet.Picture(
        SquaredPaper.of(title, SquaredPaper.Axes.NONE, PAPER, alternative));
  }

  @Override
  public List<Worksheet> mapped(FieldResult.Mapped mapped) {
    return List.of(paper(mapped.title(), "draw.map"));
  }

  @Override
  public List<Worksheet> reliefed(FieldResult.Reliefed reliefed) {
    return List.of(paper(reliefed.title(), "draw.relief"));
  }

  @Override
  public List<Worksheet> sectioned(FieldResult.Sectioned sectioned) {
    return List.of(paper(sectioned.title(), "draw.section"));
  }

  @Override
  public List<Worksheet> released(FieldResult.Released released) {
    List<List<Piece>> head = new ArrayList<>();
    PageWords.moments().forEach(word -> head.add(List.of(new Piece.Words(word))));
    return List.of(
        paper(released.title(), "draw.way"),
        new Worksheet.Grid(head, Task.emptyRows(MOMENTS, head.size())));
  }
}
