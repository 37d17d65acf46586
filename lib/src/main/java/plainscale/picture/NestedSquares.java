package plainscale.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Writing;

/**
 * Two numbers as areas. The first square stands for the larger number; the small square in it is a
 * thousandth of its area and is drawn larger beside it, and so on, until what is left is less than
 * a thousand: the dark square in the last. Each scale is nested in the one before it: hierarchical
 * alignment, after Resnick, Newcombe and Shipley, Cognitive Science 41 (2017) 1020.
 */
public final class NestedSquares {
  /** The largest ratio that is drawn, as a power of ten. */
  public static final int REACH = 60;

  private static final int POWERS_A_STEP = 3;
  private static final double KEY = 18;
  private static final double INDENT = 32;
  private static final double GAP = 18;

  private final Marks marks;
  private final Writing writing;
  private final Phrases phrases;
  private final Canvas canvas;
  private final Ratio ratio;
  private final int steps;
  private final BigDecimal rest;

  private NestedSquares(String title, Marks marks, Writing writing) {
    this.marks = marks;
    this.writing = writing;
    this.phrases = writing.phrases();
    this.ratio = marks.outermost();
    this.steps = steps(ratio);
    this.rest = ratio.value().scaleByPowerOfTen(-POWERS_A_STEP * steps);
    this.canvas = new Canvas(title);
  }

  /** The squares as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, Mark small, Mark large, Writing writing) {
    return of(title, Marks.of(List.of(small, large)), writing);
  }

  /** The squares of two marks whose ratio may be better known than from the rounded numbers. */
  public static Scene of(String title, Marks marks, Writing writing) {
    if (marks.main().size() != 2 || !marks.landmarks().isEmpty()) {
      throw new IllegalArgumentException("Nested squares show two numbers, no more and no fewer.");
    }
    if (marks.anyZero()) {
      throw new IllegalArgumentException(
          "Zero has no square: no number of steps leads from another number down to it.");
    }
    return new NestedSquares(title, marks, writing).scene();
  }

  private static int steps(Ratio ratio) {
    PowerOfTen size = ratio.powerOfTen();
    if (ratio.value().compareTo(BigDecimal.ONE.scaleByPowerOfTen(REACH)) > 0) {
      throw new IllegalArgumentException(
          ("One number is about %s times the other. Nested squares go up to %s times;"
                  + " a ruler in powers of ten goes further.")
              .formatted(size.power(), PowerOfTen.power(REACH)));
    }
    return (int) (size.exponent() / POWERS_A_STEP);
  }

  private Scene scene() {
    key(marks.largest(), lightSquare(), false);
    canvas.skip(GAP);
    PanelRows rows = new PanelRows(captions(), rest.doubleValue(), canvas.y());
    canvas.addAll(rows.shapes());
    canvas.moveTo(rows.bottom());
    canvas.skip(GAP);
    key(marks.smallest(), darkSquare(), true);
    canvas.skip(GAP);
    Distance distance = Distance.of(marks, writing);
    canvas.write(Theme.MARGIN, distance.lines());
    canvas.skip(GAP / 2);
    distance.definition().ifPresent(canvas::note);
    canvas.note(inSteps());
    if (marks.anyNegative()) {
      canvas.note(phrases.say("picture.by-size"));
    }
    return canvas.scene(phrases.say("picture.squares"), alternative());
  }

  private String lightSquare() {
    return phrases.say("picture.squares.first", steps);
  }

  private String darkSquare() {
    return phrases.say("picture.squares.last", steps);
  }

  /** What a square stands for, beside a small square like it. */
  private void key(Mark mark, String square, boolean dark) {
    Box box = new Box(Theme.MARGIN, canvas.y() + 3, KEY, KEY);
    canvas.addAll(dark ? List.of(PanelRows.dark(box)) : PanelRows.panel(box));
    String name = mark.name();
    String label = name.isEmpty() ? square : phrases.say("picture.label", square, name);
    canvas.write(Theme.MARGIN + INDENT, Captions.of(label, mark, writing));
  }

  private List<String> captions() {
    return IntStream.rangeClosed(0, steps).mapToObj(this::share).toList();
  }

  /** Which share of the first square a panel is: "1 in a thousand". */
  private String share(int step) {
    if (step == 0) {
      return steps == 0 ? "" : phrases.say("picture.squares.whole");
    }
    int power = POWERS_A_STEP * step;
    String share = oneIn(power);
    return new PanelGrid(steps + 1).hasRoomFor(share)
        ? share
        : phrases.say("picture.share", PowerOfTen.power(power));
  }

  private String oneIn(int power) {
    Optional<String> name = writing.words().nameOf(power);
    if (name.isEmpty()) {
      return phrases.say("picture.share", named(BigDecimal.ONE.scaleByPowerOfTen(power)));
    }
    String initial = name.get().substring(0, 1);
    String part = writing.words().nameOf(-power).orElse("");
    return phrases.say("picture.share.named", name.get(), initial, part);
  }

  private String named(BigDecimal number) {
    return Captions.named(number, writing);
  }

  private boolean isWhole() {
    return rest.compareTo(BigDecimal.ONE) == 0;
  }

  /** "4 steps of a thousand and a last one of 2.5", in terms of areas. */
  private String inSteps() {
    if (steps == 0) {
      return isWhole() ? phrases.say("picture.squares.same") : toScale();
    }
    return isWhole()
        ? phrases.say("picture.squares.steps", steps)
        : phrases.say("picture.squares.steps.rest", steps, named(rest));
  }

  private String toScale() {
    String times = named(rest);
    Agreement agreement = Agreement.of(times, rest, writing.words());
    return phrases.say("picture.squares.scale", times, agreement);
  }

  private String alternative() {
    StringBuilder text = new StringBuilder(phrases.say("picture.squares.alternative")).append(" ");
    text.append(phrases.say("picture.squares.is", lightSquare(), marks.largest().said(writing)));
    if (steps > 0) {
      List<String> shares = captions().subList(1, steps + 1);
      text.append(" ");
      text.append(phrases.say("picture.squares.next", steps, String.join(", ", shares)));
    }
    text.append(" ");
    text.append(phrases.say("picture.squares.is", darkSquare(), marks.smallest().said(writing)));
    text.append(" ").append(inSteps()).append(" ");
    text.append(Distance.of(marks, writing).sentence());
    return marks.anyNegative() ? text + " " + phrases.say("picture.by-size") : text.toString();
  }
}
