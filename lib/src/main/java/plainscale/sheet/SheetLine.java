package plainscale.sheet;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import plainscale.notation.Open;
import plainscale.notation.Statement;

/**
 * A statement of a cell as its sheet has read it.
 *
 * @param statement the statement
 * @param defines the names that it defines; a name with a space in it is none of a quantity
 * @param mentions the other names that stand in it
 * @param everything whether it shows all that the sheet computes
 * @param drawing whether it draws a picture that can have a number and a caption
 */
public record SheetLine(
    Statement statement,
    Set<String> defines,
    Set<String> mentions,
    boolean everything,
    boolean drawing) {
  /** Keeps its own copies of the names. */
  public SheetLine {
    defines = Set.copyOf(defines);
    mentions = Set.copyOf(mentions);
  }

  static SheetLine of(Statement statement) {
    Set<String> defines = new LinkedHashSet<>(Definitions.names(statement));
    Set<String> mentions =
        References.direct(statement)
            .filter(name -> !defines.contains(name))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    boolean everything = mentions.remove(References.EVERYTHING);
    return new SheetLine(
        statement, defines, mentions, everything, Figures.isPicture(Open.within(statement)));
  }
}
