package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Joins the factors of a product. After a solidus one factor may stand and no more ({@code a/b c},
 * {@code a/b*c} and {@code a/b/c} are refused with both bracketings, ISO 80000-2:2019, 2-10.6),
 * except that a fraction of two plain numbers is one factor ({@code 1/2 m v^2}).
 */
final class Solidus {
  private Solidus() {}

  /**
   * A factor and the operator before it; the first has none. {@code written}: its place with the
   * brackets around it.
   */
  record Part(Optional<Expr.Operator> operator, Span at, Expr factor, Span written) {
    boolean over() {
      return operator.equals(Optional.of(Expr.Operator.OVER));
    }
  }

  static Expr join(List<Part> parts, Tokens tokens) {
    List<Part> joined = numberFractions(parts);
    for (int i = 1; i < joined.size() - 1; i++) {
      if (joined.get(i).over()) {
        throw doubtful(joined, i, tokens);
      }
    }
    return joined.stream()
        .map(Part::factor)
        .reduce((l, r) -> l)
        .map(first -> fold(joined))
        .orElseThrow();
  }

  private static Expr fold(List<Part> parts) {
    Expr product = parts.get(0).factor();
    for (Part part : parts.subList(1, parts.size())) {
      product = binary(product, part);
    }
    return product;
  }

  private static Expr binary(Expr left, Part part) {
    Expr.Operator operator = part.operator().orElse(Expr.Operator.TIMES);
    return new Expr.Binary(
        left.span().to(part.factor().span()), operator, left, part.factor(), part.at());
  }

  private static List<Part> numberFractions(List<Part> parts) {
    List<Part> joined = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      int last = joined.size() - 1;
      boolean goesOn = i + 1 < parts.size() && parts.get(i + 1).over(); // 1/2/v is doubtful
      if (part.over()
          && !goesOn
          && isPlainNumber(part.factor())
          && isPlainNumber(joined.get(last).factor())
          && !joined.get(last).over()) {
        Part numerator = joined.get(last);
        Expr fraction = binary(numerator.factor(), part);
        Span written = numerator.written().to(part.written());
        joined.set(last, new Part(numerator.operator(), numerator.at(), fraction, written));
      } else {
        joined.add(part);
      }
    }
    return joined;
  }

  /** A number without a unit. */
  static boolean isPlainNumber(Expr expr) {
    return expr instanceof Expr.Literal number && number.unit().isEmpty();
  }

  private static ProblemException doubtful(List<Part> parts, int solidus, Tokens tokens) {
    Span before = parts.get(0).written().to(parts.get(solidus - 1).written());
    String above = tokens.text(before);
    String below = tokens.text(parts.get(solidus).written());
    Part next = parts.get(solidus + 1);
    Span rest = next.written().to(parts.get(parts.size() - 1).written());
    String then = tokens.text(rest);
    Span whole = before.to(rest);
    String sentence = "“" + tokens.text(whole) + "” is doubtful: what is below the line?";
    String one = "(" + above + "/" + below + ")" + (next.over() ? "/" : "*") + then;
    String other =
        next.over()
            ? above + "/(" + below + "/" + then + ")"
            : above + "/(" + below + "*" + then + ")";
    return tokens.fault(sentence, whole, one, other);
  }
}
