package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.SquaredPaper;
import plainscale.render.BlankPictures;
import plainscale.render.PageWords;
import plainscale.sheet.DataResult;

/** What is left of the results of a class: names of columns, empty cells, paper with its axes. */
final class DataBlanks implements DataResult.Visitor<List<Worksheet>> {
  private static final int PAPER = 18;
  private static final int BINS = 6;

  private final Task task;

  DataBlanks(Task task) {
    this.task = task;
  }

  @Override
  public List<Worksheet> listed(DataResult.Listed listed) {
    List<List<List<Piece>>> rows =
        listed.columns().stream()
            .map(line -> Task.row(List.of(new Piece.Words(line.heading())), 3))
            .toList();
    return List.of(
        new Worksheet.Heading(listed.file()),
        new Worksheet.Grid(task.head("column", "smallest", "largest", "mean"), rows));
  }

  @Override
  public List<Worksheet> described(DataResult.Described described) {
    List<List<List<Piece>>> rows =
        described.entries().stream()
            .map(e -> Task.row(List.of(new Piece.Words(PageWords.measure(e.measure()))), 1))
            .toList();
    List<List<Piece>> head = new ArrayList<>(task.head(""));
    head.add(List.of(new Piece.Name(described.name())));
    return List.of(
        new Worksheet.Heading(task.words().say("statistics", described.name())),
        new Worksheet.Grid(head, rows));
  }

  private Worksheet paper(String title, SquaredPaper.Axes axes, String key) {
    String alternative = task.words().say("draw", task.words().say(key));
    return new Worksheet.Picture(SquaredPaper.of(title, axes, PAPER, alternative));
  }

  @Override
  public List<Worksheet> counted(DataResult.Counted counted) {
    List<List<Piece>> head = task.head("from", "to-below", "number");
    return List.of(
        new Worksheet.Grid(head, Task.emptyRows(BINS, head.size())),
        paper(counted.title(), BlankPictures.axes(counted), "draw.histogram"));
  }

  /** What kind of curve is asked for; which one it is, only where formulas are shown. */
  @Override
  public List<Worksheet> fitted(DataResult.Fitted fitted) {
    List<Worksheet> items = new ArrayList<>();
    List<Piece> line = new ArrayList<>(List.of(new Piece.Words(PageWords.curve(fitted) + ": ")));
    line.add(
        task.hidesFormulas()
            ? Piece.Gap.VALUE
            : new Piece.Line(fitted.formula(), fitted.writing()));
    items.add(new Worksheet.Text(line));
    items.add(
        paper(
            fitted.title(),
            BlankPictures.axes(fitted.cloud().across(), fitted.cloud().up()),
            "draw.plot"));
    for (DataResult.Parameter parameter : fitted.parameters()) {
      List<Piece> pieces = new ArrayList<>(List.of(new Piece.Name(parameter.name())));
      pieces.add(new Piece.Words(" = "));
      pieces.addAll(Task.asked(parameter.value().unit()));
      items.add(new Worksheet.Entry(pieces, List.of(), parameter.role()));
    }
    return items;
  }

  @Override
  public List<Worksheet> plotted(DataResult.Plotted plotted) {
    SquaredPaper.Axes axes =
        task.hidesFormulas() // which is what stands along the axis of a curve
            ? SquaredPaper.Axes.NONE
            : BlankPictures.axes(plotted.across(), plotted.up());
    return List.of(paper(plotted.title(), axes, "draw.plot"));
  }
}
