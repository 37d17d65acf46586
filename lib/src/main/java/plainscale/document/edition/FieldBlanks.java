package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.FieldItem;
import plainscale.notation.FieldStatement;
import plainscale.notation.Place;
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

  /** The sources as they were written; their values may have been computed. */
  @Override
  public List<Worksheet> declared(FieldResult.Declared declared) {
    List<List<List<Piece>>> rows = new ArrayList<>();
    for (int i = 0; i < declared.rows().size(); i++) {
      FieldItem item = declared.written().get(i);
      Piece source = new Piece.Words(PageWords.source(declared.rows().get(i)));
      rows.add(
          List.of(
              List.of(source),
              formula(item.amount(), declared.writing()),
              where(item, declared.writing())));
    }
    return List.of(
        heading(task.words().say("field", declared.name()), declared.description()),
        new Worksheet.Grid(task.head("source", "amount", "where"), rows));
  }

  private List<Piece> formula(Expr formula, Writing writing) {
    return task.hidesFormulas() ? List.of() : List.of(new Piece.Formula(formula, writing));
  }

  private List<Piece> where(FieldItem item, Writing writing) {
    if (task.hidesFormulas()) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>(place(item.at(), writing));
    item.end()
        .ifPresent(
            end -> {
              pieces.add(new Piece.Words(" … "));
              pieces.addAll(place(end, writing));
            });
    item.extent()
        .ifPresent(
            extent -> {
              pieces.add(new Piece.Words("; " + PageWords.extent(item.shape()) + " "));
              pieces.add(new Piece.Formula(extent, writing));
            });
    return pieces;
  }

  private static List<Piece> place(Place place, Writing writing) {
    return List.of(
        new Piece.Words("("),
        new Piece.Formula(place.x(), writing),
        new Piece.Words(", "),
        new Piece.Formula(place.y(), writing),
        new Piece.Words(")"));
  }

  @Override
  public List<Worksheet> probed(FieldResult.Probed probed) {
    List<Worksheet> items = new ArrayList<>();
    items.add(heading(task.words().say("field.at", probed.name()), probed.description()));
    List<Piece> where = new ArrayList<>(List.of(new Piece.Words(task.words().say("place") + " ")));
    where.addAll(
        task.hidesFormulas()
            ? List.of(Piece.Gap.VALUE)
            : place(probed.written(), probed.writing()));
    items.add(new Worksheet.Text(where));
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
    List<Worksheet> items = new ArrayList<>();
    if (!task.hidesFormulas()) {
      items.add(body(released.written(), released.writing()));
    }
    items.add(paper(released.title(), "draw.way"));
    items.add(new Worksheet.Grid(head, Task.emptyRows(MOMENTS, head.size())));
    return items;
  }

  /** What is released, where, and how fast. */
  private Worksheet body(FieldStatement.Body body, Writing writing) {
    List<Piece> pieces = new ArrayList<>();
    body.charge()
        .ifPresent(
            charge -> {
              pieces.add(new Piece.Formula(charge, writing));
              pieces.add(new Piece.Words(", "));
            });
    pieces.add(new Piece.Formula(body.mass(), writing));
    pieces.add(new Piece.Words("; " + task.words().say("place") + " "));
    pieces.addAll(place(body.at(), writing));
    body.velocity()
        .ifPresent(
            velocity -> {
              pieces.add(new Piece.Words("; " + task.words().say("velocity") + " "));
              pieces.addAll(place(velocity, writing));
            });
    return new Worksheet.Text(pieces);
  }
}
