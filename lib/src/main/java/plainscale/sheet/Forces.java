package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Acting;
import plainscale.notation.Direction;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.ElementaryFunction;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** The forces on a body with the values of one wave. */
final class Forces {
  private static final UnitOfMeasure NEWTON = UnitParser.parse("N");
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");
  private static final Kind MASS = UnitParser.parse("kg").kind();

  private final Wave wave;
  private final String source;

  /** Of statements that stand in {@code source}. */
  Forces(Wave wave, String source) {
    this.wave = wave;
    this.source = source;
  }

  /** The force diagram of one body. */
  BodyForces on(Statement.Forces statement) {
    return statement.mirrors().isPresent()
        ? image(statement, statement.mirrors().get())
        : written(statement);
  }

  private BodyForces image(Statement.Forces image, Statement.Option other) {
    Entry entry = wave.entry(Bodies.key(other.text())).orElse(null);
    if (entry != null) {
      Blanks.refuse(entry);
    }
    if (entry == null || !(entry.statement() instanceof Statement.Forces original)) {
      String sentence = "This sheet declares no forces on “%s”.".formatted(other.text());
      List<String> repairs = List.of("forces on \"" + other.text() + "\": …");
      throw new ProblemException(
          new Problem(Problem.Kind.NAME, sentence, source, other.span(), repairs));
    }
    if (original.mirrors().isPresent()) {
      String sentence = "“%s” is a mirror image itself.".formatted(other.text());
      List<String> repairs = List.of("\"" + original.mirrors().get().text() + "\"");
      throw new ProblemException(
          new Problem(Problem.Kind.NAME, sentence, source, other.span(), repairs));
    }
    return new Forces(wave, entry.source()).written(Mirror.of(image, original));
  }

  private BodyForces written(Statement.Forces statement) {
    List<BodyForces.Force> forces = new ArrayList<>();
    List<Quantity> sizes = statement.acting().stream().map(this::size).toList();
    UnitOfMeasure unit = unit(sizes);
    Quantity slope = statement.onSlope().map(this::slope).orElse(null);
    for (int i = 0; i < sizes.size(); i++) {
      forces.add(force(statement.acting().get(i), sizes.get(i).in(unit), slope, unit));
    }
    BodyForces.Net net = Resultant.of(forces);
    return new BodyForces(
        statement.body().text(), slope, forces, in(net, unit), statement.edition());
  }

  private static BodyForces.Net in(BodyForces.Net net, UnitOfMeasure unit) {
    return new BodyForces.Net(
        net.across().in(unit),
        net.up().in(unit),
        net.onSlope().map(s -> in(s, unit)).orElse(null),
        net.size().in(unit),
        net.direction(),
        net.balance());
  }

  private static BodyForces.OnSlope in(BodyForces.OnSlope slope, UnitOfMeasure unit) {
    return new BodyForces.OnSlope(slope.uphill().in(unit), slope.away().in(unit));
  }

  private Quantity size(Acting acting) {
    Quantity size = wave.evaluate(acting.size(), source);
    if (!size.kind().equals(NEWTON.kind())) {
      String sentence =
          "“%s” needs a force as its size; %s is %s."
              .formatted(
                  acting.label(),
                  Printer.print(acting.size()),
                  Kinds.of(size.kind()).withArticle());
      throw problem(sentence, acting.size().span(), repairs(acting, size));
    }
    return size;
  }

  private List<String> repairs(Acting acting, Quantity size) {
    List<String> repairs = new ArrayList<>();
    if (size.kind().equals(MASS)) {
      repairs.add(acting.label() + " " + Printer.print(acting.size()) + " g_n");
    }
    if (size.kind().isNumber()) {
      repairs.add(acting.label() + " " + Printer.print(acting.size()) + " [N]");
    }
    if (wave.has(acting.label())) {
      repairs.add("write what the force is called before its size: pull " + acting.label());
    }
    List<String> alike = wave.ofKind(NEWTON.kind());
    if (repairs.isEmpty() && !alike.isEmpty()) {
      repairs.add("forces of this sheet: " + String.join(", ", alike));
    }
    return repairs;
  }

  /** The unit that all were written in, else the one in which the largest reads best. */
  private static UnitOfMeasure unit(List<Quantity> sizes) {
    List<UnitOfMeasure> own =
        sizes.stream().flatMap(size -> size.unit().stream()).distinct().toList();
    if (own.size() == 1) {
      return own.get(0);
    }
    return sizes.stream()
        .max(Comparator.comparing((Quantity size) -> size.value().abs()))
        .map(largest -> largest.in(NEWTON).shown())
        .map(shown -> PrefixedForm.of(shown).orElse(shown).unit())
        .orElse(NEWTON);
  }

  private BodyForces.Force force(
      Acting acting, Quantity size, @Nullable Quantity slope, UnitOfMeasure unit) {
    Direction towards = acting.pointing() instanceof Acting.Towards word ? word.direction() : null;
    Quantity angle =
        acting.pointing() instanceof Acting.Along along
            ? angle(along.angle(), "along")
            : angle(towards, slope);
    return new BodyForces.Force(
        acting.label(),
        acting.size(),
        size,
        angle,
        towards,
        component(size, angle, ElementaryFunction.COS, unit),
        component(size, angle, ElementaryFunction.SIN, unit),
        slope == null ? null : onSlope(size, turned(angle, slope), unit),
        acting.by());
  }

  private static BodyForces.OnSlope onSlope(Quantity size, Quantity angle, UnitOfMeasure unit) {
    return new BodyForces.OnSlope(
        component(size, angle, ElementaryFunction.COS, unit),
        component(size, angle, ElementaryFunction.SIN, unit));
  }

  /** The angle of a force from the way up a slope; anticlockwise if that goes to the right. */
  private static Quantity turned(Quantity angle, Quantity slope) {
    return risesToTheLeft(slope) ? slope.minus(angle) : angle.minus(slope);
  }

  private static boolean risesToTheLeft(Quantity slope) {
    return Math.cos(slope.value().doubleValue()) < 0;
  }

  /** The angle of a direction that has a word. */
  private static Quantity angle(@Nullable Direction towards, @Nullable Quantity slope) {
    int degrees = towards == null ? 0 : towards.degrees();
    if (slope == null || towards == null || !towards.isOnSlope()) {
      return Quantity.exact(BigDecimal.valueOf(degrees), DEGREE);
    }
    int turned = risesToTheLeft(slope) ? -degrees : degrees;
    return slope.plus(Quantity.exact(BigDecimal.valueOf(turned), DEGREE));
  }

  private Quantity slope(Expr expr) {
    return angle(expr, "slope");
  }

  private Quantity angle(Expr expr, String word) {
    Quantity angle = wave.evaluate(expr, source);
    if (!angle.kind().angle()) {
      boolean number = angle.kind().isNumber();
      String text = Printer.print(expr);
      boolean literal = expr instanceof Expr.Literal;
      String sentence =
          "“%s” takes an angle, and this is %s."
              .formatted(word, Kinds.of(angle.kind()).withArticle());
      List<String> repairs =
          !number
              ? List.of(word + " 30°")
              : literal
                  ? List.of(word + " " + text + "°", word + " " + text + " [rad]")
                  : List.of(word + " (" + text + ") [°]", word + " (" + text + ") [rad]");
      throw problem(sentence, expr.span(), repairs);
    }
    return angle.in(DEGREE);
  }

  /** A component that is zero by its direction is exactly zero, whatever the figures are. */
  private static Quantity component(
      Quantity size, Quantity angle, ElementaryFunction function, UnitOfMeasure unit) {
    Quantity part = size.times(angle.apply(function));
    return part.value().signum() == 0 && size.value().signum() != 0
        ? Quantity.estimated(BigDecimal.ZERO, part.uncertainty(), NEWTON).in(unit)
        : part.in(unit);
  }

  private ProblemException problem(String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(Problem.Kind.UNIT, sentence, source, span, repairs));
  }
}
