package plainscale.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import plainscale.algebra.Equation;
import plainscale.algebra.UnknownKinds;
import plainscale.laws.Constant;
import plainscale.laws.Constants;
import plainscale.laws.Law;
import plainscale.laws.Laws;
import plainscale.notation.Expr;
import plainscale.notation.LawStatement;
import plainscale.notation.Printer;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;

/** Shows laws; what stands for a symbol must be of the symbol's kind, as far as that is known. */
record LawPresenter(Showing showing, Function<String, Optional<Result>> overtaken)
    implements LawStatement.Visitor<Result> {
  private static final int MOST_FOUND = 6;

  /** A symbol or a constant of a law, and what stands for it in the sheet. */
  private record Part(
      String symbol, String meaning, UnitOfMeasure unit, boolean constant, Expr here, Span place) {
    String name() {
      return Printer.print(here);
    }
  }

  @Override
  public Result use(LawStatement.Use use) {
    return overtaken.apply(use.name().text()).orElseGet(() -> used(use));
  }

  private Result used(LawStatement.Use use) {
    Law law = Laws.find(use.law().text()).orElseThrow();
    Statement.Relation relation = use.stated().orElseThrow();
    List<Part> parts = parts(use, law);
    refuseOtherKinds(law, parts);
    List<LawResult.Row> rows =
        parts.stream()
            .map(p -> new LawResult.Row(p.here(), p.symbol(), p.unit(), p.meaning()))
            .toList();
    return new LawResult.Used(
        relation.name(),
        law,
        new Equation(relation.left(), relation.right()),
        rows,
        use.description(),
        showing.writing());
  }

  private List<Part> parts(LawStatement.Use use, Law law) {
    Map<String, LawStatement.Replaced> by = new LinkedHashMap<>();
    for (LawStatement.Replaced replaced : use.replaced()) {
      String written = replaced.symbol().text();
      by.put(law.symbol(written).map(Law.Symbol::name).orElse(written), replaced);
    }
    List<Part> parts = new ArrayList<>();
    law.symbols()
        .forEach(s -> parts.add(part(s.name(), s.meaning(), s.unit(), false, by, use.law())));
    for (String name : LawReader.constants(law)) {
      Constant constant = Constants.CODATA.find(name).orElseThrow();
      if (constant.quantity().kind().isNumber() && !by.containsKey(name)) {
        continue; // π needs no words
      }
      UnitOfMeasure unit =
          constant.quantity().unit().orElseGet(() -> Kinds.of(constant.quantity().kind()).unit());
      parts.add(part(name, constant.meaning(), unit, true, by, use.law()));
    }
    return parts;
  }

  private static Part part(
      String symbol,
      String meaning,
      UnitOfMeasure unit,
      boolean constant,
      Map<String, LawStatement.Replaced> by,
      Statement.Option law) {
    LawStatement.Replaced replaced = by.get(symbol);
    return replaced == null
        ? new Part(symbol, meaning, unit, constant, new Expr.Name(law.span(), symbol), law.span())
        : new Part(symbol, meaning, unit, constant, replaced.by(), replaced.by().span());
  }

  private void refuseOtherKinds(Law law, List<Part> parts) {
    List<Equation> kinds = parts.stream().map(LawPresenter::kind).toList();
    UnknownKinds.of(kinds, showing.wave()::kind, showing.wave()::number)
        .disagreement()
        .ifPresent(
            i -> {
              throw otherKind(law, parts.get(i));
            });
  }

  /** What stands here is so many of the symbol's unit. */
  private static Equation kind(Part part) {
    Expr one = new Expr.Literal(part.place(), BigDecimal.ONE, part.unit(), true);
    return new Equation(part.here(), one);
  }

  private ProblemException otherKind(Law law, Part part) {
    String wanted =
        part.constant() ? "the " + part.meaning() : showing.words(part.unit().kind(), part.place());
    String here =
        kindHere(part)
            .map(kind -> "is " + showing.words(kind, part.place()))
            .orElse("cannot be that");
    String sentence =
        "In the law “%s”, %s is %s; “%s” %s here."
            .formatted(law.name(), part.symbol(), wanted, part.name(), here);
    List<String> repairs = new ArrayList<>();
    repairs.add("name what is meant: use %s with %s = …".formatted(law.name(), part.symbol()));
    if (part.name().equals(part.symbol())) {
      repairs.add("give the other quantity another name, as in %s_1".formatted(part.symbol()));
    }
    return showing.problem(Problem.Kind.UNIT, sentence, part.place(), repairs);
  }

  private Optional<Kind> kindHere(Part part) {
    try {
      return Optional.of(showing.value(part.here()).kind());
    } catch (ProblemException noValue) {
      return Optional.empty();
    }
  }

  @Override
  public Result search(LawStatement.Search search) {
    List<Law> found = Laws.search(search.words().text());
    if (found.isEmpty()) {
      throw showing.problem(
          Problem.Kind.NAME,
          "I know no law about “" + search.words().text() + "”.",
          search.words().span(),
          List.of("a word of physics, as in: use \"force between charges\""));
    }
    return new LawResult.Found(
        search.words().text(), found.stream().limit(MOST_FOUND).toList(), showing.writing());
  }
}
