package plainscale.algebra;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import plainscale.notation.Expr;
import plainscale.quantity.ElementaryFunction;

/**
 * The names in expressions in the order in which they are met, with how often each is, and which of
 * them make angles.
 */
record Mentions(Map<String, Integer> counts, Set<String> angles) {

  static Mentions of(Collection<Equation> equations) {
    Mentions mentions = new Mentions(new LinkedHashMap<>(), new LinkedHashSet<>());
    for (Equation equation : equations) {
      equation.left().accept(new Walk(mentions, false));
      equation.right().accept(new Walk(mentions, false));
    }
    return mentions;
  }

  /** How often a name stands in an expression. */
  static int count(Expr expr, String name) {
    Mentions mentions = new Mentions(new LinkedHashMap<>(), new LinkedHashSet<>());
    return expr.accept(new Walk(mentions, false)).counts.getOrDefault(name, 0);
  }

  /** The names. */
  Set<String> names() {
    return counts.keySet();
  }

  private record Walk(Mentions found, boolean angle) implements Expr.Visitor<Mentions> {
    @Override
    public Mentions literal(Expr.Literal literal) {
      return found;
    }

    @Override
    public Mentions name(Expr.Name name) {
      found.counts.merge(name.text(), 1, Integer::sum);
      if (angle) {
        found.angles.add(name.text());
      }
      return found;
    }

    @Override
    public Mentions negation(Expr.Negation negation) {
      return negation.operand().accept(this);
    }

    @Override
    public Mentions binary(Expr.Binary binary) {
      binary.left().accept(this);
      return binary.right().accept(this);
    }

    @Override
    public Mentions call(Expr.Call call) {
      boolean inside = call.function().takes() == ElementaryFunction.Takes.ANGLE;
      return call.argument().accept(new Walk(found, angle || inside));
    }

    @Override
    public Mentions inUnits(Expr.InUnits inUnits) {
      return inUnits.operand().accept(this);
    }

    @Override
    public Mentions conversion(Expr.Conversion conversion) {
      return conversion.operand().accept(this);
    }
  }
}
