package plainscale.render;

import plainscale.quantity.Contribution;

/** Shares as bars of text, the same in every medium. */
final class Bars {
  private static final int LENGTH = 20;

  /** A share below this is told as nothing, or as less than one per cent. */
  static final double NEGLIGIBLE = 0.005;

  private Bars() {}

  /** A bar and the share in per cent. */
  static String bar(double share) {
    int length = (int) Math.round(share * LENGTH);
    return "█".repeat(length) + (length == 0 ? "▏" : "") + " " + percent(share);
  }

  private static String percent(double share) {
    return share > 0 && share < NEGLIGIBLE ? "< 1 %" : Math.round(share * 100) + " %";
  }

  /** A bar behind its name, the names padded to one width. */
  static String named(Contribution contribution, int width) {
    String name = contribution.source() + " ".repeat(width - contribution.source().length());
    return name + " " + bar(contribution.share());
  }
}
