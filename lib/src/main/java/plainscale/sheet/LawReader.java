package plainscale.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import plainscale.algebra.Equation;
import plainscale.laws.Constants;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.notation.Expr;
import plainscale.notation.LawStatement;
import plainscale.notation.Origin;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;

/**
 * Looks up the laws that a cell uses, so that each becomes a relation; {@code others} are the names
 * of the other cells.
 */
record LawReader(String source, SheetNames others) {
  private static final int MOST_SEARCHED = 3;

  /** The statement with its relation; a law that is not there makes its line one to be told. */
  Statement read(Statement statement) {
    if (!(statement instanceof LawStatement.Use use)) {
      return statement;
    }
    try {
      return use.stating(relation(use));
    } catch (ProblemException e) {
      return new Statement.Unreadable(use.span(), "", e.problems().get(0));
    }
  }

  private Statement.Relation relation(LawStatement.Use use) {
    Law law = Laws.find(use.law().text()).orElseThrow(() -> unknownLaw(use.law()));
    refuseQuantity(use, law);
    Map<String, Expr> by = replacements(use, law);
    Equation equation = law.with(by, use.law().span());
    String words = use.description().isEmpty() ? law.title() : use.description();
    return new Statement.Relation(
        use.span(),
        use.name().text(),
        equation.left(),
        equation.right(),
        words,
        new Origin(law.name(), angles(law, by)));
  }

  private ProblemException unknownLaw(Statement.Option name) {
    List<String> repairs = new ArrayList<>();
    Laws.near(name.text()).forEach(near -> repairs.add("use " + near));
    if (repairs.isEmpty()) {
      String words = name.text().replace('_', ' ');
      Laws.search(words).stream()
          .limit(MOST_SEARCHED)
          .forEach(found -> repairs.add("use " + found.name()));
      repairs.add("words to search by: use \"" + words + "\"");
    }
    String sentence = "I know no law “" + name.text() + "”.";
    return problem(Problem.Kind.NAME, sentence, name.span(), repairs);
  }

  /** A relation must not push out a quantity that happens to be called as the law. */
  private void refuseQuantity(LawStatement.Use use, Law law) {
    if (others.isDefined(use.name().text())) {
      String name = use.name().text();
      throw problem(
          Problem.Kind.NAME,
          "“%s” is a quantity of this sheet; the relation needs another name.".formatted(name),
          use.name().span(),
          List.of("use %s as %s_1".formatted(law.name(), name)));
    }
  }

  /** What stands for which symbol or constant of the law, by the law's own name for it. */
  private Map<String, Expr> replacements(LawStatement.Use use, Law law) {
    Set<String> constants = constants(law);
    Map<String, Expr> by = new LinkedHashMap<>();
    for (LawStatement.Replaced replaced : use.replaced()) {
      String written = replaced.symbol().text();
      String symbol =
          constants.contains(written)
              ? written
              : law.symbol(written)
                  .map(Law.Symbol::name)
                  .orElseThrow(() -> unknownSymbol(law, replaced.symbol(), constants));
      if (by.put(symbol, replaced.by()) != null) {
        throw problem(
            Problem.Kind.NAME,
            "“%s” stands here twice.".formatted(symbol),
            replaced.symbol().span(),
            List.of("delete one of the two"));
      }
    }
    return by;
  }

  /** The constants of nature in a law. */
  static Set<String> constants(Law law) {
    Set<String> names = new TreeSet<>(Derivations.names(law.equation()));
    law.symbols().forEach(symbol -> names.remove(symbol.name()));
    names.removeIf(name -> !Constants.CODATA.has(name));
    return names;
  }

  private ProblemException unknownSymbol(Law law, Statement.Option symbol, Set<String> constants) {
    List<String> symbols = new ArrayList<>(law.symbols().stream().map(Law.Symbol::name).toList());
    symbols.addAll(constants);
    String sentence =
        "The law “%s” has no symbol “%s”: it says %s."
            .formatted(law.name(), symbol.text(), law.equation().text());
    List<String> repairs = List.of("one of its symbols: " + String.join(", ", symbols));
    return problem(Problem.Kind.NAME, sentence, symbol.span(), repairs);
  }

  /** The names of the relation that are angles by the law. */
  private static Set<String> angles(Law law, Map<String, Expr> by) {
    Set<String> angles = new TreeSet<>();
    for (Law.Symbol symbol : law.symbols()) {
      Expr here = by.getOrDefault(symbol.name(), new Expr.Name(new Span(0, 0), symbol.name()));
      if (symbol.unit().kind().angle() && here instanceof Expr.Name name) {
        angles.add(name.text());
      }
    }
    return angles;
  }

  private ProblemException problem(
      Problem.Kind kind, String sentence, Span span, List<String> repairs) {
    return new ProblemException(new Problem(kind, sentence, source, span, repairs));
  }
}
