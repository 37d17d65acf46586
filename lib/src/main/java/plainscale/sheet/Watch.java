package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plainscale.laws.HazardLimit;
import plainscale.laws.HazardLimits;
import plainscale.laws.PhysicalBound;
import plainscale.laws.PhysicalBounds;
import plainscale.laws.Subject;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.GuardResult.Doubt;
import plainscale.sheet.GuardResult.Excess;
import plainscale.units.UnitOfMeasure;

/**
 * Looks at each value that a cell gives, defines, derives or shows: whether it can be, and whether
 * it sets off a caution. Words decide where the kind alone does not: those of the description and
 * the name, and for cautions those that stand in the sheet.
 */
final class Watch {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** By which share of an elementary charge nobody's figures are to be trusted. */
  private static final BigDecimal TENTH = new BigDecimal("0.1");

  /** A share of an elementary charge that is left of a computation. */
  private static final BigDecimal DUST = new BigDecimal("0.01");

  /** So many digits a number below a thousand has. */
  private static final int PLAIN = 3;

  private final String cellId;
  private final Showing showing;
  private final Set<String> cautioned;

  Watch(String cellId, Showing showing, Set<String> cautioned) {
    this.cellId = cellId;
    this.showing = showing;
    this.cautioned = cautioned;
  }

  /** A value, what it is called, and the formula that it stands for. */
  private record Watched(
      Expr value,
      Subject subject,
      Quantity quantity,
      @Nullable UnitOfMeasure unit,
      boolean difference) {}

  /** What is to be said after a statement; a value that there is not was told before. */
  List<Result> after(Statement statement) {
    try {
      return watched(statement).map(this::judged).orElse(List.of());
    } catch (ProblemException noValue) {
      return List.of();
    }
  }

  private Optional<Watched> watched(Statement statement) {
    if (statement instanceof Statement.Given given) {
      return named(given.name(), statement, null);
    }
    if (statement instanceof Statement.Definition definition) {
      return named(definition.name(), statement, definition.format().in());
    }
    if (statement instanceof Statement.Solve solve) {
      boolean told = solve.telling() != Statement.Telling.BOXES; // what is to be filled in
      return told ? named(solve.unknown(), statement, solve.format().in()) : Optional.empty();
    }
    return statement instanceof Statement.Show show ? shown(show) : Optional.empty();
  }

  private Optional<Watched> named(String name, Statement statement, @Nullable UnitOfMeasure unit) {
    Entry entry = showing.names().entries().get(name);
    if (entry == null || !entry.cellId().equals(cellId)) {
      return Optional.empty(); // another cell defines it now
    }
    Expr.Name value = new Expr.Name(statement.span(), name);
    Subject subject = new Subject(name, entry.description());
    boolean difference = showing.wave().formula(name).filter(Differences::in).isPresent();
    return Optional.of(new Watched(value, subject, showing.value(value), unit, difference));
  }

  /** A name was watched where it was defined, unless it is called otherwise here. */
  private Optional<Watched> shown(Statement.Show show) {
    String name = show.value() instanceof Expr.Name known ? known.text() : "";
    boolean before = !name.isEmpty() && isWatched(name) && show.description().isEmpty();
    if (before || show.format().style() == Format.Style.ORDERS) {
      return Optional.empty();
    }
    Subject subject = new Subject(name, show.description());
    Quantity quantity = showing.value(show.value());
    boolean difference = Differences.in(show.value());
    UnitOfMeasure unit = show.format().in();
    return Optional.of(new Watched(show.value(), subject, quantity, unit, difference));
  }

  private boolean isWatched(String name) {
    Entry entry = showing.names().entries().get(name);
    Statement statement = entry == null ? null : entry.statement();
    return statement instanceof Statement.Given
        || statement instanceof Statement.Definition
        || statement instanceof Statement.Solve;
  }

  private List<Result> judged(Watched watched) {
    List<Result> results = new ArrayList<>();
    List<PhysicalBound> bounds =
        PhysicalBounds.of(watched.quantity(), watched.subject(), watched.difference());
    for (PhysicalBound bound : bounds) {
      Optional<Result> impossible =
          bound.whole().isPresent() ? divided(watched, bound) : outside(watched, bound);
      impossible.filter(result -> results.isEmpty()).ifPresent(results::add);
    }
    HazardLimits.passed(watched.quantity(), watched.subject(), () -> others(watched), cautioned)
        .stream()
        .filter(limit -> !isDifferenceOfReadings(watched, limit))
        .forEach(limit -> results.add(setOff(watched, limit)));
    return results;
  }

  /** Five kelvins less are not cold. */
  private static boolean isDifferenceOfReadings(Watched watched, HazardLimit limit) {
    return limit.unit().isScale() && watched.difference() && !watched.quantity().isReading();
  }

  /** Beyond the bound by more than its margin and the uncertainty of the value leave open. */
  private Optional<Result> outside(Watched watched, PhysicalBound bound) {
    Quantity quantity = watched.quantity();
    if (fits(quantity, bound)) {
      return Optional.empty();
    }
    BigDecimal limit = passed(quantity, bound);
    BigDecimal compared = bound.compared(quantity);
    Shown shown = display(watched).of(quantity, watched.unit());
    BigDecimal signed =
        compared.compareTo(quantity.value()) == 0 ? limit : limit.negate(); // of the value itself
    Doubt doubt =
        new Suspicions(
                showing, watched.value(), quantity, watched.unit(), other -> fits(other, bound))
            .doubt(signed);
    return Optional.of(
        new GuardResult.Impossible(
            label(watched),
            shown,
            bound.isStrict(),
            Beyond.of(compared, limit, shown.unit()),
            readable(bound.unit().fromCoherent(limit), bound.unit()),
            bound.what(),
            bound.why(),
            doubt,
            showing.writing()));
  }

  private static boolean fits(Quantity quantity, PhysicalBound bound) {
    BigDecimal low = limit(bound.least(), bound);
    BigDecimal high = limit(bound.most(), bound);
    Leeway leeway = Leeway.of(quantity, bound.compared(quantity));
    return leeway.reaches(
        low == null ? null : low.subtract(margin(low, bound)),
        high == null ? null : high.add(margin(high, bound)));
  }

  private static BigDecimal margin(BigDecimal limit, PhysicalBound bound) {
    return limit.abs().multiply(BigDecimal.valueOf(bound.margin()), MathContext.DECIMAL128);
  }

  private static @Nullable BigDecimal limit(Optional<BigDecimal> inUnit, PhysicalBound bound) {
    return inUnit.map(bound.unit()::toCoherent).orElse(null);
  }

  private static BigDecimal passed(Quantity quantity, PhysicalBound bound) {
    BigDecimal high = limit(bound.most(), bound);
    boolean above = high != null && bound.compared(quantity).compareTo(high) > 0;
    BigDecimal passed = above ? high : limit(bound.least(), bound);
    return Optional.ofNullable(passed).orElseThrow();
  }

  /** A small value that is no whole multiple, where its figures are good enough to tell. */
  private Optional<Result> divided(Watched watched, PhysicalBound bound) {
    Quantity quantity = watched.quantity();
    BigDecimal one = showing.wave().constant(bound.whole().orElseThrow()).value();
    BigDecimal multiple = bound.compared(quantity).divide(one, MathContext.DECIMAL128);
    BigDecimal most = bound.most().orElseThrow();
    BigDecimal nearest = multiple.setScale(0, RoundingMode.HALF_EVEN);
    BigDecimal off = multiple.subtract(nearest).abs();
    BigDecimal open =
        Leeway.of(quantity, quantity.value()).halfWidth().divide(one, MathContext.DECIMAL128);
    BigDecimal floor = nearest.signum() == 0 ? DUST : TENTH;
    boolean tells = open.add(floor).compareTo(HALF) < 0;
    boolean whole = off.compareTo(open.max(floor)) <= 0;
    if (multiple.compareTo(most) > 0 || !tells || whole) {
      return Optional.empty();
    }
    Shown shown = display(watched).of(quantity, watched.unit());
    return Optional.of(
        new GuardResult.Impossible(
            label(watched),
            shown,
            bound.isStrict(),
            new Excess(Excess.Way.MULTIPLE, inFigures(multiple)),
            new Shown(BigDecimal.ONE, null, UnitOfMeasure.ONE),
            bound.what(),
            bound.why(),
            Doubt.NONE, // any slip leads to some whole number
            showing.writing()));
  }

  /** To so many figures that it is seen to be none. */
  private static Shown inFigures(BigDecimal multiple) {
    int places = multiple.compareTo(BigDecimal.ONE) < 0 ? 2 : 1;
    MathContext figures =
        new MathContext(multiple.precision() - multiple.scale() + places, RoundingMode.HALF_EVEN);
    BigDecimal rounded =
        multiple.compareTo(TENTH) < 0
            ? multiple.round(new MathContext(places))
            : multiple.round(figures);
    return new Shown(Beyond.plain(rounded), null, UnitOfMeasure.ONE);
  }

  private Result setOff(Watched watched, HazardLimit limit) {
    return new GuardResult.SetOff(
        label(watched),
        display(watched).of(watched.quantity(), watched.unit()),
        limit.hazard(),
        limit.side(),
        readable(limit.limit(), limit.unit()),
        limit.whose(),
        limit.advice(),
        showing.writing());
  }

  /** An exact limit as it reads best, without zeros that say nothing. */
  private static Shown readable(BigDecimal limit, UnitOfMeasure unit) {
    BigDecimal exact = limit.stripTrailingZeros();
    int more = Math.max(0, PLAIN - exact.precision()); // so that a prefix finds room for its zeros
    Shown padded = new Shown(exact.setScale(exact.scale() + more), null, unit);
    Shown shown = PrefixedForm.of(padded).orElse(padded);
    return new Shown(Beyond.plain(shown.value().stripTrailingZeros()), null, shown.unit());
  }

  /** The value itself, and all that it hangs on. */
  private Collection<Quantity> others(Watched watched) {
    Map<String, Entry> entries = showing.names().entries();
    Set<String> names = new LinkedHashSet<>();
    References.in(watched.value()).forEach(name -> names.addAll(References.ofName(name, entries)));
    List<Quantity> others = new ArrayList<>(List.of(watched.quantity()));
    for (String name : names) {
      boolean quantity =
          Optional.ofNullable(entries.get(name)).filter(Entry::isQuantity).isPresent();
      if (quantity) {
        others.add(showing.value(new Expr.Name(watched.value().span(), name)));
      }
    }
    return others;
  }

  private Result.Label label(Watched watched) {
    return showing.label(watched.value(), "");
  }

  private Display display(Watched watched) {
    return new Display(showing, watched.value().span());
  }
}
