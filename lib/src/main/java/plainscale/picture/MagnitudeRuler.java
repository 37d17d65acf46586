package plainscale.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Writing;

/**
 * An upright ruler in powers of ten. One to six numbers are marked on its right, up to six
 * landmarks more quietly on its left, and the distance between the smallest and the largest number
 * is said below in orders of magnitude. A negative number is marked by its size.
 */
public final class MagnitudeRuler {
  /** The most numbers, and the most landmarks, on one ruler. */
  public static final int MOST = 6;

  private static final double LEAST_LENGTH = 360;
  private static final double POINTER = 13;
  private static final double HALF_POINTER = 7;
  private static final double INDENT = 30;

  private final Marks marks;
  private final Writing writing;
  private final Phrases phrases;
  private final Canvas canvas;
  private final List<Mark> main;
  private final RulerLandmarks landmarks;

  private MagnitudeRuler(String title, Marks marks, Writing writing) {
    this.marks = marks;
    this.writing = writing;
    this.phrases = writing.phrases();
    this.canvas = new Canvas(title);
    this.main = fromTheTop(marks.main());
    this.landmarks = RulerLandmarks.of(marks.landmarks(), writing);
  }

  /** The ruler as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, List<Mark> marks, List<Mark> landmarks, Writing writing) {
    return of(title, Marks.of(marks).with(landmarks), writing);
  }

  /** The ruler of marks whose ratio may be better known than from the rounded numbers. */
  public static Scene of(String title, Marks marks, Writing writing) {
    int numbers = marks.main().size();
    if (numbers < 1 || numbers > MOST || marks.landmarks().size() > MOST) {
      throw new IllegalArgumentException(
          "A ruler shows from one to six numbers and up to six landmarks, not %s and %s."
              .formatted(numbers, marks.landmarks().size()));
    }
    if (marks.anyZero()) {
      throw new IllegalArgumentException(
          "Zero has no place on a ruler in powers of ten: it lies below every power.");
    }
    return new MagnitudeRuler(title, marks, writing).scene();
  }

  private static List<Mark> fromTheTop(List<Mark> marks) {
    List<Mark> reversed = new ArrayList<>(marks);
    Collections.reverse(reversed);
    return reversed;
  }

  private static double power(Mark mark) {
    return PowerOfTen.of(mark.value()).log10();
  }

  private Scene scene() {
    // Left of the ruler stand the landmarks, or else the names of the powers.
    double left = landmarks.left();
    double textLeft = left + RulerStrip.width(axis(LEAST_LENGTH)) + RulerLandmarks.LEADER;
    List<TextBlock> right =
        main.stream()
            .map(m -> TextBlock.wrapped(Captions.of(m, writing), Canvas.RIGHT - textLeft))
            .toList();
    double needed = Math.max(RulerCaptions.height(right), landmarks.height());
    RulerStrip strip = new RulerStrip(axis(Math.max(LEAST_LENGTH, needed)), left, canvas.y());
    draw(strip);
    captions(strip, right);
    canvas.moveTo(strip.bottom());
    below(strip);
    return canvas.scene(phrases.say("picture.ruler"), alternative());
  }

  private void captions(RulerStrip strip, List<TextBlock> right) {
    Stroke firm = Stroke.solid(Shade.ACCENT, 1.5);
    double x = strip.right() + RulerLandmarks.LEADER;
    canvas.addAll(
        new RulerCaptions(right, places(strip, main), x, firm)
            .shapes(strip.top(), strip.bottom(), strip.right() + POINTER));
    canvas.addAll(landmarks.captions(strip));
  }

  private PowerAxis axis(double length) {
    double[] powers = marks.all().stream().mapToDouble(MagnitudeRuler::power).sorted().toArray();
    return PowerAxis.around(powers[0], powers[powers.length - 1], length);
  }

  private static List<Double> places(RulerStrip strip, List<Mark> marks) {
    return marks.stream().map(m -> strip.y(power(m))).toList();
  }

  private void draw(RulerStrip strip) {
    canvas.add(strip.ground());
    if (main.size() > 1) {
      canvas.addAll(strip.stretch(power(marks.smallest()), power(marks.largest())));
    }
    canvas.addAll(strip.shapes());
    if (landmarks.isEmpty()) {
      canvas.addAll(strip.names(writing.words()));
    }
    for (double y : places(strip, main)) {
      canvas.add(pointer(strip.right(), y));
    }
    if (!landmarks.isEmpty()) {
      canvas.addAll(landmarks.rings(strip));
    }
  }

  private static Shape pointer(double x, double y) {
    return new Shape.Polygon(
        List.of(
            new Point(x + POINTER, y - HALF_POINTER),
            new Point(x + POINTER, y + HALF_POINTER),
            new Point(x, y)),
        Shade.ACCENT);
  }

  /** What is said below the ruler: the distance beside its arrow, and how to read the ruler. */
  private void below(RulerStrip strip) {
    canvas.skip(18);
    if (main.size() > 1) {
      double top = canvas.y() + 4;
      Distance distance = Distance.of(marks, writing);
      canvas.write(Theme.MARGIN + INDENT, distance.lines());
      canvas.addAll(RulerStrip.arrow(Theme.MARGIN + INDENT / 3, top, canvas.y() - 2));
      canvas.skip(10);
      distance.definition().ifPresent(canvas::note);
    }
    canvas.note(legend(strip.axis()));
    if (!landmarks.isEmpty()) {
      canvas.note(phrases.say("picture.ruler.rings"));
    }
    if (marks.anyNegative()) {
      canvas.note(phrases.say("picture.by-size"));
    }
  }

  private String legend(PowerAxis axis) {
    long step = axis.tickStep();
    return phrases.say("picture.ruler.tick", step, PowerOfTen.power(step));
  }

  private String alternative() {
    StringBuilder text =
        new StringBuilder(phrases.say("picture.ruler.numbers", said(marks.main())));
    if (main.size() > 1) {
      text.append(" ").append(Distance.of(marks, writing).sentence());
    }
    if (!landmarks.isEmpty()) {
      text.append(" ");
      text.append(phrases.say("picture.ruler.landmarks", said(marks.landmarks())));
    }
    return marks.anyNegative() ? text + " " + phrases.say("picture.by-size") : text.toString();
  }

  private String said(List<Mark> listed) {
    return listed.stream()
        .map(m -> m.said(writing))
        .reduce((before, next) -> phrases.say("picture.list", before, next))
        .orElse("");
  }
}
