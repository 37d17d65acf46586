package plainscale.laws;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import plainscale.algebra.Budget;
import plainscale.algebra.Evaluator;
import plainscale.algebra.Scope;
import plainscale.notation.Expr;
import plainscale.notation.Greek;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.table.Table;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * The everyday constants by symbol ({@code symbols.tsv}), in two sets: CODATA 2022 with
 * uncertainties, and the rounded values of school books, whose figures count as written. Constants
 * that follow from others ({@code k_e} from {@code ε_0}) are computed from them, so that they share
 * their source of uncertainty.
 */
public final class Constants {
  /** CODATA 2022. */
  public static final Constants CODATA = new Constants(false);

  /** Rounded values as school books print them; CODATA where a book prints none. */
  public static final Constants TEXTBOOK = new Constants(true);

  private static final String DERIVED = "derived: ";

  private final boolean textbook;
  private final Map<String, Table.Row> rows = new LinkedHashMap<>();
  private final Map<String, String> also = new LinkedHashMap<>();
  private final Map<String, Constant> known = new ConcurrentHashMap<>();

  private Constants(boolean textbook) {
    this.textbook = textbook;
    for (Table.Row row : Table.read(Constants.class, "symbols.tsv")) {
      rows.put(row.get("symbol"), row);
      if (!row.get("also").equals("-")) {
        also.put(Greek.normal(row.get("also")), row.get("symbol"));
      }
    }
  }

  /** The set of that name in a cell. */
  public static Constants named(String set) {
    return set.equals("textbook") ? TEXTBOOK : CODATA;
  }

  /** The symbols, in the order of the table. */
  public Collection<String> symbols() {
    return rows.keySet();
  }

  /** Whether there is a constant of that name; cheap. */
  public boolean has(String name) {
    return rows.containsKey(name) || also.containsKey(name);
  }

  /** The constant of that symbol, in one form ({@link Greek#normal}). */
  public Optional<Constant> find(String name) {
    String symbol = also.getOrDefault(name, name);
    Table.Row row = rows.get(symbol);
    if (row == null) {
      return Optional.empty();
    }
    Constant constant = known.get(symbol);
    if (constant == null) {
      constant = make(row);
      known.put(symbol, constant);
    }
    return Optional.of(constant);
  }

  private Constant make(Table.Row row) {
    boolean rounded = textbook && !row.get("textbook").equals("-");
    String source = rounded ? row.get("source") : codataSource(row);
    return new Constant(
        row.get("symbol"), row.get("meaning"), rounded ? rounded(row) : codata(row), source);
  }

  private static String codataSource(Table.Row row) {
    String name = row.get("row");
    return name.startsWith(DERIVED)
        ? name.substring(DERIVED.length())
        : "CODATA 2022, “" + name + "”";
  }

  private static Quantity rounded(Table.Row row) {
    return Quantity.written(new BigDecimal(row.get("textbook")), unit(row));
  }

  /**
   * CODATA's value, the same object for both sets, since an object is one source of uncertainty.
   */
  private Quantity codata(Table.Row row) {
    if (textbook) {
      return CODATA.find(row.get("symbol")).orElseThrow().quantity();
    }
    String name = row.get("row");
    String formula =
        name.startsWith(DERIVED) ? name.substring(DERIVED.length()) : row.get("exactly");
    if (!formula.equals("-")) {
      return evaluate(formula).in(unit(row));
    }
    Optional<Quantity> twin = twin(row);
    if (twin.isPresent()) {
      return twin.get();
    }
    Codata.Row printed = Codata.row(name);
    return printed.exact()
        ? Quantity.exact(printed.value(), unit(row))
        : Quantity.measured(row.get("symbol"), printed.value(), printed.uncertainty(), unit(row));
  }

  /** Another symbol of the same row, met before: it must share the source of uncertainty. */
  private Optional<Quantity> twin(Table.Row row) {
    return known.keySet().stream()
        .filter(symbol -> rows.getOrDefault(symbol, row).get("row").equals(row.get("row")))
        .flatMap(symbol -> Optional.ofNullable(known.get(symbol)).stream())
        .map(Constant::quantity)
        .findFirst();
  }

  private static UnitOfMeasure unit(Table.Row row) {
    return UnitParser.parse(row.get("unit"));
  }

  private Quantity evaluate(String formula) {
    Statement.Show show = Notation.parseExpression(formula, new OwnNames());
    return new Evaluator(formula, new OwnScope(), Budget.usual()).evaluate(show.value());
  }

  private final class OwnScope implements Scope {
    @Override
    public Quantity value(Expr.Name name, String source) {
      return find(name.text()).orElseThrow().quantity();
    }

    @Override
    public List<String> ofKind(Kind kind) {
      return List.of();
    }
  }

  private final class OwnNames implements Names {
    @Override
    public boolean isQuantity(String name) {
      return has(name);
    }

    @Override
    public boolean isDefined(String name) {
      return false;
    }

    @Override
    public boolean isSameAsUnit(String name) {
      return false;
    }

    @Override
    public String meaning(String name) {
      return "a constant";
    }

    @Override
    public Collection<String> all() {
      return symbols();
    }
  }
}
