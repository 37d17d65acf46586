package plainscale.sheet;

import java.util.List;
import java.util.stream.Stream;
import plainscale.notation.Expr;
import plainscale.notation.Expressions;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;

/** What a blank keeps from having a value, and what is wrong beside it all the same. */
final class Blanks {
  private Blanks() {}

  /** Stops the computation of what hangs on a blank entry. */
  static ProblemException problem(Entry entry) {
    String sentence = Subject.of(entry).isAre("still blank");
    return new ProblemException(
        new Problem(
            Problem.Kind.BLANK, sentence, entry.source(), entry.statement().span(), List.of()));
  }

  /** Stops the computation of an expression that contains a blank. */
  static ProblemException problem(Expr.Name blank, String source) {
    return new ProblemException(
        new Problem(Problem.Kind.BLANK, "Here is a blank.", source, blank.span(), List.of()));
  }

  /** Refuses an entry with blanks. */
  static void refuse(Entry entry) {
    if (entry.statement() instanceof Open) {
      throw problem(entry);
    }
  }

  /** Whether an expression has no value yet for the sake of a blank. */
  static boolean waits(Expr expr, Showing showing) {
    try {
      showing.value(expr);
      return false;
    } catch (ProblemException e) {
      return e.isBlank();
    }
  }

  /** What is wrong with the parts of a statement that hang on no blank. */
  static List<Problem> mistakes(Statement statement, Showing showing) {
    boolean sentence = Open.within(statement) instanceof Statement.Say;
    Stream<Problem> parts =
        Expressions.of(statement)
            .filter(expr -> !(sentence && isRelation(expr, showing)))
            .flatMap(expr -> mistakes(expr, showing).stream());
    return Stream.concat(unknownRelations(statement, showing), parts).distinct().toList();
  }

  /** A sentence may quote a relation, which has no value. */
  private static boolean isRelation(Expr expr, Showing showing) {
    return expr instanceof Expr.Name name && isRelation(name.text(), showing);
  }

  private static List<Problem> mistakes(Expr expr, Showing showing) {
    try {
      showing.value(expr);
      return List.of();
    } catch (ProblemException e) {
      return e.isBlank()
          ? expr.accept(new Operands()).flatMap(part -> mistakes(part, showing).stream()).toList()
          : e.problems();
    }
  }

  /** In {@code solve ?, levl for q} a slip is told before the blank is filled in. */
  private static Stream<Problem> unknownRelations(Statement statement, Showing showing) {
    if (!(statement instanceof Open open && open.around() instanceof Statement.Solve solve)) {
      return Stream.empty();
    }
    return solve.relations().stream()
        .filter(name -> !name.text().equals(Open.SIGN) && !isRelation(name.text(), showing))
        .map(name -> showing.wave().derivations().noRelation(name, showing.source()))
        .flatMap(e -> e.problems().stream());
  }

  private static boolean isRelation(String name, Showing showing) {
    return showing
        .wave()
        .entry(name)
        .filter(entry -> Open.within(entry.statement()) instanceof Statement.Relation)
        .isPresent();
  }

  /** The operands of an expression. */
  private static final class Operands implements Expr.Visitor<Stream<Expr>> {
    @Override
    public Stream<Expr> literal(Expr.Literal literal) {
      return Stream.empty();
    }

    @Override
    public Stream<Expr> name(Expr.Name name) {
      return Stream.empty();
    }

    @Override
    public Stream<Expr> negation(Expr.Negation negation) {
      return Stream.of(negation.operand());
    }

    @Override
    public Stream<Expr> binary(Expr.Binary binary) {
      return Stream.of(binary.left(), binary.right());
    }

    @Override
    public Stream<Expr> call(Expr.Call call) {
      return Stream.of(call.argument());
    }

    @Override
    public Stream<Expr> inUnits(Expr.InUnits inUnits) {
      return Stream.of(inUnits.operand());
    }

    @Override
    public Stream<Expr> conversion(Expr.Conversion conversion) {
      return Stream.of(conversion.operand());
    }
  }
}
