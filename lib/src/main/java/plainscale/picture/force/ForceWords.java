package plainscale.picture.force;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Prefix;
import plainscale.magnitude.Prefixes;
import plainscale.magnitude.Writing;
import plainscale.picture.Canvas;
import plainscale.picture.TextBlock;
import plainscale.picture.Theme;

/** What a force diagram says in words: captions, the legend in boxes, the text alternative. */
final class ForceWords {
  private static final int PLACES = 1;
  private static final int PLAIN_POWER = 3;
  private static final double CLOSED = 0.05;
  private static final String[] COMPASS = {"E", "NE", "N", "NW", "W", "SW", "S", "SE"};

  private final List<Body> bodies;
  private final List<Pair> pairs;
  private final Scale scale;
  private final Edition edition;
  private final Writing writing;
  private final Phrases phrases;

  ForceWords(List<Body> bodies, List<Pair> pairs, Scale scale, Edition edition, Writing writing) {
    this.bodies = bodies;
    this.pairs = pairs;
    this.scale = scale;
    this.edition = edition;
    this.writing = writing;
    this.phrases = writing.phrases();
  }

  String title() {
    return phrases.say("force");
  }

  String caption(Body body, boolean fromTheDot) {
    return phrases.say(fromTheDot ? "force.dot" : "force.tail", body.name());
  }

  String enlarged(Body body, Enlarged enlarged) {
    String label = enlarged.force().label();
    int power = enlarged.power();
    String times =
        power > PLAIN_POWER ? PowerOfTen.power(power) : digits(BigDecimal.TEN.pow(power));
    return phrases.say("force.enlarged", label, body.name(), times);
  }

  /** The scale, and for one body each force in boxes; blanks in a student's edition. */
  void legend(Canvas canvas) {
    canvas.note(box());
    if (edition == Edition.WHOLE && bodies.size() == 1) {
      lines(bodies.get(0)).forEach(canvas::note);
    }
  }

  /** What stands below the link between two bodies. */
  List<TextBlock.Line> pair(Pair pair) {
    return List.of(new TextBlock.Line(phrases.say("force.pair", pair.label()), Theme.NAME));
  }

  private String told(Pair pair) {
    String first = bodies.get(pair.first()).name();
    String second = bodies.get(pair.second()).name();
    return phrases.say("force.pair.told", pair.label(), first, second);
  }

  private String box() {
    return edition == Edition.WHOLE
        ? phrases.say("force.box", size(scale.newtons()))
        : phrases.say("force.box.blank");
  }

  /** "5 mN". */
  private String size(BigDecimal newtons) {
    Prefix prefix = Prefixes.choose(newtons);
    return digits(prefix.mantissa(newtons)) + "\u00a0" + prefix.symbol() + "N";
  }

  private String digits(BigDecimal number) {
    BigDecimal brief = number.stripTrailingZeros();
    BigDecimal plain = brief.scale() < 0 ? brief.setScale(0, RoundingMode.UNNECESSARY) : brief;
    return Digits.of(plain, writing.digits()).text();
  }

  private List<String> lines(Body body) {
    List<String> lines = new ArrayList<>();
    body.forces().forEach(force -> lines.add(line(force, body.slope())));
    String sum = boxes(body.across(), body.up(), body.slope());
    lines.add(sum.isEmpty() ? phrases.say("force.sum.none") : phrases.say("force.sum", sum));
    return lines;
  }

  private String line(Force force, double slope) {
    if (force.isZero()) {
      return phrases.say("force.zero", force.label());
    }
    if (Enlarged.of(force, scale).isPresent()) {
      return phrases.say("force.tiny", force.label(), force.size());
    }
    String boxes = boxes(force.across(), force.up(), slope);
    return phrases.say(
        force.hint() ? "force.hint" : "force.line", force.label(), force.size(), boxes);
  }

  /** "3 boxes left, 0.5 boxes up"; what is no box is left out. */
  private String boxes(double across, double up, double slope) {
    List<String> parts = new ArrayList<>();
    if (slope == 0) {
      add(parts, across < 0 ? "force.left" : "force.right", Math.abs(across));
      add(parts, up < 0 ? "force.down" : "force.up", Math.abs(up));
    } else {
      double along = across * Math.cos(slope) + up * Math.sin(slope);
      double away = up * Math.cos(slope) - across * Math.sin(slope);
      boolean climbs = along * Math.sin(slope) > 0;
      add(parts, climbs ? "force.climbing" : "force.sliding", Math.abs(along));
      add(parts, away < 0 ? "force.into" : "force.away", Math.abs(away));
    }
    return String.join(", ", parts);
  }

  private void add(List<String> parts, String key, double newtons) {
    BigDecimal boxes =
        BigDecimal.valueOf(scale.boxes(newtons)).setScale(PLACES, RoundingMode.HALF_EVEN);
    if (boxes.signum() != 0) {
      parts.add(phrases.say(key, boxes.doubleValue(), digits(boxes)));
    }
  }

  String alternative() {
    List<String> sentences = new ArrayList<>(List.of(title() + "."));
    if (edition == Edition.WHOLE) {
      sentences.add(box());
    }
    bodies.forEach(body -> sentences.addAll(told(body)));
    if (edition == Edition.WHOLE) {
      pairs.forEach(pair -> sentences.add(told(pair)));
    }
    return String.join(" ", sentences).replace('\u00a0', ' ');
  }

  private List<String> told(Body body) {
    return switch (edition) {
      case DOT -> List.of(phrases.say("force.paper", body.name()));
      case DIRECTIONS -> List.of(phrases.say("force.arrows", body.name(), directions(body)));
      case WHOLE -> whole(body);
    };
  }

  private List<String> whole(Body body) {
    List<String> sentences = new ArrayList<>(List.of(caption(body, true) + "."));
    sentences.addAll(lines(body));
    boolean closed = Math.hypot(scale.boxes(body.across()), scale.boxes(body.up())) < CLOSED;
    sentences.add(
        closed
            ? phrases.say("force.closed")
            : phrases.say("force.gap", boxes(-body.across(), -body.up(), body.slope())));
    sentences.add(body.verdict());
    return sentences;
  }

  private String directions(Body body) {
    return body.forces().stream()
        .map(force -> phrases.say("force.arrow", force.label(), direction(force)))
        .collect(joining("; "));
  }

  private String direction(Force force) {
    double eighths = Math.atan2(force.up(), force.across()) / (Math.PI / 4);
    String way = COMPASS[Math.floorMod((int) Math.rint(eighths), COMPASS.length)];
    return phrases.say("force.direction", way);
  }
}
