package plainscale.data;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * The heading of a column: {@code d (cm)}, {@code d [cm]}, {@code d in cm}, {@code d/cm} (the SI
 * Brochure's quantity over unit, 9th edition, 5.4.1). {@code u(d)/cm} and {@code ±d (cm)} head the
 * standard uncertainties of {@code d}.
 *
 * @param text what stands in the file
 * @param name a valid name
 * @param quantity the name as it stands there
 * @param unit the unit, if one stands there
 * @param wrongUnit what stands in the place of a unit and is none, or empty
 * @param uncertainty whether it heads uncertainties
 * @param line the line of the file
 */
record Heading(
    String text,
    String name,
    String quantity,
    Optional<UnitOfMeasure> unit,
    String wrongUnit,
    boolean uncertainty,
    long line) {

  /** {@code U (V)} and {@code u (m/s)} are quantities; an uncertainty has no room before (. */
  private static final Pattern OF_QUANTITY = Pattern.compile("u\\(([^()]+)\\)(.*)");

  private static final Pattern PLUS_MINUS = Pattern.compile("(?:±|\\+/?-)\\s*(.*)");

  /** Name and unit, tried in this order; of a wrong unit the first form that fits is told. */
  private static final List<Pattern> FORMS =
      List.of(
          Pattern.compile("(?<name>.*?)\\s*/?\\s*\\[(?<unit>[^\\[\\]]+)\\]"),
          Pattern.compile("(?<name>[^(]*?)\\s*/?\\s*\\((?<unit>.+)\\)"),
          Pattern.compile("(?<name>.+?)\\s+in\\s+(?<unit>\\S.*)"),
          Pattern.compile("(?<name>[^/]+?)\\s*/\\s*(?<unit>.+)"));

  /** ln(d) is no quantity measured in days. */
  private static final Set<String> FUNCTIONS =
      Set.of("ln", "log", "lg", "log10", "exp", "sqrt", "sin", "cos", "tan");

  /** A heading taken apart. */
  private record Parts(String quantity, Optional<UnitOfMeasure> unit, String wrongUnit) {}

  /** Reads a heading at that place, counted from 1. */
  static Heading of(String text, int place, long line) {
    Matcher of = OF_QUANTITY.matcher(text);
    Matcher plus = PLUS_MINUS.matcher(text);
    boolean uncertainty = of.matches() || plus.matches();
    String rest = !uncertainty ? text : of.matches() ? of.group(1) + of.group(2) : plus.group(1);
    Parts parts = parts(rest.strip());
    String quantity = parts.quantity().strip();
    String name = uncertainty && quantity.isEmpty() ? "" : ColumnNames.valid(quantity, place);
    return new Heading(text, name, quantity, parts.unit(), parts.wrongUnit(), uncertainty, line);
  }

  private static Parts parts(String text) {
    Parts first = new Parts(text, Optional.empty(), "");
    for (Pattern form : FORMS) {
      Matcher m = form.matcher(text);
      if (m.matches() && !FUNCTIONS.contains(m.group("name"))) {
        Parts parts = new Parts(m.group("name"), unit(m.group("unit")), m.group("unit"));
        if (parts.unit().isPresent()) {
          return new Parts(parts.quantity(), parts.unit(), "");
        }
        first = first.wrongUnit().isEmpty() ? parts : first;
      }
    }
    return first;
  }

  /** The unit that a text means, in square or round brackets or bare. */
  static Optional<UnitOfMeasure> unit(String text) {
    try {
      return Optional.of(UnitParser.parse(text.replaceAll("^[\\[(](.*)[\\])]$", "$1").strip()));
    } catch (UnitException none) {
      return Optional.empty();
    }
  }

  /** What the wrong unit may have meant. */
  List<String> nearUnits() {
    try {
      UnitParser.parse(wrongUnit);
      return List.of();
    } catch (UnitException e) {
      return e.repairs();
    }
  }

  /** With a unit that stands elsewhere. */
  Heading in(UnitOfMeasure other) {
    return new Heading(text, name, quantity, Optional.of(other), "", uncertainty, line);
  }

  /** With another name. */
  Heading named(String other) {
    return new Heading(text, other, quantity, unit, wrongUnit, uncertainty, line);
  }
}
