package plainscale.algebra;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.notation.Expr;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Span;
import plainscale.quantity.Distribution;
import plainscale.quantity.Quantity;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;

/** A formula and the plain numbers that go into it. */
final class Model implements Formulas, Names {
  private final Map<String, Quantity> values = new LinkedHashMap<>();
  private final Map<String, Expr> formulas = new LinkedHashMap<>();

  /** An input whose ± is written as for a given. */
  Model with(String name, String value, String doubt, Distribution distribution) {
    Quantity.Estimate estimate =
        new Quantity.Estimate(
            name, new BigDecimal(value), new BigDecimal(doubt), UnitOfMeasure.ONE);
    values.put(name, Quantity.limited(estimate, distribution));
    return this;
  }

  /** A normal input. */
  Model with(String name, String value, String standard) {
    return with(name, value, standard, Distribution.NORMAL);
  }

  /** A name for a formula of what is there already. */
  Model defining(String name, String formula) {
    formulas.put(name, expression(formula));
    return this;
  }

  private Expr expression(String formula) {
    return Notation.parseExpression(formula, this).value();
  }

  Compiled compiled(String formula) {
    return Compiled.of(expression(formula), this);
  }

  /** The linear result. */
  Quantity linear(String formula) {
    return new Evaluator(formula, new Values(this), Budget.usual()).evaluate(expression(formula));
  }

  private record Values(Model model) implements Scope {
    @Override
    public Quantity value(Expr.Name name, String source) {
      Expr formula = model.formulas.get(name.text());
      return formula == null
          ? model.value(name.text())
          : new Evaluator("", this, Budget.usual()).evaluate(formula);
    }

    @Override
    public List<String> ofKind(Kind kind) {
      return List.of();
    }
  }

  /** What nobody waits for. */
  static Cost cost() {
    return new Cost(Budget.usual(), "", new Span(0, 0));
  }

  @Override
  public Optional<Expr> formula(String name) {
    return Optional.ofNullable(formulas.get(name));
  }

  @Override
  public Quantity value(String name) {
    return Optional.ofNullable(values.get(name)).orElseThrow();
  }

  @Override
  public boolean isQuantity(String name) {
    return values.containsKey(name) || formulas.containsKey(name);
  }

  @Override
  public boolean isDefined(String name) {
    return isQuantity(name);
  }

  @Override
  public boolean isSameAsUnit(String name) {
    return false;
  }

  @Override
  public String meaning(String name) {
    return "an input";
  }

  @Override
  public Collection<String> all() {
    return values.keySet();
  }
}
