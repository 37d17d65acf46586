package plainscale.document.edition;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plainscale.magnitude.Expansion;
import plainscale.magnitude.Writing;
import plainscale.picture.SquaredPaper;
import plainscale.quantity.Shown;
import plainscale.render.BlankPictures;
import plainscale.sheet.Result;

/** What is left of values, and of numbers that are written out, compared and drawn. */
final class NumberBlanks {
  /** The boxes that a picture of scale is high. */
  private static final int PAPER = 16;

  private static final Pattern LIMITS = Pattern.compile("(?:^|; )[^;]*±[^;]*$");

  private final Task task;

  NumberBlanks(Task task) {
    this.task = task;
  }

  Worksheet valued(Result.Valued valued) {
    Writing writing = valued.writing();
    List<List<Piece>> sides = new ArrayList<>(task.sides(valued.label(), writing));
    boolean known = Key.isKnown(valued, task.blank());
    Shown shown = valued.shown();
    sides.add(known ? List.of(new Piece.Given(shown, writing)) : Task.asked(shown.unit()));
    List<Piece> beside = new ArrayList<>();
    if (known && valued.role() == Result.Role.GIVEN) {
      beside.add(new Piece.Words(task.words().say("own") + " "));
      beside.addAll(Task.asked(shown.unit()));
    }
    return new Worksheet.Entry(Task.equal(sides), beside, description(valued.label()));
  }

  /** The limits of a given stand in its description; they go with its value. */
  private String description(Result.Label label) {
    return task.hidesRelations()
        ? LIMITS.matcher(label.description()).replaceFirst("")
        : label.description();
  }

  Worksheet written(Result.Written written) {
    Result.Numeral number = written.numeral();
    List<Worksheet> items = new ArrayList<>(heading(written.label(), number.writing()));
    boolean roughly = number.style().isWorded();
    if (!roughly) {
      items.addAll(digits(List.of(number.shown()), number.shown(), number.writing()));
    }
    items.add(words(number.writing()));
    return number(items);
  }

  boolean isSame(Result.Written one, Result.Written other) {
    return one.label().equals(other.label())
        && one.numeral().shown().equals(other.numeral().shown())
        && one.numeral().style().isWorded() == other.numeral().style().isWorded();
  }

  Worksheet inOtherWords(Result.Written written) {
    return number(List.of(words(written.numeral().writing())));
  }

  private static Worksheet number(List<Worksheet> items) {
    return new Worksheet.Together(Worksheet.Together.Style.NUMBER, items);
  }

  private List<Worksheet> heading(Result.Label label, Writing writing) {
    List<Piece> pieces = new ArrayList<>(Task.equal(task.sides(label, writing)));
    if (!label.description().isEmpty()) {
      pieces.add(new Piece.Words((pieces.isEmpty() ? "" : "  ") + label.description()));
    }
    return pieces.isEmpty() ? List.of() : List.of(new Worksheet.Text(pieces));
  }

  private Worksheet words(Writing writing) {
    return new Worksheet.Text(
        List.of(new Piece.Words(task.words().inWords(writing.words()) + " "), Piece.Gap.REST));
  }

  /** Boxes for a number, as many as all of them need. */
  private static List<Worksheet> digits(List<Shown> all, Shown one, Writing writing) {
    List<BigDecimal> numbers = all.stream().map(Shown::value).toList();
    Optional<BoxCount> count = BoxCount.of(numbers, writing.digits());
    return List.of(
        count
            .<Worksheet>map(boxes -> new Worksheet.Boxes(boxes, one.unit()))
            .orElse(new Worksheet.Ruled(1)));
  }

  /** A row of boxes for each number, the units under one another; then room for the ratio. */
  List<Worksheet> contrasted(Result.Contrasted contrast) {
    Writing writing = contrast.writing();
    List<Worksheet> items = new ArrayList<>();
    if (!contrast.title().isEmpty()) {
      items.add(new Worksheet.Heading(contrast.title()));
    }
    List<Shown> all = contrast.sides().stream().map(Result.Side::shown).toList();
    for (Result.Side side : contrast.sides()) {
      List<Worksheet> one = new ArrayList<>();
      one.add(new Worksheet.Text(called(side, writing)));
      one.addAll(digits(all, side.shown(), writing));
      one.add(words(writing));
      items.add(number(one));
    }
    items.add(number(ratio(contrast)));
    return items;
  }

  /** A number without a name stands in the cell itself. */
  private List<Piece> called(Result.Side side, Writing writing) {
    List<Piece> name = task.called(side.label(), writing);
    if (!name.isEmpty()) {
      return name;
    }
    return task.hidesFormulas()
        ? List.of(Piece.Gap.VALUE)
        : List.of(new Piece.Given(side.shown(), writing));
  }

  private List<Worksheet> ratio(Result.Contrasted contrast) {
    List<Worksheet> items = new ArrayList<>();
    items.add(new Worksheet.Text(task.words().line("contrast.times", Piece.Gap.VALUE)));
    items.addAll(digits(List.of(contrast.times()), contrast.times(), contrast.writing()));
    if (contrast.counts()) {
      items.add(new Worksheet.Text(task.words().line("contrast.every", Piece.Gap.NUMBER)));
    }
    return items;
  }

  /** Which landmarks lie beside it tells how large it is. */
  Worksheet placed(Result.Placed placed) {
    List<Piece> first = new ArrayList<>(task.called(placed.side().label(), placed.writing()));
    first.add(new Piece.Words(first.isEmpty() ? "" : ": "));
    first.addAll(Task.gap(placed.side().shown().unit()));
    return Blanks.together(
        List.of(
            new Worksheet.Text(task.words().line("near.larger", Piece.Gap.VALUE)),
            new Worksheet.Text(first),
            new Worksheet.Text(task.words().line("near.smaller", Piece.Gap.VALUE))));
  }

  /** The way to digits and words, the same steps for every number. */
  List<Worksheet> expanded(Result.Expanded expanded) {
    Writing writing = expanded.writing();
    List<Shown> number = List.of(expanded.side().shown());
    List<Worksheet> items = new ArrayList<>(heading(expanded.side().label(), writing));
    items.add(said("expand." + Expansion.Rule.WRITE, writing));
    items.add(new Worksheet.Text(power(expanded)));
    items.add(new Worksheet.Text(task.words().line("expand.move", Piece.Gap.NUMBER)));
    items.add(plain(task.words().say("expand.fill")));
    items.addAll(digits(number, expanded.side().shown(), writing));
    items.add(said("expand." + Expansion.Rule.READ, writing));
    items.add(new Worksheet.Text(List.of(Piece.Gap.REST)));
    items.add(said("expand." + Expansion.Rule.SPELL, writing));
    items.add(new Worksheet.Text(List.of(Piece.Gap.REST)));
    return List.of(number(items));
  }

  /** A number that has no name stands in the cell itself; from there the way begins. */
  private List<Piece> power(Result.Expanded expanded) {
    Result.Label label = expanded.side().label();
    boolean written = label.name().isEmpty() && label.formula().isEmpty() && !task.hidesFormulas();
    return written
        ? List.of(new Piece.Given(expanded.side().shown(), expanded.writing()))
        : task.words().line("expand.power", Piece.Gap.NUMBER);
  }

  private static Worksheet said(String key, Writing writing) {
    return plain(writing.phrases().say(key));
  }

  private static Worksheet plain(String words) {
    return new Worksheet.Text(List.of(new Piece.Words(words)));
  }

  Worksheet pictured(Result.Pictured pictured) {
    Worksheet paper =
        new Worksheet.Picture(
            switch (pictured.drawing()) {
              case RULER -> BlankPictures.ruler(pictured);
              case SQUARES, DOTS ->
                  SquaredPaper.of(
                      pictured.title(),
                      SquaredPaper.Axes.NONE,
                      PAPER,
                      task.words().say("draw", task.words().say("draw." + pictured.drawing())));
            });
    return Blanks.together(List.of(new Worksheet.Text(toMark(pictured)), paper));
  }

  /** What is to be marked or drawn: the picture itself must not tell where it lies. */
  private List<Piece> toMark(Result.Pictured pictured) {
    List<Piece> pieces = new ArrayList<>();
    for (Result.Side side : pictured.sides()) {
      pieces.add(new Piece.Words(pieces.isEmpty() ? task.words().say("mark") + " " : ", "));
      pieces.addAll(called(side, pictured.writing()));
    }
    return pieces;
  }
}
