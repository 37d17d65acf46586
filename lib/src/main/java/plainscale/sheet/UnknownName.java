package plainscale.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import plainscale.laws.Constants;
import plainscale.notation.Expr;
import plainscale.notation.Greek;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.text.Near;
import plainscale.units.UnitTable;

/** The complaint about a name that means nothing, with what it may have meant. */
final class UnknownName {
  private UnknownName() {}

  static ProblemException problem(
      Expr.Name name, String source, Set<String> defined, Constants constants) {
    String text = name.text();
    List<String> repairs = new ArrayList<>(split(text, defined, constants));
    repairs.addAll(raised(text, defined, constants));
    Collection<String> known = new ArrayList<>(defined);
    known.addAll(constants.symbols());
    repairs.addAll(Near.to(text, known, 3));
    boolean unit = UnitTable.standard().find(text).isPresent();
    if (repairs.isEmpty() || unit) {
      repairs.add("define it first: given " + text + " = …, or " + text + " = …");
    }
    if (unit) {
      repairs.add("as a unit, after a number or in brackets: 1 [" + text + "]");
    }
    String sentence = "I do not know “" + text + "” in this sheet.";
    return new ProblemException(
        new Problem(
            Problem.Kind.NAME,
            sentence,
            source,
            name.span(),
            repairs.stream().distinct().limit(4).toList()));
  }

  /** {@code kq} where k and q are known: a product needs a space or a star. */
  private static List<String> split(String text, Set<String> defined, Constants constants) {
    for (int i = 1; i < text.length(); i++) {
      String left = Greek.normal(text.substring(0, i));
      String right = Greek.normal(text.substring(i));
      if (isKnown(left, defined, constants) && isKnown(right, defined, constants)) {
        return List.of(left + "*" + right);
      }
    }
    return List.of();
  }

  /** {@code x2} where x is known: squared, or a name with a subscript? */
  private static List<String> raised(String text, Set<String> defined, Constants constants) {
    String base = text.replaceFirst("\\d+$", "");
    String digits = text.substring(base.length());
    return !digits.isEmpty() && isKnown(base, defined, constants)
        ? List.of(base + "^" + digits, base + "_" + digits)
        : List.of();
  }

  private static boolean isKnown(String name, Set<String> defined, Constants constants) {
    return defined.contains(name) || constants.has(name);
  }
}
