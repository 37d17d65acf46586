package plainscale.laws;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * A row of {@code bounds.tsv}: between what a quantity of a kind lies, whatever was measured. Which
 * quantities it is for hangs on their words.
 */
public final class PhysicalBound {
  private static final String NOTHING = "-";

  private final String name;
  private final UnitOfMeasure unit;
  private final boolean size;
  private final @Nullable BigDecimal least;
  private final @Nullable BigDecimal most;
  private final @Nullable String whole;
  private final double margin;
  private final WordList words;
  private final WordList also;
  private final WordList unless;
  private final @Nullable WordList tells;
  private final boolean strict;
  private final String what;
  private final String why;
  private final String source;

  PhysicalBound(Table.Row row) {
    this.name = row.get("name");
    this.unit = UnitParser.parse(row.get("unit"));
    this.size = row.get("of").equals("size");
    this.least = number(row.get("least"));
    this.most = number(row.get("most"));
    this.whole = row.get("whole").equals(NOTHING) ? null : row.get("whole");
    this.margin = Double.parseDouble(row.get("margin"));
    this.words = WordList.of(row.get("words"));
    this.also = WordList.of(row.get("also"));
    this.unless = WordList.of(row.get("unless"));
    String difference = row.get("difference");
    this.tells = difference.equals("any") ? null : WordList.of(difference);
    this.strict = row.get("verdict").equals("cannot");
    this.what = row.get("what");
    this.why = row.get("why");
    this.source = row.get("source");
  }

  private static @Nullable BigDecimal number(String cell) {
    return cell.equals(NOTHING) ? null : new BigDecimal(cell);
  }

  /** Its name in the table. */
  public String name() {
    return name;
  }

  /** The unit of its limits. */
  public UnitOfMeasure unit() {
    return unit;
  }

  /** The least value, in {@link #unit()}. */
  public Optional<BigDecimal> least() {
    return Optional.ofNullable(least);
  }

  /** The largest value, in {@link #unit()}; with {@link #whole()} so many of these. */
  public Optional<BigDecimal> most() {
    return Optional.ofNullable(most);
  }

  /** The constant of which small values are whole multiples. */
  public Optional<String> whole() {
    return Optional.ofNullable(whole);
  }

  /** By which share of a limit a value may pass it before anything is said. */
  public double margin() {
    return margin;
  }

  /** Whether a value outside cannot be; else it is hard to believe. */
  public boolean isStrict() {
    return strict;
  }

  /** What the limit is, in words. */
  public String what() {
    return what;
  }

  /** Why nothing lies outside: a sentence for students. */
  public String why() {
    return why;
  }

  /** Where the limit is published, or that it is common practice. */
  public String source() {
    return source;
  }

  /**
   * Whether it is for a quantity of its kind that is called so. What something is subtracted in may
   * be negative, unless its name or its words say that it is a quantity of its own.
   */
  boolean isFor(Subject subject, boolean difference) {
    boolean asked = words.isEmpty() || words.in(subject);
    boolean both = also.isEmpty() || also.in(subject);
    boolean own = !difference || tells == null || tells.in(subject);
    return asked && both && own && !unless.in(subject);
  }

  /** The value that is compared: the size of what has a direction or a sign. */
  public BigDecimal compared(Quantity quantity) {
    return size ? quantity.value().abs() : quantity.value();
  }
}
