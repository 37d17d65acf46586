package plainscale.picture;

/** Moves intervals on a line apart so that none overlap, each as near to its wish as is simple. */
final class Spread {
  private Spread() {}

  /**
   * Centres for intervals of these widths, in the order of their wishes, at least {@code gap} apart
   * and within {@code from} to {@code to}. The room must be enough for all.
   */
  static double[] centres(double[] wishes, double[] widths, double gap, Box room) {
    double[] pushedRight = pushedRight(wishes, widths, gap, room);
    double[] pushedLeft =
        mirrored(pushedRight(mirrored(wishes, room), reversed(widths), gap, room), room);
    double[] centres = new double[wishes.length];
    // Both are free of overlaps, so is every mean of the two.
    for (int i = 0; i < centres.length; i++) {
      centres[i] = (pushedRight[i] + pushedLeft[i]) / 2;
    }
    return centres;
  }

  private static double[] pushedRight(double[] wishes, double[] widths, double gap, Box room) {
    double[] centres = wishes.clone();
    double free = room.x() - gap;
    for (int i = 0; i < centres.length; i++) {
      centres[i] = Math.max(centres[i], free + gap + widths[i] / 2);
      free = centres[i] + widths[i] / 2;
    }
    double end = room.right() + gap;
    for (int i = centres.length - 1; i >= 0; i--) {
      centres[i] = Math.min(centres[i], end - gap - widths[i] / 2);
      end = centres[i] - widths[i] / 2;
    }
    return centres;
  }

  private static double[] mirrored(double[] positions, Box room) {
    double[] mirrored = reversed(positions);
    for (int i = 0; i < mirrored.length; i++) {
      mirrored[i] = room.x() + room.right() - mirrored[i];
    }
    return mirrored;
  }

  private static double[] reversed(double[] values) {
    double[] reversed = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      reversed[i] = values[values.length - 1 - i];
    }
    return reversed;
  }
}
