package plainscale.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import plainscale.algebra.Evaluator;
import plainscale.laws.Constant;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** The values of one cell's source in one wave, and how they are labelled and rounded. */
record Showing(String source, Wave wave, SheetNames names, Settings settings) {

  Quantity value(Expr expr) {
    return wave.evaluate(expr, source);
  }

  /** The same in another wave. */
  Showing with(Wave other) {
    return new Showing(source, other, names, settings);
  }

  Writing writing() {
    return settings.writing();
  }

  /** Rounded as the format asks, else to the figures that the value keeps. */
  Shown shown(Quantity value, Format format, Span span) {
    return Evaluator.at(
        source,
        span,
        () -> {
          Quantity inUnit = format.unit().map(value::in).orElse(value);
          return format.figures() > 0 ? inUnit.shown(format.figures()) : inUnit.shown();
        });
  }

  /** A number in a form other than the usual one. */
  Result.Numeral number(Quantity value, Format format, Span span) {
    refuseWithoutForm(value, format.style(), span);
    Shown shown = written(value, suited(format), span);
    Writing chosen = writing(format);
    return new Result.Numeral(
        shown,
        shown.unit().fromCoherent(value.value()),
        isExact(value, shown),
        format.figures(),
        format.style(),
        chosen);
  }

  /** What rounds by itself starts from all figures; a share is of one, not of a hundred. */
  private static Format suited(Format format) {
    return switch (format.style()) {
      case ROUGHLY -> format.to(0);
      case PARTS -> format.with(UnitOfMeasure.ONE);
      default -> format;
    };
  }

  /** How numbers are written where a language or a scale was asked for. */
  Writing writing(Format format) {
    return Settings.chosen(writing(), format.wording(), source);
  }

  private void refuseWithoutForm(Quantity value, Format.Style style, Span span) {
    boolean share = value.kind().isNumber() && value.value().signum() > 0;
    if (style == Format.Style.PARTS && !share) {
      String sentence = "Only a plain number above zero can be said as a share.";
      List<String> repairs = List.of("divide it by the whole, which is of the same kind");
      throw problem(Problem.Kind.UNIT, sentence, span, repairs);
    }
    if (style == Format.Style.ORDERS && value.value().signum() == 0) {
      String sentence = "Zero has no order of magnitude.";
      throw problem(Problem.Kind.VALUE, sentence, span, List.of());
    }
  }

  /** A name is labelled by what the sheet says of it; a formula stands for itself. */
  Result.Label label(Expr value, String description) {
    if (value instanceof Expr.Name name) {
      String words = description.isEmpty() ? meaning(name.text()) : description;
      return new Result.Label(Optional.of(name.text()), Optional.empty(), words);
    }
    Optional<Expr> formula =
        Optional.of(value).filter(References::hasNames); // 2 + 3 needs no label
    return new Result.Label(Optional.empty(), formula, description);
  }

  private String meaning(String name) {
    Entry entry = names.entries().get(name);
    return entry != null
        ? entry.description()
        : names.constants().find(name).map(Constant::meaning).orElse("");
  }

  /**
   * A labelled value in the unit of the format, else its own, else the one that reads best; a share
   * as a number, a temperature in kelvins, since factors have no meaning else.
   */
  Result.Side side(Expr expr, Format format) {
    Quantity value = value(expr);
    Shown plain = written(value, inUnit(format, value), expr.span());
    boolean chosen =
        !value.kind().isNumber() && (format.unit().isPresent() || value.unit().isPresent());
    Shown shown = chosen ? plain : PrefixedForm.of(plain).orElse(plain);
    return new Result.Side(label(expr, ""), shown, isExact(value, shown));
  }

  /** As {@link #shown}, but an exact whole number has all its zeros as figures. */
  Shown written(Quantity value, Format format, Span span) {
    Shown shown = shown(value, format, span);
    if (shown.uncertainty().isPresent()) {
      return toThePlaceOfDoubt(shown);
    }
    boolean zeros = shown.value().scale() < 0 && isExact(value, shown);
    return zeros ? new Shown(shown.value().setScale(0), null, shown.unit()) : shown;
  }

  /** 96 400 ± 1300 has three figures, though it is written with five digits. */
  private static Shown toThePlaceOfDoubt(Shown shown) {
    BigDecimal doubt = shown.uncertainty().orElseThrow().stripTrailingZeros();
    BigDecimal kept = shown.value().setScale(doubt.scale(), RoundingMode.HALF_EVEN);
    boolean same = kept.compareTo(shown.value()) == 0 && kept.scale() < shown.value().scale();
    return same ? new Shown(kept, doubt, shown.unit()) : shown;
  }

  /**
   * Whether all digits of a written number count: it is an exact whole number, was not rounded, and
   * was not written with a power of ten, which says how many figures are meant.
   */
  static boolean isExact(Quantity value, Shown shown) {
    boolean whole = shown.value().stripTrailingZeros().scale() <= 0;
    boolean writtenOut = shown.value().scale() >= 0 || value.value().scale() >= 0;
    return whole
        && writtenOut
        && value.figures().exact()
        && value.uncertainty().derivatives().isEmpty()
        && shown.value().compareTo(shown.unit().fromCoherent(value.value())) == 0;
  }

  private Format inUnit(Format format, Quantity value) {
    boolean own = value.unit().isPresent() && !value.isReading() && !value.kind().isNumber();
    return format.unit().isPresent() || own ? format : format.with(unitOf(value));
  }

  private static UnitOfMeasure unitOf(Quantity value) {
    return Kinds.of(value.kind()).unit();
  }

  /** Whether a source of uncertainty is a constant of nature. */
  boolean isConstant(String source) {
    return !names.isDefined(source) && names.constants().has(source);
  }

  /** "a length"; a kind with broken exponents has no words, which is told at the place. */
  String words(Kind kind, Span span) {
    return Evaluator.at(source, span, () -> Kinds.of(kind).withArticle());
  }

  ProblemException problem(Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
