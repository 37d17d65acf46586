package plainscale.laws;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.table.Table;
import plainscale.units.UnitException;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * A row of {@code slips.tsv}: what is written down in place of what was measured, such as metres
 * for centimetres, or a diameter for a radius.
 */
public sealed interface Slip {

  /** What was meant, if a quantity with that name can have been written by this slip. */
  Optional<Meant> meant(Quantity written, Subject subject);

  /** What was meant, the same as it would be written, and what to ask of the name. */
  record Meant(Quantity quantity, Shown shown, String question) {}

  /** Reads a row. */
  static Slip of(Table.Row row) {
    String question = row.get("question");
    return switch (row.get("slip")) {
      case "unit" ->
          new OtherUnit(
              UnitParser.parse(row.get("written")),
              UnitParser.parse(row.get("meant")),
              WordList.of(row.get("for")),
              question);
      case "prefix" ->
          new OtherPrefix(
              prefix(row.get("written")),
              prefix(row.get("meant")),
              row.get("for").equals("-") ? List.of() : List.of(row.get("for").split("\\|", -1)),
              question);
      case "factor" -> {
        String kind = row.get("written");
        yield new Factor(
            kind.equals("-") ? null : UnitParser.parse(kind),
            new BigDecimal(row.get("meant")),
            WordList.of(row.get("for")),
            question);
      }
      default -> throw new IllegalArgumentException("no slip " + row);
    };
  }

  private static String prefix(String cell) {
    return cell.equals("-") ? "" : cell;
  }

  /** The number as written, in another unit of its kind. */
  private static Meant inUnit(Quantity written, UnitOfMeasure other, String question) {
    Shown before = written.shown();
    Shown shown = new Shown(before.value(), before.uncertain(), other);
    boolean scale = written.displayUnit().isScale() || other.isScale();
    Quantity quantity =
        scale
            ? Quantity.written(before.value(), other)
            : scaled(written, ratio(other, written.displayUnit())).in(other);
    return new Meant(quantity, shown, question);
  }

  private static BigDecimal ratio(UnitOfMeasure other, UnitOfMeasure unit) {
    return other.factor().divide(unit.factor(), MathContext.DECIMAL128);
  }

  private static Quantity scaled(Quantity quantity, BigDecimal factor) {
    return quantity.times(Quantity.number(factor));
  }

  /** One unit for another. */
  record OtherUnit(UnitOfMeasure written, UnitOfMeasure meant, WordList words, String question)
      implements Slip {
    @Override
    public Optional<Meant> meant(Quantity quantity, Subject subject) {
      boolean fits = words.isEmpty() || words.in(subject);
      return fits && quantity.displayUnit().equals(written)
          ? Optional.of(inUnit(quantity, meant, question))
          : Optional.empty();
    }
  }

  /** One prefix for another, or for none, before a unit that stands alone. */
  record OtherPrefix(String written, String meant, List<String> bases, String question)
      implements Slip {
    /** Keeps its own copy of the base units. */
    public OtherPrefix {
      bases = List.copyOf(bases);
    }

    @Override
    public Optional<Meant> meant(Quantity quantity, Subject subject) {
      String symbol = quantity.displayUnit().text();
      if (!symbol.startsWith(written) || symbol.length() == written.length()) {
        return Optional.empty();
      }
      String base = symbol.substring(written.length());
      boolean asked = bases.isEmpty() || bases.contains(base);
      boolean prefixed =
          asked
              && unit(base)
                  .filter(unit -> isMultiple(quantity.displayUnit(), unit, written))
                  .isPresent();
      return prefixed
          ? unit(meant + base).map(other -> inUnit(quantity, other, question))
          : Optional.empty();
    }

    /** A minute is no thousandth of an inch: the prefix must be one. */
    private static boolean isMultiple(UnitOfMeasure unit, UnitOfMeasure base, String prefix) {
      return prefix.isEmpty()
          || (unit.kind().equals(base.kind())
              && unit.factors()
                  .get(0)
                  .symbol()
                  .name()
                  .endsWith(base.factors().get(0).symbol().name()));
    }

    private static Optional<UnitOfMeasure> unit(String text) {
      try {
        UnitOfMeasure unit = UnitParser.parse(text);
        boolean alone = unit.factors().size() == 1 && unit.factors().get(0).exponent() == 1;
        return alone && !unit.isScale() ? Optional.of(unit) : Optional.empty();
      } catch (UnitException none) {
        return Optional.empty();
      }
    }
  }

  /** A multiple: of a diameter for a radius, a shifted decimal point. */
  record Factor(@Nullable UnitOfMeasure kind, BigDecimal factor, WordList words, String question)
      implements Slip {
    @Override
    public Optional<Meant> meant(Quantity quantity, Subject subject) {
      boolean fits = kind == null ? !quantity.kind().isNumber() : isOfKind(quantity);
      if (!fits || quantity.isReading() || !(words.isEmpty() || words.in(subject))) {
        return Optional.empty();
      }
      Quantity meant = scaled(quantity, factor);
      return Optional.of(new Meant(meant, meant.shown(), question));
    }

    private boolean isOfKind(Quantity quantity) {
      return kind != null && quantity.kind().equals(kind.kind());
    }
  }
}
