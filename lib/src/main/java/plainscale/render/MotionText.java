package plainscale.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import plainscale.field.CourseEnd;
import plainscale.field.Moment;
import plainscale.field.Passage;
import plainscale.field.Trajectory;
import plainscale.magnitude.Digits;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Prefix;
import plainscale.magnitude.Prefixes;
import plainscale.magnitude.Writing;
import plainscale.picture.field.PathMap;
import plainscale.sheet.FieldResult;

/** The account of a motion: moments with their energies, what happened, and the drawing. */
final class MotionText {
  private static final int FIGURES = 4;

  /** So many moments between start and end; the first ones. */
  private static final int MOST_PASSAGES = 6;

  private static final double LEAST_DEVIATION = 1e-15;

  /** Of the largest energy; what is less is what rounding left. */
  private static final double DUST = 1e-9;

  private static final String END = "end";

  private static final double SAME_TIME = 1e-6;

  private final FieldResult.Released released;
  private final Trajectory trajectory;
  private final Writing writing;
  private final List<PathMap.Mark> marks;

  MotionText(FieldResult.Released released) {
    this.released = released;
    this.trajectory = released.trajectory();
    this.writing = released.writing();
    this.marks = marks();
  }

  FieldView view() {
    return new FieldView(
        new Sections("Energies along the way", List.of(table()), sentences()),
        Optional.of(PathMap.of(released.title(), released.chart(), trajectory, marks, writing)));
  }

  private List<PathMap.Mark> marks() {
    List<PathMap.Mark> list = new ArrayList<>();
    list.add(new PathMap.Mark("start", trajectory.samples().get(0)));
    trajectory.passages().stream()
        .filter(passage -> passage.kind() != Passage.Kind.RETURN)
        .filter(passage -> passage.moment().time() > 0)
        .sorted(Comparator.comparingDouble(passage -> passage.moment().time()))
        .forEach(passage -> add(name(passage.kind()), passage.moment(), list));
    Moment last = trajectory.samples().get(trajectory.samples().size() - 1);
    add(END, last, list);
    return list;
  }

  /** What is told of one moment twice stands there once: "fastest, closest". */
  private static void add(String name, Moment moment, List<PathMap.Mark> list) {
    PathMap.Mark before = list.get(list.size() - 1);
    boolean same = moment.time() - before.moment().time() <= SAME_TIME * moment.time();
    if (list.size() > 1 && same) {
      list.set(list.size() - 1, new PathMap.Mark(before.name() + ", " + name, before.moment()));
    } else if (list.size() <= MOST_PASSAGES || name.equals(END)) {
      list.add(new PathMap.Mark(name, moment));
    }
  }

  private static String name(Passage.Kind kind) {
    return switch (kind) {
      case SLOWEST -> "slowest";
      case FASTEST -> "fastest";
      case CLOSEST -> "closest";
      case RETURN -> "back";
    };
  }

  private List<List<String>> table() {
    Unit time = Unit.of("s", marks.stream().mapToDouble(mark -> mark.moment().time()));
    Unit speed =
        Unit.of("m/s", marks.stream().mapToDouble(mark -> mark.moment().velocity().getNorm()));
    Unit energy = Unit.of("J", marks.stream().mapToDouble(MotionText::largest));
    List<List<String>> table = new ArrayList<>();
    table.add(
        List.of(
            "",
            "moment",
            "time/" + time.text(),
            "speed/" + (speed.text().contains("/") ? "(" + speed.text() + ")" : speed.text()),
            "kinetic/" + energy.text(),
            "potential/" + energy.text(),
            "together/" + energy.text()));
    int number = 1;
    for (PathMap.Mark mark : marks) {
      Moment moment = mark.moment();
      table.add(
          List.of(
              String.valueOf(number++),
              mark.name(),
              number(time.in(moment.time())),
              number(speed.in(speed(moment))),
              number(energy.in(speed(moment) == 0 ? 0 : moment.kinetic())),
              number(energy.in(clean(moment.potential()))),
              number(energy.in(clean(moment.total())))));
    }
    return table;
  }

  private double clean(double value) {
    double largest = marks.stream().mapToDouble(MotionText::largest).max().orElse(0);
    return Math.abs(value) <= DUST * largest ? 0 : value;
  }

  /** A turning point is at rest, whatever rounding makes of it. */
  private double speed(Moment moment) {
    double fastest =
        trajectory.samples().stream().mapToDouble(m -> m.velocity().getNorm()).max().orElse(0);
    double speed = moment.velocity().getNorm();
    return speed <= DUST * fastest ? 0 : speed;
  }

  private static double largest(PathMap.Mark mark) {
    return Math.max(mark.moment().kinetic(), Math.abs(mark.moment().potential()));
  }

  private String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(FIGURES));
    if (rounded.signum() == 0) {
      return "0";
    }
    rounded = rounded.setScale(rounded.scale() + FIGURES - rounded.precision());
    int exponent = rounded.precision() - rounded.scale() - 1;
    boolean plain = exponent >= -3 && exponent < FIGURES;
    return plain
        ? Digits.of(rounded, writing.digits()).text()
        : PowerOfTen.of(rounded).text(writing.digits());
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(ending());
    released
        .period()
        .ifPresent(
            period ->
                sentences.add(
                    "It comes back to its start with the velocity of the start every %s."
                        .formatted(text("s", period))));
    sentences.add(energies());
    if (marks.size() - 2 == MOST_PASSAGES) {
      sentences.add("The table has the first " + MOST_PASSAGES + " passages and the end.");
    }
    return sentences;
  }

  private String ending() {
    Moment last = trajectory.samples().get(trajectory.samples().size() - 1);
    String time = text("s", last.time());
    CourseEnd end = trajectory.end();
    if (end instanceof CourseEnd.RanInto into) {
      String what = released.chart().nature().said(into.source().name());
      return "After %s it runs into the %s; the motion ends there, with the speed of that moment."
          .formatted(time, what);
    }
    if (end instanceof CourseEnd.LeftFrame) {
      return "After %s it leaves the frame; it is not followed further.".formatted(time);
    }
    if (end instanceof CourseEnd.NotFollowed) {
      return "After %s it could not be followed further: close to a source, or over too long a time, the steps become too small."
          .formatted(time);
    }
    boolean rests =
        trajectory.samples().stream().allMatch(moment -> moment.velocity().getNorm() == 0);
    if (rests) {
      return "Nothing moves it: it stays where it is.";
    }
    return released.asked()
        ? "It was followed for %s, as you asked.".formatted(time)
        : released.period().isPresent()
            ? "One round is shown, until it is back after %s.".formatted(time)
            : "It was followed for %s; “for” and a time at the end set another.".formatted(time);
  }

  private String energies() {
    double off = trajectory.largestDeviation();
    if (off < LEAST_DEVIATION) {
      return "Kinetic and potential energy together stay the same.";
    }
    int power = (int) Math.floor(-Math.log10(off));
    long parts = (long) Math.ceil(off * Math.pow(10, power + 1));
    String kept =
        trajectory.isEnergyKept() ? "stay the same" : "should stay the same, and do so only";
    return "Kinetic and potential energy together %s within %d parts in %s (the computation uses forces only)."
        .formatted(kept, Math.max(2, parts), PowerOfTen.power(power + 1));
  }

  private String text(String base, double value) {
    Unit unit = Unit.of(base, DoubleStream.of(value));
    return number(unit.in(value)) + " " + unit.text();
  }

  /** A unit with the prefix that suits the largest of some numbers. */
  private record Unit(String text, int power) {
    static Unit of(String base, DoubleStream values) {
      double largest = values.map(Math::abs).filter(Double::isFinite).max().orElse(0);
      Prefix prefix =
          largest == 0
              ? Prefix.NONE
              : Prefixes.choose(new BigDecimal(largest).round(new MathContext(FIGURES)));
      boolean longTime = base.equals("s") && prefix.power() > 0;
      return longTime ? new Unit(base, 0) : new Unit(prefix.symbol() + base, prefix.power());
    }

    double in(double value) {
      return value / Math.pow(10, power);
    }
  }
}
