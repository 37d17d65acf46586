package plainscale.laws;

import java.util.List;
import plainscale.table.Table;

/** The usual slips in givens, the most usual first ({@code slips.tsv}). */
public final class Slips {
  private static final List<Slip> USUAL =
      Table.read(Slips.class, "slips.tsv").stream().map(Slip::of).toList();

  private Slips() {}

  /** All of them, in the order of the table. */
  public static List<Slip> usual() {
    return USUAL;
  }
}
