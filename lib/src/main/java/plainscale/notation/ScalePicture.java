package plainscale.notation;

/** The pictures of scale. */
public enum ScalePicture {
  /** One to six numbers on a ruler in powers of ten. */
  RULER(1, 6),
  /** One number within another, as squares within squares. */
  SQUARES(2, 2),
  /** One to three numbers as dots. */
  DOTS(1, 3);

  private final int fewest;
  private final int most;

  ScalePicture(int fewest, int most) {
    this.fewest = fewest;
    this.most = most;
  }

  /** The fewest numbers that it shows. */
  public int fewest() {
    return fewest;
  }

  /** The most numbers that it shows. */
  public int most() {
    return most;
  }
}
