package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.algebra.Equation;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.render.PageWords;
import plainscale.sheet.CaseTable;
import plainscale.sheet.Result;

/** What is left of comparisons and tables: what is changed, names, and empty cells. */
final class TableBlanks {
  /** Rows of a limit and of a budget; how many there are would tell something. */
  private static final int ROWS = 4;

  private final Task task;

  TableBlanks(Task task) {
    this.task = task;
  }

  /** What if: what is changed, then for each quantity before, after, and why. */
  List<Worksheet> compared(Result.Compared compared) {
    Writing writing = compared.writing();
    List<Piece> question = new ArrayList<>(List.of(words("", "what-if", " ")));
    for (Equation change : compared.changes()) {
      separate(question);
      question.add(new Piece.Line(change, writing));
    }
    for (Result.Reworded relation : compared.relations()) {
      separate(question);
      question.addAll(reworded(relation, writing));
    }
    List<List<List<Piece>>> rows =
        compared.rows().stream().map(row -> row(row.label(), 3, writing)).toList();
    List<List<Piece>> head = task.head("", "before", "after", "larger-smaller");
    return List.of(new Worksheet.Text(question), new Worksheet.Grid(head, rows));
  }

  private Piece words(String before, String key, String after) {
    return new Piece.Words(before + task.words().say(key) + after);
  }

  private static void separate(List<Piece> pieces) {
    if (pieces.size() > 1) {
      pieces.add(new Piece.Words(", "));
    }
  }

  private List<Piece> reworded(Result.Reworded relation, Writing writing) {
    return List.of(
        new Piece.Words(relation.name() + ": "),
        relation(relation.after(), writing),
        words("  ", "instead", "  "),
        relation(relation.before(), writing));
  }

  private Piece relation(Equation equation, Writing writing) {
    return task.hidesRelations() || task.key().isHidden(equation)
        ? Piece.Gap.VALUE
        : new Piece.Line(equation, writing);
  }

  private List<List<Piece>> row(Result.Label label, int empty, Writing writing) {
    return Task.row(task.named(label, writing), empty);
  }

  /** What each case changes, a column for each case. */
  List<Worksheet> sideBySide(Result.SideBySide sideBySide) {
    CaseTable table = sideBySide.table();
    Writing writing = sideBySide.writing();
    List<Worksheet> items = new ArrayList<>();
    for (CaseTable.Reworded change : table.changes()) {
      items.add(inCase(change.inCase(), List.of(new Piece.Line(change.equation(), writing))));
    }
    for (CaseTable.Reworded change : table.relations()) {
      Piece name = new Piece.Words(change.name() + ": ");
      items.add(inCase(change.inCase(), List.of(name, relation(change.equation(), writing))));
    }
    int cases = table.cases().size();
    List<List<List<Piece>>> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(row(row.label(), cases + 1, writing)));
    items.add(new Worksheet.Grid(head("", table), rows));
    if (!table.forces().isEmpty()) {
      items.add(
          new Worksheet.Grid(
              head("force", table),
              table.forces().stream().map(row -> force(row, cases + 1)).toList()));
    }
    return items;
  }

  private Worksheet inCase(String name, List<Piece> pieces) {
    List<Piece> all =
        new ArrayList<>(List.of(new Piece.Words(task.words().say("in-case", name) + " ")));
    all.addAll(pieces);
    return new Worksheet.Text(all);
  }

  private List<List<Piece>> head(String first, CaseTable table) {
    List<List<Piece>> head = new ArrayList<>(task.head(first));
    table.cases().forEach(name -> head.add(List.of(new Piece.Words(name))));
    head.addAll(task.head("larger-smaller"));
    return head;
  }

  private static List<List<Piece>> force(CaseTable.Row row, int empty) {
    String name = row.label().name().orElse("");
    String words = name + " → " + PageWords.body(row.label().description());
    return Task.row(List.of(new Piece.Words(words)), empty);
  }

  Worksheet dependence(Result.Dependence dependence) {
    List<Piece> pieces = new ArrayList<>(task.named(dependence.label(), Writing.USUAL));
    pieces.add(new Piece.Words(" ∝ "));
    pieces.add(new Piece.Name(dependence.on()));
    pieces.add(new Piece.Words(" "));
    pieces.addAll(task.words().line("to-the-power", Piece.Gap.NUMBER));
    return new Worksheet.Text(pieces);
  }

  /** The head, and the first column unless its name is to be found itself. */
  Worksheet varied(Result.Varied varied) {
    List<List<List<Piece>>> rows =
        varied.rows().stream()
            .map(row -> Task.row(first(varied, row.get(0)), row.size() - 1))
            .toList();
    return new Worksheet.Grid(head(varied), rows);
  }

  private List<List<Piece>> head(Result.Varied varied) {
    return varied.head().stream().map(label -> task.named(label, varied.writing())).toList();
  }

  private List<Piece> first(Result.Varied varied, Optional<Shown> value) {
    boolean hidden =
        task.hidesRelations()
            || varied.head().get(0).name().filter(task.key()::isHidden).isPresent();
    return hidden || value.isEmpty()
        ? List.of()
        : List.of(new Piece.Given(value.get(), varied.writing()));
  }

  /** A few empty rows, then for each quantity the question what becomes of it. */
  List<Worksheet> limited(Result.Limited limited) {
    List<Worksheet> items = new ArrayList<>();
    List<List<Piece>> head = head(limited.table());
    items.add(new Worksheet.Grid(head, Task.emptyRows(ROWS, head.size())));
    for (List<Piece> quantity : head.subList(1, head.size())) {
      List<Piece> line = new ArrayList<>(quantity);
      line.add(words(": ", "limit", " "));
      line.add(Piece.Gap.REST);
      items.add(new Worksheet.Text(line));
    }
    return items;
  }

  /** The value, and empty rows: the order of the sources is the answer. */
  List<Worksheet> budgeted(Result.Budgeted budgeted) {
    Writing writing = budgeted.writing();
    List<Piece> line = new ArrayList<>(task.named(budgeted.label(), writing));
    line.add(new Piece.Words(" = "));
    line.addAll(Task.asked(budgeted.shown().unit()));
    List<Worksheet> items = new ArrayList<>(List.of(new Worksheet.Text(line)));
    items.add(new Worksheet.Grid(task.head("source", "share"), Task.emptyRows(ROWS, 2)));
    items.add(new Worksheet.Text(task.words().line("improve", Piece.Gap.NUMBER)));
    return items;
  }
}
