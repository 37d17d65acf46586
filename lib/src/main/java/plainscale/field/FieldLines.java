package plainscale.field;

import java.util.List;

/**
 * The field lines of a configuration in the plane z = 0, with what was counted.
 *
 * @param linesPerUnit lines for each unit of charge (C or kg)
 * @param lines all lines, in the direction of the field
 * @param tallies for each place where a charge meets the plane, how many lines it got
 * @param remarks sentences on charges without lines, and on lines that are only projections
 */
public record FieldLines(
    double linesPerUnit,
    Spread spread,
    List<FieldLine> lines,
    List<Tally> tallies,
    List<String> remarks) {
  public FieldLines {
    remarks = List.copyOf(remarks);
    lines = List.copyOf(lines);
    tallies = List.copyOf(tallies);
  }

  /**
   * The lines of a charge.
   *
   * @param due lines per unit times the charge, before rounding
   * @param lines how many begin or end at it
   */
  public record Tally(Footprint footprint, double due, int lines) {
    /** Whether it has another number of lines than its charge asks for. */
    public boolean differs() {
      return Math.abs(lines - due) >= 1;
    }
  }

  /**
   * The sentence that belongs below every picture of these lines. The point is made by A. Wolf, S.
   * J. Van Hook and E. R. Weeks, "Electric field line diagrams don't work", American Journal of
   * Physics 64(6):714 (1996); cited from memory.
   */
  public String caution() {
    return switch (spread) {
      case EQUAL_ANGLES ->
          "The lines show directions. They are a slice of a field in space: how close they lie is"
              + " not the strength of the field, and only where a line starts is their number in"
              + " proportion to the charge.";
      case EQUAL_FLUX ->
          "The lines show directions. Turned about the line through the charges, there is as much"
              + " flux between any two neighbours; how close they lie on paper is still not the"
              + " strength of the field.";
    };
  }
}
