package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.algebra.Evaluator;
import plainscale.laws.Constant;
import plainscale.magnitude.Ratio;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** Turns the statements of one cell into results, with the values of one wave. */
final class Presenter implements Statement.Visitor<Result> {
  private static final int EXACT_RATIO = 3;

  private final String cellId;
  private final String source;
  private final Wave wave;
  private final SheetNames names;

  Presenter(String cellId, String source, Wave wave, SheetNames names) {
    this.cellId = cellId;
    this.source = source;
    this.wave = wave;
    this.names = names;
  }

  /** A line whose name has found another definition since. */
  private Optional<Result> overtaken(String name) {
    Entry entry = names.entries().get(name);
    return entry == null || entry.cellId().equals(cellId)
        ? Optional.empty()
        : Optional.of(
            new Result.Noted(
                "“" + name + "” is defined in another cell now; this line no longer counts."));
  }

  @Override
  public Result given(Statement.Given given) {
    return overtaken(given.name()).orElseGet(() -> valued(given));
  }

  private Result valued(Statement.Given given) {
    Quantity value = wave.evaluate(new Expr.Name(given.span(), given.name()), source);
    Result.Label label =
        new Result.Label(Optional.of(given.name()), Optional.empty(), given.description());
    return new Result.Valued(Result.Role.GIVEN, label, value, value.shown(), null);
  }

  @Override
  public Result definition(Statement.Definition definition) {
    return overtaken(definition.name()).orElseGet(() -> valued(definition));
  }

  private Result valued(Statement.Definition definition) {
    Quantity value = wave.evaluate(new Expr.Name(definition.span(), definition.name()), source);
    Optional<Expr> formula =
        Optional.of(definition.formula())
            .filter(f -> !(f instanceof Expr.Literal)); // the value says it
    Result.Label label =
        new Result.Label(Optional.of(definition.name()), formula, definition.description());
    return valued(Result.Role.DEFINED, label, value, definition.format(), definition.span());
  }

  @Override
  public Result show(Statement.Show show) {
    Quantity value = wave.evaluate(show.value(), source);
    Result.Role role = show.bare() ? Result.Role.VALUE : Result.Role.SHOWN;
    return valued(role, label(show.value(), show.description()), value, show.format(), show.span());
  }

  private Result valued(
      Result.Role role, Result.Label label, Quantity value, Format format, Span span) {
    Shown shown = shown(value, format, span);
    if (format.style() != Format.Style.NUMBER) {
      return new Result.Written(label, shown, format.style());
    }
    boolean asked = format.unit().isPresent() || value.unit().isPresent();
    return new Result.Valued(
        role, label, value, shown, asked ? null : PrefixedForm.of(shown).orElse(null));
  }

  private Shown shown(Quantity value, Format format, Span span) {
    return Evaluator.at(
        source,
        span,
        () -> {
          Quantity inUnit = format.unit().map(value::in).orElse(value);
          return format.figures() > 0 ? inUnit.shown(format.figures()) : inUnit.shown();
        });
  }

  /** A name is labelled by what the sheet says of it; a formula stands for itself. */
  private Result.Label label(Expr value, String description) {
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

  @Override
  public Result say(Statement.Say say) {
    List<Result.Piece> pieces = new ArrayList<>();
    for (Statement.Part part : say.parts()) {
      pieces.add(
          part instanceof Statement.Text text
              ? new Result.Words(text.text())
              : live((Statement.Value) part));
    }
    return new Result.Narrated(pieces);
  }

  private Result.Live live(Statement.Value part) {
    Quantity value = wave.evaluate(part.value(), source);
    return new Result.Live(shown(value, part.format(), part.value().span()), part.format().style());
  }

  @Override
  public Result contrast(Statement.Contrast contrast) {
    return Evaluator.at(source, contrast.span(), () -> contrasted(contrast));
  }

  private Result contrasted(Statement.Contrast contrast) {
    Quantity first = wave.evaluate(contrast.first(), source);
    Quantity second = wave.evaluate(contrast.second(), source);
    Format format =
        Evaluator.at(
            source,
            contrast.span(),
            () -> {
              refuseOtherKind(contrast, first, second);
              return inOneUnit(contrast.format(), first, second);
            });
    Result.Side one = side(contrast.first(), first, format);
    Result.Side other = side(contrast.second(), second, format);
    Shown times = Evaluator.at(source, contrast.span(), () -> times(first, second, format));
    Ratio ratio = new Ratio(larger(one, other), smaller(one, other), times.value());
    return new Result.Contrasted(contrast.description(), one, other, times, ratio);
  }

  /**
   * From the unrounded values, since rounding is done once; of exact numbers three figures are
   * enough.
   */
  private static Shown times(Quantity first, Quantity second, Format format) {
    Quantity one = first.in(Kinds.of(first.kind()).unit()).apply(ElementaryFunction.ABS);
    Quantity other = second.in(Kinds.of(second.kind()).unit()).apply(ElementaryFunction.ABS);
    boolean inOrder = one.value().compareTo(other.value()) >= 0;
    Quantity times = inOrder ? one.over(other) : other.over(one);
    boolean exact = times.figures().exact() && times.uncertainty().derivatives().isEmpty();
    if (format.figures() > 0 || exact) {
      return times.shown(format.figures() > 0 ? format.figures() : EXACT_RATIO);
    }
    return times.shown();
  }

  private static BigDecimal larger(Result.Side one, Result.Side other) {
    return one.shown().value().abs().max(other.shown().value().abs());
  }

  private static BigDecimal smaller(Result.Side one, Result.Side other) {
    return one.shown().value().abs().min(other.shown().value().abs());
  }

  /**
   * Both sides in one unit: the one asked for, the one that both are written in, or the SI unit of
   * their kind.
   */
  private static Format inOneUnit(Format format, Quantity first, Quantity second) {
    Optional<UnitOfMeasure> common =
        first.unit().filter(unit -> !unit.isScale() && second.unit().equals(first.unit()));
    UnitOfMeasure unit =
        format.unit().or(() -> common).orElseGet(() -> Kinds.of(first.kind()).unit());
    return new Format(unit, format.style(), format.figures());
  }

  private Result.Side side(Expr expr, Quantity value, Format format) {
    Shown shown = shown(value, format, expr.span());
    if (shown.value().signum() == 0) {
      throw problem(
          Problem.Kind.VALUE, "This is zero; nothing can be so many times zero.", expr.span());
    }
    return new Result.Side(label(expr, ""), shown);
  }

  private void refuseOtherKind(Statement.Contrast contrast, Quantity first, Quantity second) {
    if (!first.kind().equals(second.kind())) {
      String sentence =
          "A contrast sets two quantities of one kind against each other; here are %s and %s."
              .formatted(
                  Kinds.of(first.kind()).withArticle(), Kinds.of(second.kind()).withArticle());
      throw problem(Problem.Kind.UNIT, sentence, contrast.second().span());
    }
  }

  private ProblemException problem(Problem.Kind kind, String sentence, Span span) {
    return new ProblemException(new Problem(kind, sentence, source, span, List.of()));
  }

  @Override
  public Result constants(Statement.Constants chosen) {
    String words =
        chosen.set().equals("textbook")
            ? "Constants: the rounded values of school books, with their figures."
            : "Constants: CODATA 2022, with uncertainties.";
    return new Result.Noted(words);
  }

  @Override
  public Result unreadable(Statement.Unreadable unreadable) {
    return overtaken(unreadable.defines())
        .orElseGet(() -> new Result.Mistaken(unreadable.problem()));
  }
}
