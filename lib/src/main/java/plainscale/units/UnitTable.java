package plainscale.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.Unit;
import plainscale.table.Table;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;

/** The symbols of {@code units.tsv} with their prefixes. */
public final class UnitTable {
  private static final UnitTable STANDARD = new UnitTable();

  private final Map<String, Table.Row> rows = new LinkedHashMap<>();
  private final Map<String, Optional<UnitSymbol>> found = new ConcurrentHashMap<>();

  private UnitTable() {
    for (Table.Row row : Table.read(UnitTable.class, "units.tsv")) {
      rows.put(row.get("symbol"), row);
      for (String alias : row.get("aliases").split(" ", -1)) {
        if (!alias.isEmpty()) {
          rows.put(alias, row);
        }
      }
    }
  }

  /** The table that every part of the program shares. */
  public static UnitTable standard() {
    return STANDARD;
  }

  /** The unit with that symbol, prefixed or not; empty if there is none. */
  public Optional<UnitSymbol> find(String symbol) {
    return symbol.length() > 20 ? Optional.empty() : found.computeIfAbsent(symbol, this::look);
  }

  /** The symbols without prefixes, for completion. */
  public List<String> symbols() {
    return rows.values().stream().distinct().map(row -> row.get("symbol")).toList();
  }

  /** The symbol of the unit with that English name, in one or in many, with or without a prefix. */
  Optional<String> byName(String name) {
    return rows.values().stream()
        .flatMap(
            row ->
                Stream.concat(
                        Stream.of(""), Prefix.names().filter(p -> row.get("prefixes").equals("si")))
                    .filter(prefix -> named(prefix, row, name))
                    .map(prefix -> Prefix.symbol(prefix) + row.get("symbol")))
        .findFirst();
  }

  private static boolean named(String prefix, Table.Row row, String name) {
    return name.equals(prefix + row.get("name")) || name.equals(prefix + row.get("plural"));
  }

  private Optional<UnitSymbol> look(String symbol) {
    Table.Row row = rows.get(symbol);
    return row != null
        ? Optional.of(plain(row))
        : prefixed(symbol, false).or(() -> prefixed(symbol, true));
  }

  private UnitSymbol plain(Table.Row row) {
    Supplier<Unit<?>> maker = () -> define(row.get("definition"));
    return new UnitSymbol(
        row.get("symbol"), row.get("name"), row.get("plural"), row.get("source"), maker);
  }

  private Optional<UnitSymbol> prefixed(String symbol, boolean longer) {
    return Prefix.startOf(symbol, longer)
        .flatMap(
            prefix -> {
              Table.Row row = rows.get(symbol.substring(prefix.text().length()));
              if (row == null || !row.get("prefixes").equals("si")) {
                return Optional.empty();
              }
              UnitSymbol base = plain(row);
              return Optional.of(
                  new UnitSymbol(
                      prefix.text() + base.text(),
                      prefix.name() + base.name(),
                      prefix.name() + base.plural(),
                      base.source(),
                      () -> base.unit().prefix(prefix.metric())));
            });
  }

  private Unit<?> define(String definition) {
    int space = definition.indexOf(' ');
    String head = definition.substring(0, space);
    String tail = definition.substring(space + 1);
    return head.equals("ucum") ? Ucum.parse(tail) : multiple(head, tail);
  }

  private Unit<?> multiple(String factor, String base) {
    Unit<?> unit = UnitParser.parse(base).unit();
    return unit.transform(MultiplyConverter.of(exact(factor)));
  }

  private static RationalNumber exact(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return rational(new BigDecimal(text));
    }
    return rational(new BigDecimal(text.substring(0, slash)))
        .divide(rational(new BigDecimal(text.substring(slash + 1))));
  }

  private static RationalNumber rational(BigDecimal value) {
    return value.scale() > 0
        ? RationalNumber.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()))
        : RationalNumber.of(value.toBigIntegerExact(), BigInteger.ONE);
  }
}
