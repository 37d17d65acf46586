package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Budget;
import plainscale.laws.Slip;
import plainscale.laws.Slips;
import plainscale.laws.Subject;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.GuardResult.Doubt;
import plainscale.sheet.GuardResult.Lever;
import plainscale.sheet.GuardResult.Suspect;
import plainscale.units.UnitOfMeasure;

/**
 * From which given a value that should not be so probably comes. The usual slips are tried on each
 * given that it hangs on, by the sheet itself with another value for that name; where none explains
 * it, the given is named that the value follows most, and what it would have to be.
 */
final class Suspicions {
  private static final int MOST_SUSPECTS = 3;
  private static final int MOST_TRIALS = 200;

  /** What a suspicion may cost, beside what its cell may. */
  private static final int STEPS = 300_000;

  private static final Duration TIME = Duration.ofSeconds(5);
  private static final MathContext FIGURES = new MathContext(2, RoundingMode.HALF_EVEN);

  private final Budget all;
  private final Showing showing;
  private final Expr value;
  private final Quantity now;
  private final @Nullable UnitOfMeasure unit;
  private final Predicate<Quantity> fits;
  private int trials;

  /**
   * @param value what should not be so
   * @param now what it is
   * @param unit the unit in which it is shown, if one was chosen
   * @param fits whether a value would be as it should
   */
  Suspicions(
      Showing showing,
      Expr value,
      Quantity now,
      @Nullable UnitOfMeasure unit,
      Predicate<Quantity> fits) {
    Budget budget = showing.wave().budget();
    this.all = budget;
    this.showing = showing.with(showing.wave().within(new Budget(STEPS, TIME, budget::isStopped)));
    this.value = value;
    this.now = now;
    this.unit = unit;
    this.fits = fits;
  }

  /**
   * The suspicion, for a value that should reach a limit (in the coherent SI unit). Where it would
   * cost too much, there is none.
   */
  Doubt doubt(BigDecimal limit) {
    try {
      return all.untimed(() -> found(limit));
    } catch (ProblemException tooLong) {
      return Doubt.NONE;
    }
  }

  private Doubt found(BigDecimal limit) {
    List<Entry> written = written();
    List<Suspect> suspects = suspects(written);
    return suspects.isEmpty()
        ? new Doubt(suspects, lever(written, limit).orElse(null))
        : new Doubt(suspects, null);
  }

  /** What was written down as a number, and has a say in the value. */
  private List<Entry> written() {
    Map<String, Entry> entries = showing.names().entries();
    Set<String> names = new LinkedHashSet<>();
    References.in(value).forEach(name -> names.addAll(References.ofName(name, entries)));
    return entries.values().stream()
        .filter(entry -> names.contains(entry.name()) && isNumber(entry.statement()))
        .toList();
  }

  private static boolean isNumber(Statement statement) {
    if (statement instanceof Statement.Definition definition) {
      Expr formula = definition.formula();
      return formula instanceof Expr.Literal
          || (formula instanceof Expr.InUnits in && in.operand() instanceof Expr.Literal);
    }
    return statement instanceof Statement.Given;
  }

  private List<Suspect> suspects(List<Entry> written) {
    List<Suspect> suspects = new ArrayList<>();
    Set<String> named = new LinkedHashSet<>();
    for (Slip slip : Slips.usual()) {
      for (Entry entry : written) {
        boolean more = suspects.size() < MOST_SUSPECTS && trials < MOST_TRIALS;
        if (more && !named.contains(entry.name())) {
          suspect(slip, entry).ifPresent(suspects::add);
          suspects.forEach(suspect -> named.add(suspect.name()));
        }
      }
    }
    return suspects;
  }

  private Optional<Suspect> suspect(Slip slip, Entry entry) {
    Quantity given = showing.value(name(entry));
    return slip.meant(given, new Subject(entry.name(), entry.description()))
        .flatMap(meant -> suspect(entry, given, meant));
  }

  private Optional<Suspect> suspect(Entry entry, Quantity given, Slip.Meant meant) {
    return with(entry, meant.quantity())
        .filter(then -> then.kind().equals(now.kind()) && fits.test(then))
        .map(
            then ->
                new Suspect(
                    entry.name(),
                    given.shown(),
                    meant.shown(),
                    display().fine(then, unit),
                    meant.question().replace("{name}", entry.name())));
  }

  /** The value in the sheet with another value for a name. */
  private Optional<Quantity> with(Entry entry, Quantity other) {
    trials++;
    return new OtherValues(showing, Map.of(entry.name(), other)).find(value);
  }

  private Expr.Name name(Entry entry) {
    return new Expr.Name(span(), entry.name());
  }

  private Span span() {
    return value.span();
  }

  private Display display() {
    return new Display(showing, span());
  }

  /** The given of which the smallest change would do. */
  private Optional<Lever> lever(List<Entry> written, BigDecimal limit) {
    Entry strongest = null;
    double most = 0;
    for (Entry entry : written) {
      Leverage leverage = leverage(entry, limit);
      double slope = Math.abs(leverage.slope());
      if (slope > most) {
        most = slope;
        strongest = entry;
      }
    }
    Entry found = strongest;
    return found == null ? Optional.empty() : Optional.of(lever(found, leverage(found, limit)));
  }

  private Leverage leverage(Entry entry, BigDecimal limit) {
    Quantity given = showing.value(name(entry));
    return new Leverage(
        now.value().doubleValue(),
        limit.doubleValue(),
        factor ->
            given.isReading() || given.value().signum() == 0
                ? Double.NaN
                : with(entry, given.times(Quantity.number(BigDecimal.valueOf(factor))))
                    .map(q -> q.value().doubleValue())
                    .orElse(Double.NaN));
  }

  private Lever lever(Entry entry, Leverage leverage) {
    Quantity given = showing.value(name(entry));
    Shown before = given.shown();
    double factor = leverage.factor();
    if (!Double.isFinite(factor)) {
      return new Lever(entry.name(), before, null, null);
    }
    BigDecimal times = BigDecimal.valueOf(factor).round(FIGURES);
    Quantity needed = given.times(Quantity.number(BigDecimal.valueOf(factor)));
    Shown inUnit = needed.in(before.unit()).shown(FIGURES.getPrecision());
    BigDecimal plain = Beyond.plain(inUnit.value());
    return new Lever(
        entry.name(), before, new Shown(plain, null, inUnit.unit()), Beyond.plain(times));
  }
}
