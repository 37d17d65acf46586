package plainscale.laws;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * A row of {@code hazard-limits.tsv}: beyond which value a quantity of a kind sets off the cautions
 * of a hazard. What it is of hangs on its words; that it belongs to the hazard is told by its
 * words, or by a caution of the sheet.
 */
public final class HazardLimit {
  private final Hazard hazard;
  private final UnitOfMeasure unit;
  private final BigDecimal limit;
  private final Side side;
  private final WordList words;
  private final WordList where;
  private final WordList unless;
  private final List<Beside> beside;
  private final String whose;
  private final String advice;
  private final String source;

  /** The sides of a limit. */
  public enum Side {
    /** Above it. */
    ABOVE,
    /** At it or above. */
    REACHED,
    /** Below it. */
    BELOW
  }

  /** Another quantity that the value hangs on lies between two values, both in {@code unit}. */
  private record Beside(UnitOfMeasure unit, BigDecimal from, @Nullable BigDecimal to) {
    static Beside of(String text) {
      String[] parts = text.strip().split(" ", -1);
      return new Beside(
          UnitParser.parse(parts[0]),
          new BigDecimal(parts[1]),
          parts[2].equals("-") ? null : new BigDecimal(parts[2]));
    }

    boolean holds(Quantity quantity) {
      if (!quantity.kind().equals(unit.kind())) {
        return false;
      }
      BigDecimal value = unit.fromCoherent(quantity.value()).abs();
      return value.compareTo(from) >= 0 && (to == null || value.compareTo(to) <= 0);
    }
  }

  HazardLimit(Table.Row row) {
    String name = row.get("hazard");
    this.hazard =
        Hazards.find(name).orElseThrow(() -> new IllegalArgumentException("no hazard " + name));
    this.unit = UnitParser.parse(row.get("unit"));
    this.limit = new BigDecimal(row.get("limit"));
    this.side =
        switch (row.get("beyond")) {
          case "above" -> Side.ABOVE;
          case "from" -> Side.REACHED;
          case "below" -> Side.BELOW;
          default -> throw new IllegalArgumentException("no side " + row);
        };
    this.words = WordList.of(row.get("words"));
    this.where = WordList.of(row.get("where"));
    this.unless = WordList.of(row.get("unless"));
    this.beside =
        row.get("beside").equals("-")
            ? List.of()
            : Arrays.stream(row.get("beside").split(";", -1)).map(Beside::of).toList();
    this.whose = row.get("whose");
    this.advice = row.get("advice");
    this.source = row.get("source");
  }

  /** Whose cautions it sets off. */
  public Hazard hazard() {
    return hazard;
  }

  /** The unit of its limit. */
  public UnitOfMeasure unit() {
    return unit;
  }

  /** The limit, in {@link #unit()}. */
  public BigDecimal limit() {
    return limit;
  }

  /** Which values go beyond it. */
  public Side side() {
    return side;
  }

  /** What the limit is and who set it, in words. */
  public String whose() {
    return whose;
  }

  /** What to do. */
  public String advice() {
    return advice;
  }

  /** Where the limit is published, or that it is common practice. */
  public String source() {
    return source;
  }

  /** Whether it is told of what a quantity must be. */
  boolean isPlaced() {
    return !where.isEmpty();
  }

  /** Whether the words tell that a quantity is of what it must be. */
  boolean isPlaced(Subject subject) {
    return where.in(subject);
  }

  /** Whether a quantity of its kind, with what it stands beside, goes beyond it. */
  boolean isPassed(Quantity quantity, Subject subject, Collection<Quantity> others) {
    boolean asked = words.isEmpty() || words.in(subject);
    return asked
        && !unless.in(subject)
        && beside.stream().allMatch(b -> others.stream().anyMatch(b::holds))
        && isBeyond(quantity);
  }

  /** Upwards the size counts, whatever the sign. */
  private boolean isBeyond(Quantity quantity) {
    BigDecimal coherent = unit.toCoherent(limit);
    return switch (side) {
      case ABOVE -> quantity.value().abs().compareTo(coherent) > 0;
      case REACHED -> quantity.value().abs().compareTo(coherent) >= 0;
      case BELOW -> quantity.value().compareTo(coherent) < 0;
    };
  }

  /** Whether it is further out than another of the same kind and hazard. */
  boolean isBeyond(HazardLimit other) {
    int order = unit.toCoherent(limit).compareTo(other.unit.toCoherent(other.limit));
    return side == Side.BELOW ? order < 0 : order > 0;
  }
}
