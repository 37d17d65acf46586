package plainscale.picture;

import java.util.stream.LongStream;

/**
 * A logarithmic axis over whole powers of ten: how far from its start a power stands, and which
 * powers are named.
 */
record PowerAxis(long first, long last, double length) {
  private static final double ROOM_FOR_LABEL = 34;
  private static final double ROOM_FOR_TICK = 6;
  private static final int FEWEST_POWERS = 4;
  private static final int[] STEPS = {1, 3, 5};

  /** An axis that shows all the numbers with a power or more to spare on both sides. */
  static PowerAxis around(double lowest, double highest, double length) {
    long first = (long) Math.floor(lowest) - 1;
    long last = (long) Math.ceil(highest) + 1;
    long missing = Math.max(0, FEWEST_POWERS - (last - first));
    return new PowerAxis(first - missing / 2, last + (missing + 1) / 2, length);
  }

  /** The distance of a power from the start. */
  double at(double power) {
    return (power - first) * perPower();
  }

  private double perPower() {
    return length / (last - first);
  }

  /** Every power, or every 3, 5, 10, 30, … powers, as many as there is room for labels. */
  long step() {
    return step(ROOM_FOR_LABEL);
  }

  /** The powers that get a label. */
  LongStream labelled() {
    return multiples(step());
  }

  /** The powers that get a tick. */
  LongStream ticks() {
    return multiples(tickStep());
  }

  /** From tick to tick: as fine as there is room for, and such that every label has a tick. */
  long tickStep() {
    long fine = step(ROOM_FOR_TICK);
    return step() % fine == 0 ? fine : step();
  }

  private long step(double room) {
    for (long decade = 1; ; decade *= 10) {
      for (int step : STEPS) {
        if (step * decade * perPower() >= room) {
          return step * decade;
        }
      }
    }
  }

  private LongStream multiples(long step) {
    long start = -Math.floorDiv(-first, step) * step;
    return LongStream.iterate(start, n -> n <= last, n -> n + step);
  }
}
