package plainscale.document.edition;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainscale.algebra.Equation;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.WorkedLesson;
import plainscale.notation.Expr;
import plainscale.notation.Rewriting;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitSymbol;

/**
 * The units that a student's page shows and that are no SI units: whoever works on paper needs
 * their size.
 */
public final class UnitsUsed {
  /** Where the SI's own units come from; those that are only accepted beside them do not. */
  private static final String SI = "tables 2 and 4";

  private final Set<UnitSymbol> symbols = new LinkedHashSet<>();

  private UnitsUsed() {}

  /** The size of each in the SI unit of its kind, to four figures. */
  public static List<Result> of(WorkedLesson worked) {
    UnitsUsed used = new UnitsUsed();
    worked.cells().stream()
        .filter(cell -> cell.cell().head().blank(Edition.STUDENT).compareTo(Blank.VALUES) <= 0)
        .flatMap(cell -> cell.results().stream())
        .forEach(used::add);
    return used.symbols.stream()
        .filter(UnitsUsed::isToBeTold)
        .flatMap(symbol -> size(symbol).stream())
        .toList();
  }

  private static boolean isToBeTold(UnitSymbol symbol) {
    UnitOfMeasure unit = unit(symbol);
    boolean plain = unit.kind().equals(Kind.NUMBER) || unit.kind().equals(Kind.ANGLE);
    return !plain && !unit.isScale() && !symbol.source().contains(SI);
  }

  private static UnitOfMeasure unit(UnitSymbol symbol) {
    return UnitOfMeasure.of(List.of(new UnitOfMeasure.Factor(symbol, 1)));
  }

  private static Optional<Result> size(UnitSymbol symbol) {
    String si = Kinds.of(unit(symbol).kind()).unit().text();
    String cell =
        "one = 1 [%1$s]\nsay \"1 %1$s = {one in %2$s to 4 figures}\"".formatted(symbol.text(), si);
    return new Sheet()
        .run("unit", cell).results().stream().filter(Result.Narrated.class::isInstance).findFirst();
  }

  private void add(Result result) {
    if (result instanceof Result.Valued valued) {
      valued.label().formula().ifPresent(this::add);
      add(valued.shown().unit());
    } else if (result instanceof Result.Stated stated) {
      add(stated.equation());
    } else if (result instanceof LawResult.Used law) {
      add(law.equation());
    }
  }

  private void add(Equation equation) {
    add(equation.left());
    add(equation.right());
  }

  private void add(UnitOfMeasure unit) {
    unit.factors().forEach(factor -> symbols.add(factor.symbol()));
  }

  private void add(Expr expr) {
    expr.accept(new Collector());
  }

  private final class Collector extends Rewriting {
    @Override
    public Expr literal(Expr.Literal literal) {
      literal.unit().ifPresent(UnitsUsed.this::add);
      return literal;
    }

    @Override
    public Expr inUnits(Expr.InUnits inUnits) {
      UnitsUsed.this.add(inUnits.unit());
      return super.inUnits(inUnits);
    }
  }
}
