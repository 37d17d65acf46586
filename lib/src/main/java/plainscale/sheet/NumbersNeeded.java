package plainscale.sheet;

import java.util.Set;
import java.util.TreeSet;
import plainscale.notation.Expr;
import plainscale.notation.ProblemException;
import plainscale.notation.Rewriting;
import plainscale.units.UnitOfMeasure;

/**
 * What makes an answer one for numbers only: readings in °C, exponents that have a name, and angles
 * that are written out in a product, as in {@code cos(360 [°] t/T)}.
 */
final class NumbersNeeded extends Rewriting {
  private final Wave wave;
  private final Set<String> readings = new TreeSet<>();
  private boolean found;

  private NumbersNeeded(Wave wave) {
    this.wave = wave;
  }

  static boolean in(Expr expr, Wave wave) {
    NumbersNeeded look = new NumbersNeeded(wave);
    expr.accept(look);
    return look.found;
  }

  /** The names in an expression that stand for readings of a temperature scale. */
  static Set<String> readings(Expr expr, Wave wave) {
    NumbersNeeded look = new NumbersNeeded(wave);
    expr.accept(look);
    return look.readings;
  }

  @Override
  public Expr literal(Expr.Literal literal) {
    found |= literal.unit().filter(NumbersNeeded::isSpecial).isPresent();
    return literal;
  }

  @Override
  public Expr inUnits(Expr.InUnits inUnits) {
    found |= isSpecial(inUnits.unit());
    return super.inUnits(inUnits);
  }

  private static boolean isSpecial(UnitOfMeasure unit) {
    return unit.isScale() || unit.kind().angle();
  }

  @Override
  public Expr name(Expr.Name name) {
    if (isReading(name)) {
      found = true;
      readings.add(name.text());
    }
    return name;
  }

  private boolean isReading(Expr.Name name) {
    try {
      return wave.has(name.text()) && wave.value(name, "").isReading();
    } catch (ProblemException noValue) {
      return false;
    }
  }

  @Override
  public Expr binary(Expr.Binary binary) {
    found |= binary.operator() == Expr.Operator.POWER && References.hasNames(binary.right());
    return super.binary(binary);
  }
}
