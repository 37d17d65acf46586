package plainscale.picture;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Writing;

/**
 * A ruler in powers of ten on which numbers are still to be marked, with landmarks on its left. It
 * is so long, to a multiple of six powers and three to spare at least, that its ends do not tell
 * where the numbers lie.
 */
public final class EmptyRuler {
  private static final double LENGTH = 460;
  private static final int ROUND = 6;
  private static final int SPARE = 3;

  private EmptyRuler() {}

  /** The ruler as a scene; the title is drawn unless it is empty. */
  public static Scene of(String title, Marks marks, Writing writing) {
    if (marks.anyZero()) {
      throw new IllegalArgumentException("Zero has no place on a ruler in powers of ten.");
    }
    Phrases phrases = writing.phrases();
    Canvas canvas = new Canvas(title);
    RulerLandmarks landmarks = RulerLandmarks.of(marks.landmarks(), writing);
    PowerAxis axis = axis(marks, Math.max(LENGTH, landmarks.height()));
    RulerStrip strip = new RulerStrip(axis, landmarks.left(), canvas.y());
    draw(strip, landmarks, canvas, writing);
    canvas.moveTo(strip.bottom());
    canvas.skip(18);
    long step = axis.tickStep();
    String legend = phrases.say("picture.ruler.tick", step, PowerOfTen.power(step));
    canvas.note(legend);
    List<String> said = new ArrayList<>(List.of(phrases.say("picture.ruler") + ".", legend));
    if (!landmarks.isEmpty()) {
      canvas.note(phrases.say("picture.ruler.rings"));
      said.add(phrases.say("picture.ruler.landmarks", said(marks.landmarks(), writing)));
    }
    return canvas.scene(phrases.say("picture.ruler"), String.join(" ", said));
  }

  private static PowerAxis axis(Marks marks, double length) {
    double[] powers =
        marks.all().stream().mapToDouble(m -> PowerOfTen.of(m.value()).log10()).sorted().toArray();
    long first = ROUND * (long) Math.floor((powers[0] - SPARE) / ROUND);
    long last = ROUND * (long) Math.ceil((powers[powers.length - 1] + SPARE) / ROUND);
    return new PowerAxis(first, last, length);
  }

  private static void draw(
      RulerStrip strip, RulerLandmarks landmarks, Canvas canvas, Writing writing) {
    canvas.add(strip.ground());
    canvas.addAll(strip.shapes());
    if (landmarks.isEmpty()) {
      canvas.addAll(strip.names(writing.words()));
    } else {
      canvas.addAll(landmarks.rings(strip));
      canvas.addAll(landmarks.captions(strip));
    }
  }

  private static String said(List<Mark> listed, Writing writing) {
    return listed.stream()
        .map(m -> m.said(writing))
        .reduce((before, next) -> writing.phrases().say("picture.list", before, next))
        .orElse("");
  }
}
