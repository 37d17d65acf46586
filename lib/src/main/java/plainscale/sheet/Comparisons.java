package plainscale.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Evaluator;
import plainscale.magnitude.Expansion;
import plainscale.magnitude.Landmark;
import plainscale.magnitude.Landmarks;
import plainscale.magnitude.Perspective;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Writing;
import plainscale.notation.Expr;
import plainscale.notation.Format;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.ScalePicture;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** Numbers beside other numbers: contrasts, landmarks, pictures of scale; and the way to digits. */
final class Comparisons {
  private static final int EXACT_RATIO = 3;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final int LANDMARKS_EACH = 2;
  private static final int NEIGHBOUR_FIGURES = 2;
  private static final int LANDMARK_FIGURES = 3;
  private static final BigDecimal EVERYDAY = BigDecimal.TEN.pow(4);
  private static final int LANDMARKS_ON_A_RULER = 6;

  /** Beyond this factor squares within squares would fill pages. */
  private static final BigDecimal MOST_NESTED = BigDecimal.TEN.pow(60);

  private final Showing showing;

  Comparisons(Showing showing) {
    this.showing = showing;
  }

  Result contrast(Statement.Contrast contrast) {
    List<Quantity> values = values(contrast.sides(), contrast.span());
    Format format = inOneUnit(contrast.format(), values);
    List<Result.Side> sides = sides(contrast.sides(), values, format);
    Quantity quotient = at(contrast.span(), () -> quotient(values));
    Shown times = times(quotient, format);
    Perspective line = line(contrast, pictured(values, sides, quotient, times));
    return new Result.Contrasted(
        contrast.description(),
        sides,
        times,
        ratio(sides, times),
        line,
        remarks(contrast, sides, times, line),
        showing.writing(format));
  }

  /** What the line of perspective is about: the largest of counts, else the ratio. */
  private static Pictured pictured(
      List<Quantity> values, List<Result.Side> sides, Quantity quotient, Shown times) {
    return values.get(0).kind().isNumber()
        ? new Pictured(largest(values).value(), largestOf(sides).precision())
        : new Pictured(quotient.value(), times.value().precision());
  }

  /** A number that is not rounded yet, and how many figures it has. */
  private record Pictured(BigDecimal number, int figures) {}

  private static Set<Result.Contrasted.Remark> remarks(
      Statement.Contrast contrast,
      List<Result.Side> sides,
      Shown times,
      @Nullable Perspective line) {
    Set<Result.Contrasted.Remark> remarks = EnumSet.noneOf(Result.Contrasted.Remark.class);
    if (sides.stream().anyMatch(side -> side.shown().value().signum() < 0)) {
      remarks.add(Result.Contrasted.Remark.SIZES);
    }
    BigDecimal doubt = times.uncertainty().orElse(BigDecimal.ZERO).multiply(TWO);
    if (doubt.compareTo(times.value()) >= 0) {
      remarks.add(Result.Contrasted.Remark.UNCERTAIN);
    } else if (doubt.signum() > 0 && times.value().subtract(BigDecimal.ONE).compareTo(doubt) <= 0) {
      remarks.add(Result.Contrasted.Remark.EQUAL);
    }
    if (contrast.rule().isPresent() && line == null) {
      remarks.add(Result.Contrasted.Remark.RULE);
    }
    return remarks;
  }

  private static Ratio ratio(List<Result.Side> sides, Shown times) {
    return new Ratio(largestOf(sides), smallestOf(sides), times.value());
  }

  private <T> T at(Span span, java.util.function.Supplier<T> operation) {
    return Evaluator.at(showing.source(), span, operation);
  }

  /** The values, if they are all of one kind and none is zero. */
  private List<Quantity> values(List<Expr> sides, Span span) {
    List<Quantity> values = new ArrayList<>();
    for (Expr side : sides) {
      Quantity value = showing.value(side);
      at(span, () -> Kinds.of(value.kind()));
      values.add(value);
      refuseOtherKind(values.get(0), value, side);
      refuseZero(value, side);
    }
    return values;
  }

  private void refuseOtherKind(Quantity first, Quantity other, Expr place) {
    if (!first.kind().equals(other.kind())) {
      String sentence =
          "Only quantities of one kind can be set beside each other; here are %s and %s."
              .formatted(
                  Kinds.of(first.kind()).withArticle(), Kinds.of(other.kind()).withArticle());
      String repair = "compare it with %s".formatted(Kinds.of(first.kind()).withArticle());
      throw showing.problem(Problem.Kind.UNIT, sentence, place.span(), List.of(repair));
    }
  }

  private void refuseZero(Quantity value, Expr place) {
    if (value.value().signum() == 0) {
      String sentence = "This is zero; nothing can be so many times zero.";
      throw showing.problem(Problem.Kind.VALUE, sentence, place.span(), List.of());
    }
  }

  /**
   * All sides in one unit: the one asked for, the one that all are written in, or the SI unit of
   * their kind.
   */
  private static Format inOneUnit(Format format, List<Quantity> values) {
    Quantity first = values.get(0);
    if (first.kind().isNumber() && format.unit().isEmpty()) {
      return format.with(UnitOfMeasure.ONE); // 3 % and 50 % are compared as numbers
    }
    Optional<UnitOfMeasure> common =
        first
            .unit()
            .filter(unit -> !unit.isScale())
            .filter(unit -> values.stream().allMatch(v -> v.unit().equals(first.unit())));
    return format.with(
        format.unit().or(() -> common).orElseGet(() -> Kinds.of(first.kind()).unit()));
  }

  private List<Result.Side> sides(List<Expr> exprs, List<Quantity> values, Format format) {
    List<Result.Side> sides = new ArrayList<>();
    for (int i = 0; i < exprs.size(); i++) {
      Expr expr = exprs.get(i);
      Shown shown = showing.written(values.get(i), format, expr.span());
      if (shown.value().signum() == 0) {
        String sentence = "To the figures that it keeps this is zero; it cannot be compared.";
        throw showing.problem(Problem.Kind.VALUE, sentence, expr.span(), List.of());
      }
      sides.add(
          new Result.Side(showing.label(expr, ""), shown, Showing.isExact(values.get(i), shown)));
    }
    return sides;
  }

  /** From the unrounded values, since rounding is done once. */
  private static Quantity quotient(List<Quantity> values) {
    return largest(values).over(smallest(values));
  }

  private static Quantity largest(List<Quantity> values) {
    return values.stream()
        .map(Comparisons::size)
        .max(Comparator.comparing(Quantity::value))
        .orElseThrow();
  }

  private static Quantity smallest(List<Quantity> values) {
    return values.stream()
        .map(Comparisons::size)
        .min(Comparator.comparing(Quantity::value))
        .orElseThrow();
  }

  /** Of exact numbers the ratio is exact if it is short, else three figures are enough. */
  private static Shown times(Quantity quotient, Format format) {
    if (format.figures() > 0) {
      return quotient.shown(format.figures());
    }
    Shown shown = quotient.shown();
    boolean exact = quotient.figures().exact() && quotient.uncertainty().derivatives().isEmpty();
    boolean brief = shown.value().stripTrailingZeros().precision() <= EXACT_RATIO;
    return exact && !brief ? quotient.shown(EXACT_RATIO) : shown;
  }

  private static Quantity size(Quantity value) {
    return value.in(Kinds.of(value.kind()).unit()).apply(ElementaryFunction.ABS);
  }

  private static BigDecimal largestOf(List<Result.Side> sides) {
    return sides.stream()
        .map(s -> s.shown().value().abs())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static BigDecimal smallestOf(List<Result.Side> sides) {
    return sides.stream()
        .map(s -> s.shown().value().abs())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** The line by the rule that was asked for, else by the first that fits. */
  private @Nullable Perspective line(Statement.Contrast contrast, Pictured pictured) {
    Optional<Perspective> line =
        contrast
            .rule()
            .map(o -> Perspective.of(pictured.number(), pictured.figures(), rule(o, pictured)))
            .orElseGet(() -> Perspective.of(pictured.number(), pictured.figures()));
    return line.orElse(null);
  }

  private Perspective.Rule rule(Statement.Option option, Pictured pictured) {
    return Arrays.stream(Perspective.Rule.values())
        .filter(rule -> word(rule).equals(option.text()))
        .findFirst()
        .orElseThrow(() -> noRule(option, pictured));
  }

  private ProblemException noRule(Statement.Option option, Pictured pictured) {
    List<String> repairs =
        Arrays.stream(Perspective.Rule.values())
            .filter(rule -> Perspective.of(pictured.number(), 1, rule).isPresent())
            .map(rule -> "by " + word(rule))
            .toList();
    String sentence = "I know no rule of perspective “%s”.".formatted(option.text());
    return showing.problem(Problem.Kind.NAME, sentence, option.span(), repairs);
  }

  private static String word(Perspective.Rule rule) {
    return rule.name().toLowerCase(Locale.ROOT);
  }

  Result near(Statement.Near near) {
    Quantity value = showing.value(near.value());
    Result.Side side = described(near.value(), near.format(), near.description());
    Span place = near.value().span();
    Landmarks.Neighbours found = at(place, () -> neighbours(value, LANDMARKS_EACH));
    if (found.below().isEmpty() && found.above().isEmpty()) {
      throw showing.problem(Problem.Kind.VALUE, nothingNear(value), place, List.of());
    }
    UnitOfMeasure unit = side.shown().unit();
    return new Result.Placed(
        side,
        found.below().stream().map(l -> neighbour(l, value, unit)).toList(),
        found.above().stream().map(l -> neighbour(l, value, unit)).toList(),
        showing.writing(near.format()));
  }

  private static String nothingNear(Quantity value) {
    return value.value().signum() == 0
        ? "Nothing is near zero by a factor."
        : "I have no landmarks for %s.".formatted(Kinds.of(value.kind()).withArticle());
  }

  private static Result.Neighbour neighbour(Landmark landmark, Quantity value, UnitOfMeasure unit) {
    Ratio ratio = Ratio.of(landmark.value(), coherent(value), NEIGHBOUR_FIGURES);
    return new Result.Neighbour(side(landmark, unit), ratio, landmark);
  }

  /** The landmark in a unit, to three figures at most: it is there to be pictured. */
  private static Result.Side side(Landmark landmark, UnitOfMeasure unit) {
    int figures = Math.min(LANDMARK_FIGURES, landmark.value().precision());
    MathContext known = new MathContext(figures, RoundingMode.HALF_EVEN);
    BigDecimal value = unit.fromCoherent(landmark.value()).round(known);
    Result.Label label = new Result.Label(Optional.empty(), Optional.empty(), landmark.name());
    return new Result.Side(label, new Shown(plain(value), null, unit), false);
  }

  /** 10 mm, not 1 × 10¹ mm: a landmark of everyday size is written out. */
  private static BigDecimal plain(BigDecimal value) {
    boolean everyday = value.scale() < 0 && value.compareTo(EVERYDAY) < 0;
    return everyday ? value.setScale(0) : value;
  }

  private Result.Side described(Expr expr, Format format, String description) {
    Result.Side side = showing.side(expr, format);
    return description.isEmpty()
        ? side
        : new Result.Side(showing.label(expr, description), side.shown(), side.exact());
  }

  private static Landmarks.Neighbours neighbours(Quantity value, int each) {
    return Landmarks.near(Kinds.of(value.kind()).name(), coherent(value), each);
  }

  private static BigDecimal coherent(Quantity value) {
    return Kinds.of(value.kind()).unit().fromCoherent(value.value());
  }

  Result expand(Statement.Expand expand) {
    Result.Side side = described(expand.value(), expand.format(), expand.description());
    try {
      Writing writing = showing.writing(expand.format());
      Expansion expansion = Expansion.of(side.shown().value(), writing);
      return new Result.Expanded(side, expansion, expand.boxes(), writing);
    } catch (IllegalArgumentException tooLong) {
      String sentence = String.valueOf(tooLong.getMessage());
      throw showing.problem(Problem.Kind.LIMIT, sentence, expand.value().span(), List.of());
    }
  }

  Result picture(Statement.Picture picture) {
    refuseOtherNumber(picture);
    List<Quantity> values = values(picture.sides(), picture.span());
    Format format = inOneUnit(picture.format(), values);
    List<Result.Side> sides = sides(picture.sides(), values, format);
    Shown times = times(at(picture.span(), () -> quotient(values)), format);
    if (picture.drawing() == ScalePicture.SQUARES) {
      refuseTooFar(picture, sides);
    }
    UnitOfMeasure unit = sides.get(0).shown().unit();
    List<Result.Side> landmarks =
        picture.drawing() == ScalePicture.RULER
            ? landmarks(values).stream().map(l -> side(l, unit)).toList()
            : List.of();
    return new Result.Pictured(
        picture.drawing(),
        picture.description(),
        sides,
        landmarks,
        sides.size() > 1 ? ratio(sides, times) : null,
        showing.writing(format));
  }

  private void refuseOtherNumber(Statement.Picture picture) {
    ScalePicture drawing = picture.drawing();
    int count = picture.sides().size();
    if (count < drawing.fewest() || count > drawing.most()) {
      String word = drawing.name().toLowerCase(Locale.ROOT);
      String numbers =
          drawing.fewest() == drawing.most()
              ? drawing.most() + " quantities"
              : "from " + drawing.fewest() + " to " + drawing.most() + " quantities";
      String first = Printer.print(picture.sides().get(0));
      String repair = word + " " + first + (drawing.fewest() > 1 ? " with …" : "");
      throw showing.problem(
          Problem.Kind.SYNTAX,
          "“%s” shows %s.".formatted(word, numbers),
          picture.span(),
          List.of(repair));
    }
  }

  private void refuseTooFar(Statement.Picture picture, List<Result.Side> sides) {
    if (Ratio.of(largestOf(sides), smallestOf(sides), 1).value().compareTo(MOST_NESTED) > 0) {
      String sentence = "The two are too far apart for squares within squares.";
      String repair =
          "ruler %s with %s"
              .formatted(
                  Printer.print(picture.sides().get(0)), Printer.print(picture.sides().get(1)));
      throw showing.problem(Problem.Kind.LIMIT, sentence, picture.span(), List.of(repair));
    }
  }

  /** The landmarks next to each of the values, as many as a ruler has room for. */
  private static List<Landmark> landmarks(List<Quantity> values) {
    Set<Landmark> landmarks = new LinkedHashSet<>();
    for (Quantity value : values) {
      Landmarks.Neighbours neighbours = neighbours(value, 1);
      landmarks.addAll(neighbours.below());
      landmarks.addAll(neighbours.above());
    }
    return landmarks.stream().limit(LANDMARKS_ON_A_RULER).toList();
  }
}
