package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import plainscale.field.Nature;
import plainscale.notation.Expr;
import plainscale.notation.FieldItem;
import plainscale.notation.FieldStatement;
import plainscale.notation.Place;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitParser;

/** The quantities in statements about fields, with their kinds checked. */
final class FieldValues {
  private static final Kind LENGTH = kind("m");
  private static final Kind SPEED = kind("m/s");
  private static final Kind CHARGE = kind("C");
  private static final Kind MASS = kind("kg");
  private static final Kind PER_AREA = kind("C/m^2");
  private static final Kind TIME = kind("s");

  private final Wave wave;
  private final String source;

  /** Of statements that stand in {@code source}. */
  FieldValues(Wave wave, String source) {
    this.wave = wave;
    this.source = source;
  }

  private static Kind kind(String unit) {
    return UnitParser.parse(unit).kind();
  }

  /** The field that a statement declares. */
  FieldModel model(FieldStatement.Declared declared) {
    List<FieldSource> sources = new ArrayList<>();
    Nature nature = null;
    for (FieldItem item : declared.items()) {
      FieldSource part = source(item);
      Nature its = part.amount().kind().equals(MASS) ? Nature.GRAVITATIONAL : Nature.ELECTRIC;
      if (nature != null && nature != its) {
        throw problem(
            Problem.Kind.UNIT,
            "A field is that of charges or that of masses; this one has both.",
            item.span(),
            List.of("declare two fields, one for the charges and one for the masses"));
      }
      nature = its;
      sources.add(part);
    }
    boolean masses = nature == Nature.GRAVITATIONAL;
    Quantity constant = masses ? wave.constant("G").negate() : wave.constant("k_e");
    return new FieldModel(masses ? Nature.GRAVITATIONAL : Nature.ELECTRIC, constant, sources);
  }

  private FieldSource source(FieldItem item) {
    Quantity amount = amount(item);
    Quantity size = item.extent().map(extent -> extent(item, extent)).orElse(null);
    FieldSource.Coordinates at = place(item.at());
    FieldSource.Coordinates to = item.end().map(this::place).orElse(null);
    if (to != null && to.place().equals(at.place())) {
      throw problem(
          Problem.Kind.VALUE,
          "This line of charge begins and ends at the same place.",
          item.span(),
          List.of("as a point: charge " + Printer.print(item.amount()) + " at …"));
    }
    return new FieldSource(item.shape(), amount, size, at, to, item.flat());
  }

  private Quantity amount(FieldItem item) {
    Quantity amount = wave.evaluate(item.amount(), source);
    List<Kind> allowed =
        switch (item.shape()) {
          case CHARGE -> List.of(CHARGE);
          case MASS -> List.of(MASS);
          case PLATES -> List.of(PER_AREA);
          case LINE, RING, DISC, SPHERE, SHELL -> List.of(CHARGE, MASS);
        };
    if (!allowed.contains(amount.kind())) {
      throw amountProblem(item, amount, allowed.get(0));
    }
    return amount;
  }

  private ProblemException amountProblem(FieldItem item, Quantity amount, Kind wanted) {
    List<String> repairs = new ArrayList<>();
    if (amount.kind().isNumber() && item.amount() instanceof Expr.Literal) {
      String unit = Kinds.of(wanted).unit().text();
      repairs.add(item.shape().word() + " " + Printer.print(item.amount()) + " " + unit);
    }
    wave.ofKind(wanted).forEach(name -> repairs.add(item.shape().word() + " " + name));
    if (repairs.isEmpty()) {
      repairs.add(item.shape().example());
    }
    return problem(
        Problem.Kind.UNIT,
        "“%s” needs %s; %s is %s."
            .formatted(
                item.shape().word(),
                Kinds.of(wanted).withArticle(),
                Printer.print(item.amount()),
                Kinds.of(amount.kind()).withArticle()),
        item.amount().span(),
        repairs.stream().limit(3).toList());
  }

  private Quantity extent(FieldItem item, Expr extent) {
    Quantity size = of(extent, LENGTH, "cm");
    if (size.value().signum() <= 0) {
      String what = item.shape() == FieldItem.Shape.PLATES ? "gap between plates" : "radius";
      throw problem(
          Problem.Kind.VALUE,
          "A %s is greater than zero; here it is %s %s."
              .formatted(
                  what,
                  size.shown().value().toPlainString().replace('-', '−'),
                  size.displayUnit().text()),
          extent.span(),
          List.of("give it a length above zero"));
    }
    return size;
  }

  FieldSource.Coordinates place(Place place) {
    return new FieldSource.Coordinates(of(place.x(), LENGTH, "cm"), of(place.y(), LENGTH, "cm"));
  }

  FieldSource.Coordinates velocity(Place velocity) {
    return new FieldSource.Coordinates(
        of(velocity.x(), SPEED, "m/s"), of(velocity.y(), SPEED, "m/s"));
  }

  Quantity charge(Expr charge) {
    return of(charge, CHARGE, "nC");
  }

  /** A mass above zero. */
  Quantity mass(Expr mass) {
    return positive(mass, of(mass, MASS, "g"), "The mass of what is released");
  }

  /** A time above zero. */
  Quantity time(Expr time) {
    return positive(time, of(time, TIME, "s"), "The time for which a body is followed");
  }

  private Quantity positive(Expr expr, Quantity value, String what) {
    if (value.value().signum() <= 0) {
      throw problem(Problem.Kind.VALUE, what + " is greater than zero.", expr.span(), List.of());
    }
    return value;
  }

  /** A value of a kind; a plain number gets the unit that may be missing as its repair. */
  private Quantity of(Expr expr, Kind wanted, String unit) {
    Quantity value = wave.evaluate(expr, source);
    if (value.kind().equals(wanted)) {
      return value;
    }
    String text = Printer.print(expr);
    boolean number = value.kind().isNumber();
    List<String> repairs =
        number
            ? List.of(
                expr instanceof Expr.Literal
                    ? text + " " + unit
                    : "(%s) [%s]".formatted(text, unit))
            : wave.ofKind(wanted).stream().limit(3).toList();
    throw problem(
        Problem.Kind.UNIT,
        "Here belongs %s; %s is %s."
            .formatted(Kinds.of(wanted).withArticle(), text, Kinds.of(value.kind()).withArticle()),
        expr.span(),
        repairs);
  }

  private ProblemException problem(
      Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
