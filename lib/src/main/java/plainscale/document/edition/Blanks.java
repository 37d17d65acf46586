package plainscale.document.edition;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Format;
import plainscale.render.PageWords;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Piece.Live;
import plainscale.sheet.Piece.Quoted;
import plainscale.sheet.Piece.Words;
import plainscale.sheet.Result;

/**
 * Results as what is left of them on a page that is to be filled in: each kind of result gives up
 * what its cell leaves blank, and nothing that was computed goes on from here.
 */
final class Blanks implements Result.Visitor<List<Worksheet>> {
  private final Task task;
  private final NumberBlanks numbers;
  private final TableBlanks tables;
  private final ForceBlanks forces;
  private Result.@Nullable Written before;

  Blanks(Task task) {
    this.task = task;
    this.numbers = new NumberBlanks(task);
    this.tables = new TableBlanks(task);
    this.forces = new ForceBlanks(task);
  }

  /** What is left of the results of a cell. */
  static List<Worksheet> of(List<Result> results, Task task) {
    Blanks blanks = new Blanks(task);
    return results.stream().flatMap(result -> result.accept(blanks).stream()).toList();
  }

  @Override
  public List<Worksheet> valued(Result.Valued valued) {
    return List.of(numbers.valued(valued));
  }

  /** The same number in other words needs no other digits. */
  @Override
  public List<Worksheet> written(Result.Written written) {
    boolean again = before != null && numbers.isSame(before, written);
    before = written;
    return List.of(again ? numbers.inOtherWords(written) : numbers.written(written));
  }

  @Override
  public List<Worksheet> contrasted(Result.Contrasted contrast) {
    return numbers.contrasted(contrast);
  }

  @Override
  public List<Worksheet> placed(Result.Placed placed) {
    return List.of(numbers.placed(placed));
  }

  @Override
  public List<Worksheet> expanded(Result.Expanded expanded) {
    return numbers.expanded(expanded);
  }

  @Override
  public List<Worksheet> pictured(Result.Pictured pictured) {
    return List.of(numbers.pictured(pictured));
  }

  /** No cell of a lesson makes one. */
  @Override
  public List<Worksheet> drawn(Result.Drawn drawn) {
    return List.of();
  }

  /** A relation stays unless all is blank; then its words ask for it. */
  @Override
  public List<Worksheet> stated(Result.Stated stated) {
    return task.hidesRelations()
        ? toWrite(stated.name(), stated.description())
        : List.of(relation(stated));
  }

  private static Worksheet relation(Result.Stated stated) {
    List<Piece> pieces = new ArrayList<>(List.of(new Piece.Words(stated.name() + ": ")));
    pieces.add(new Piece.Line(stated.equation(), stated.writing()));
    if (!stated.description().isEmpty()) {
      pieces.add(new Piece.Words("  " + stated.description()));
    }
    return new Worksheet.Text(pieces);
  }

  private static List<Worksheet> toWrite(String name, String description) {
    return List.of(together(List.of(words(name + ": " + description), new Worksheet.Ruled(1))));
  }

  static Worksheet together(List<Worksheet> items) {
    return new Worksheet.Together(Worksheet.Together.Style.RESULT, items);
  }

  @Override
  public List<Worksheet> derived(Result.Derived derived) {
    return List.of(new DerivedBlanks(task, derived).worksheet());
  }

  @Override
  public List<Worksheet> compared(Result.Compared compared) {
    return List.of(together(tables.compared(compared)));
  }

  @Override
  public List<Worksheet> sideBySide(Result.SideBySide sideBySide) {
    return tables.sideBySide(sideBySide);
  }

  @Override
  public List<Worksheet> forces(Result.Forces result) {
    return forces.forces(result);
  }

  @Override
  public List<Worksheet> paired(Result.Paired paired) {
    return List.of(forces.paired());
  }

  @Override
  public List<Worksheet> field(FieldResult field) {
    return field.accept(new FieldBlanks(task));
  }

  @Override
  public List<Worksheet> dependence(Result.Dependence dependence) {
    return List.of(tables.dependence(dependence));
  }

  @Override
  public List<Worksheet> varied(Result.Varied varied) {
    return List.of(tables.varied(varied));
  }

  @Override
  public List<Worksheet> limited(Result.Limited limited) {
    return tables.limited(limited);
  }

  @Override
  public List<Worksheet> budgeted(Result.Budgeted budgeted) {
    return List.of(together(tables.budgeted(budgeted)));
  }

  /** Live values are gaps, and so are equations that are to be found. */
  @Override
  public List<Worksheet> narrated(Result.Narrated narrated) {
    return List.of(
        new Worksheet.Text(narrated.pieces().stream().flatMap(p -> piece(p).stream()).toList()));
  }

  private List<Piece> piece(plainscale.sheet.Piece piece) {
    if (piece instanceof Words words) {
      return List.of(new Piece.Words(words.text()));
    }
    if (piece instanceof Live live) {
      boolean words = live.numeral().style() != Format.Style.NUMBER;
      return words ? List.of(Piece.Gap.VALUE) : Task.asked(live.numeral().shown().unit());
    }
    Quoted quoted = (Quoted) piece;
    String number = quoted.number() == 0 ? "" : "(" + quoted.number() + ") ";
    boolean hidden = task.hidesRelations() || task.key().isHidden(quoted.equation());
    return List.of(
        new Piece.Words(number),
        hidden ? Piece.Gap.VALUE : new Piece.Line(quoted.equation(), quoted.writing()));
  }

  @Override
  public List<Worksheet> captioned(Result.Captioned captioned) {
    return List.of(new Worksheet.Caption(PageWords.caption(captioned)));
  }

  @Override
  public List<Worksheet> data(DataResult data) {
    return data.acceptData(new DataBlanks(task));
  }

  /** Remarks tell of values. */
  @Override
  public List<Worksheet> noted(Result.Noted noted) {
    return List.of();
  }

  /** What the author left open is open here too; its sentence names no value. */
  @Override
  public List<Worksheet> unfinished(Result.Unfinished unfinished) {
    return List.of(words(unfinished.sentence()));
  }

  /**
   * Cautions stay, also those that a value sets off, without the value; judgements of values go.
   */
  @Override
  public List<Worksheet> guard(GuardResult guard) {
    if (guard instanceof GuardResult.SetOff setOff) {
      return List.of(new Worksheet.Whole(new GuardResult.Cautioned(List.of(setOff.hazard()))));
    }
    return guard instanceof GuardResult.Cautioned ? List.of(new Worksheet.Whole(guard)) : List.of();
  }

  /** A law is a relation of its cell. */
  @Override
  public List<Worksheet> law(LawResult law) {
    if (!task.hidesRelations()) {
      return List.of(new Worksheet.Whole(law));
    }
    return law instanceof LawResult.Used used
        ? toWrite(used.name(), used.description())
        : List.of();
  }

  private static Worksheet words(String words) {
    return new Worksheet.Text(List.of(new Piece.Words(words)));
  }

  /** Cells in other languages have no blanks, and no students' edition. */
  @Override
  public List<Worksheet> printed(Result.Printed printed) {
    return List.of();
  }

  @Override
  public List<Worksheet> failed(Result.Failed failed) {
    return List.of();
  }

  @Override
  public List<Worksheet> mistaken(Result.Mistaken mistaken) {
    return List.of(words(task.words().say("mistake")));
  }
}
