package plainscale.algebra;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plainscale.notation.Expr;

/**
 * The order of names in products: as the products of the relations have them, otherwise as they are
 * first met. After {@code m_1 g} and {@code m_2 g} both masses stand before g.
 */
final class NameOrder implements Expr.Visitor<List<String>> {
  private final Map<String, Set<String>> before = new LinkedHashMap<>();

  private NameOrder() {}

  static List<String> of(Collection<Equation> equations) {
    NameOrder order = new NameOrder();
    for (Equation equation : equations) {
      order.whole(equation.left());
      order.whole(equation.right());
    }
    return order.sorted();
  }

  /**
   * The earliest name before which nothing has to stand, one with the same letter first; in a
   * circle simply the earliest.
   */
  private List<String> sorted() {
    List<String> left = new ArrayList<>(before.keySet());
    List<String> sorted = new ArrayList<>();
    while (!left.isEmpty()) {
      List<String> free =
          left.stream()
              .filter(name -> sorted.containsAll(before.getOrDefault(name, Set.of())))
              .toList();
      String letter = sorted.isEmpty() ? "" : letter(sorted.get(sorted.size() - 1));
      String next =
          free.stream()
              .filter(name -> letter(name).equals(letter))
              .findFirst()
              .orElse(free.isEmpty() ? left.get(0) : free.get(0));
      sorted.add(next);
      left.remove(next);
    }
    return sorted;
  }

  private static String letter(String name) {
    return name.replaceFirst("_.*", "");
  }

  /** The terms of a sum say nothing of the order of factors, unless the sum is one. */
  private void whole(Expr expr) {
    List<String> factors = expr.accept(this);
    boolean sum =
        expr instanceof Expr.Binary b
            && (b.operator() == Expr.Operator.PLUS || b.operator() == Expr.Operator.MINUS);
    if (!sum) {
      product(factors);
    }
  }

  /** Notes that each factor stands after those to its left; the first relation to say so counts. */
  private void product(List<String> factors) {
    for (int i = 1; i < factors.size(); i++) {
      for (String first : factors.subList(0, i)) {
        String second = factors.get(i);
        Set<String> others = before.getOrDefault(first, Set.of());
        if (!first.equals(second) && !others.contains(second)) {
          before.computeIfAbsent(second, name -> new LinkedHashSet<>()).add(first);
        }
      }
    }
  }

  @Override
  public List<String> literal(Expr.Literal literal) {
    return List.of();
  }

  @Override
  public List<String> name(Expr.Name name) {
    before.computeIfAbsent(name.text(), text -> new LinkedHashSet<>());
    return List.of(name.text());
  }

  @Override
  public List<String> negation(Expr.Negation negation) {
    return negation.operand().accept(this);
  }

  @Override
  public List<String> binary(Expr.Binary binary) {
    List<String> left = binary.left().accept(this);
    List<String> right = binary.right().accept(this);
    return switch (binary.operator()) {
      case TIMES -> joined(left, right);
      case POWER -> left;
      case OVER -> {
        whole(binary.right());
        yield left;
      }
      case PLUS, MINUS -> {
        product(left);
        product(right);
        yield joined(left, right);
      }
    };
  }

  private static List<String> joined(List<String> left, List<String> right) {
    List<String> all = new ArrayList<>(left);
    all.addAll(right);
    return all;
  }

  @Override
  public List<String> call(Expr.Call call) {
    whole(call.argument());
    return List.of();
  }

  @Override
  public List<String> inUnits(Expr.InUnits inUnits) {
    return inUnits.operand().accept(this);
  }

  @Override
  public List<String> conversion(Expr.Conversion conversion) {
    return conversion.operand().accept(this);
  }
}
