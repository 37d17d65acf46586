package plainscale.notation;

/** An expression with a bracket around every operation, so that nothing is left to precedence. */
final class Bracketed implements Expr.Visitor<String> {
  private Bracketed() {}

  static String text(Expr expr) {
    return expr.accept(new Bracketed());
  }

  @Override
  public String literal(Expr.Literal literal) {
    return literal.value() + literal.unit().map(unit -> "[" + unit + "]").orElse("");
  }

  @Override
  public String name(Expr.Name name) {
    return name.text();
  }

  @Override
  public String negation(Expr.Negation negation) {
    return "(-" + text(negation.operand()) + ")";
  }

  @Override
  public String binary(Expr.Binary binary) {
    String sign =
        switch (binary.operator()) {
          case PLUS -> "+";
          case MINUS -> "-";
          case TIMES -> "*";
          case OVER -> "/";
          case POWER -> "^";
        };
    return "(" + text(binary.left()) + sign + text(binary.right()) + ")";
  }

  @Override
  public String call(Expr.Call call) {
    return call.function().text() + "(" + text(call.argument()) + ")";
  }

  @Override
  public String inUnits(Expr.InUnits inUnits) {
    return "(" + text(inUnits.operand()) + "[" + inUnits.unit() + "])";
  }

  @Override
  public String conversion(Expr.Conversion conversion) {
    return "(" + text(conversion.operand()) + " in " + conversion.unit() + ")";
  }
}
