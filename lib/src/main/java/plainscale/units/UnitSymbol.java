package plainscale.units;

import java.util.function.Supplier;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * One symbol as printed ("mN", "°C", "[in_i]"), its name in one and in many, and what Indriya knows
 * it as.
 */
public final class UnitSymbol {
  private final String text;
  private final String name;
  private final String plural;
  private final String source;
  private final Supplier<Unit<?>> maker;
  private volatile @Nullable Unit<?> unit;

  UnitSymbol(String text, String name, String plural, String source, Supplier<Unit<?>> maker) {
    this.text = text;
    this.name = name;
    this.plural = plural;
    this.source = source;
    this.maker = maker;
  }

  /** The symbol as printed, prefix included. */
  public String text() {
    return text;
  }

  /** "millinewton". */
  public String name() {
    return name;
  }

  /** "millinewtons". */
  public String plural() {
    return plural;
  }

  /** Where its definition comes from. */
  public String source() {
    return source;
  }

  /** Indriya's unit, made when first asked for: the unit library is slow to load. */
  public Unit<?> unit() {
    Unit<?> made = unit;
    if (made == null) {
      made = maker.get();
      unit = made;
    }
    return made;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof UnitSymbol symbol && symbol.text.equals(text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
