package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.GuardStatement;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.GuardResult.Doubt;
import plainscale.sheet.GuardResult.Verdict;
import plainscale.units.UnitOfMeasure;

/** Judges whether a value lies where its author expected it. */
final class Expecting {
  private static final String PER_CENT = "%";

  private final Showing showing;
  private final GuardStatement.Expected expected;
  private final Quantity value;

  Expecting(Showing showing, GuardStatement.Expected expected) {
    this.showing = showing;
    this.expected = expected;
    this.value = showing.value(expected.value());
  }

  /** Limits in the coherent SI unit, as far as there are any, and how they are shown. */
  private record Range(
      @Nullable BigDecimal low, @Nullable BigDecimal high, GuardResult.Limits shown) {}

  Result judged() {
    Range range = range(expected.range());
    Verdict verdict = verdict(value, range);
    Shown shown = display().of(value, unit());
    GuardResult.@Nullable Excess excess = null;
    Doubt doubt = Doubt.NONE;
    if (verdict == Verdict.OUTSIDE) {
      BigDecimal limit = passed(range);
      excess = Beyond.of(value.value(), limit, shown.unit());
      doubt =
          new Suspicions(
                  showing,
                  expected.value(),
                  value,
                  unit(),
                  other -> verdict(other, range) != Verdict.OUTSIDE)
              .doubt(limit);
    }
    return new GuardResult.Expected(
        showing.label(expected.value(), ""),
        shown,
        range.shown(),
        verdict,
        excess,
        expected.why(),
        doubt,
        showing.writing());
  }

  private static Verdict verdict(Quantity quantity, Range range) {
    return Leeway.of(quantity, quantity.value()).verdict(range.low(), range.high());
  }

  /** The limit beyond which the value lies. */
  private BigDecimal passed(Range range) {
    BigDecimal high = range.high();
    boolean above = high != null && value.value().compareTo(high) > 0;
    return Optional.ofNullable(above ? high : range.low()).orElseThrow();
  }

  private Display display() {
    return new Display(showing, expected.value().span());
  }

  /** A computed value is shown in the unit of its limits. */
  private @Nullable UnitOfMeasure unit() {
    Quantity first = showing.value(expected.range().limits().get(0));
    return first.unit().filter(unit -> !first.kind().isNumber()).orElse(null);
  }

  private Range range(GuardStatement.Range range) {
    if (range instanceof GuardStatement.Between between) {
      return between(limit(between.low()), limit(between.high()), between);
    }
    if (range instanceof GuardStatement.Below below) {
      Quantity high = limit(below.limit());
      return new Range(null, high.value(), new GuardResult.Between(null, shown(below.limit())));
    }
    if (range instanceof GuardStatement.Above above) {
      Quantity low = limit(above.limit());
      return new Range(low.value(), null, new GuardResult.Between(shown(above.limit()), null));
    }
    return about((GuardStatement.About) range);
  }

  private Range between(Quantity low, Quantity high, GuardStatement.Between written) {
    if (low.value().compareTo(high.value()) >= 0) {
      throw problem(
          Problem.Kind.VALUE,
          "The smaller of the two limits comes first.",
          written.high(),
          List.of(
              "between %s and %s"
                  .formatted(Printer.print(written.high()), Printer.print(written.low()))));
    }
    return new Range(
        low.value(),
        high.value(),
        new GuardResult.Between(shown(written.low()), shown(written.high())));
  }

  private Range about(GuardStatement.About about) {
    Quantity middle = limit(about.middle());
    BigDecimal margin = margin(middle, about);
    if (margin.signum() <= 0) {
      throw problem(
          Problem.Kind.VALUE,
          "How far it may be off is more than zero.",
          about.within(),
          List.of("within 10 %"));
    }
    return new Range(
        middle.value().subtract(margin),
        middle.value().add(margin),
        new GuardResult.Around(shown(about.middle()), shown(about.within())));
  }

  /** A share of the middle, or an amount of its kind; of a scale reading only an amount. */
  private BigDecimal margin(Quantity middle, GuardStatement.About about) {
    Quantity within = showing.value(about.within());
    boolean perCent = within.displayUnit().text().equals(PER_CENT);
    boolean share = within.kind().isNumber() && (perCent || !middle.kind().isNumber());
    if (share && middle.isReading()) {
      throw problem(
          Problem.Kind.UNIT,
          "A share of a reading of a temperature scale has no meaning.",
          about.within(),
          List.of("within 2 K"));
    }
    if (share) {
      return middle.value().abs().multiply(within.value(), MathContext.DECIMAL128);
    }
    refuseOtherKind(within, about.within());
    return within.isReading()
        ? within.minus(Quantity.exact(BigDecimal.ZERO, within.displayUnit())).value()
        : within.value();
  }

  /** A limit, which is of the kind of the value. */
  private Quantity limit(Expr expr) {
    Quantity limit = showing.value(expr);
    refuseOtherKind(limit, expr);
    return limit;
  }

  private void refuseOtherKind(Quantity limit, Expr expr) {
    if (limit.kind().equals(value.kind())) {
      return;
    }
    String unit = value.displayUnit().text();
    String sentence =
        limit.kind().isNumber()
            ? "Here belongs %s; %s is a plain number."
                .formatted(showing.words(value.kind(), expr.span()), Printer.print(expr))
            : "%s is %s, and %s is %s: they cannot be compared."
                .formatted(
                    Printer.print(expected.value()),
                    showing.words(value.kind(), expr.span()),
                    Printer.print(expr),
                    showing.words(limit.kind(), expr.span()));
    List<String> repairs =
        unit.isEmpty() ? List.of("a plain number") : List.of("a value in " + unit);
    throw problem(Problem.Kind.UNIT, sentence, expr, repairs);
  }

  private Shown shown(Expr expr) {
    Quantity limit = showing.value(expr);
    Shown shown = showing.shown(limit, Format.USUAL, expr.span());
    return limit.unit().isPresent() ? shown : PrefixedForm.of(shown).orElse(shown);
  }

  private ProblemException problem(
      Problem.Kind kind, String sentence, Expr at, List<String> repairs) {
    return showing.problem(kind, sentence, at.span(), repairs);
  }
}
