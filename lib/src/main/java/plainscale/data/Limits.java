package plainscale.data;

/** How large a file may be; beyond, one sentence says so. */
public final class Limits {
  /**
   * Rows of data. A column takes ten bytes for a number: a million rows of two columns, one of them
   * with uncertainties, keep 32 MB (and are read within 128 MB).
   */
  public static final int ROWS = 1_000_000;

  /** Columns. */
  public static final int COLUMNS = 200;

  /** Characters in one cell. */
  public static final int CELL = 10_000;

  /** Bytes of a file. */
  public static final int BYTES = 64 << 20;

  private Limits() {}
}
