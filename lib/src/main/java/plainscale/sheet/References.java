package plainscale.sheet;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Acting;
import plainscale.notation.Change;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.GuardStatement;
import plainscale.notation.LawStatement;
import plainscale.notation.Open;
import plainscale.notation.Part;
import plainscale.notation.Statement;

/** The names that a statement's value hangs on, directly or through the definitions of others. */
final class References implements Statement.Visitor<Stream<String>> {
  private static final References DIRECT = new References();

  /** What shows all that a sheet computes leans on this. */
  static final String EVERYTHING = "all names";

  private References() {}

  /** The names that stand in the statement, those that it defines included. */
  static Stream<String> direct(Statement statement) {
    return statement.accept(DIRECT);
  }

  /** All names that the statement's value hangs on, its own included. */
  static Set<String> of(Statement statement, Map<String, Entry> entries) {
    return of(statement, entries, DataStatement.Table.class); // no column leans on another
  }

  /**
   * The names whose values the value of a name hangs on, itself included: what is fitted to columns
   * hangs on their rows, not on their means.
   */
  static Set<String> ofName(String name, Map<String, Entry> entries) {
    Entry entry = entries.get(name);
    return entry == null || entry.statement() instanceof DataStatement
        ? Set.of(name)
        : of(entry.statement(), entries, DataStatement.class);
  }

  /**
   * The names without whose values a statement has none: not those that are shown only because they
   * are there.
   */
  static Set<String> needed(Statement statement, Map<String, Entry> entries) {
    Stream<String> direct =
        statement
            .accept(DIRECT)
            .filter(name -> !name.equals(EVERYTHING))
            .filter(name -> !(statement instanceof Statement.Compare && name.equals(Bodies.ALL)));
    return of(direct, entries, DataStatement.Table.class);
  }

  private static Set<String> of(
      Statement statement, Map<String, Entry> entries, Class<? extends Statement> ends) {
    return of(statement.accept(DIRECT), entries, ends);
  }

  private static Set<String> of(
      Stream<String> direct, Map<String, Entry> entries, Class<? extends Statement> ends) {
    Set<String> names = new LinkedHashSet<>();
    Set<String> open =
        direct
            .flatMap(
                name ->
                    name.equals(EVERYTHING)
                        ? entries.keySet().stream()
                        : Bodies.each(name, entries))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    while (!open.isEmpty()) {
      names.addAll(open);
      open =
          open.stream()
              .flatMap(name -> Stream.ofNullable(entries.get(name)))
              .filter(entry -> !ends.isInstance(entry.statement()))
              .flatMap(entry -> entry.statement().accept(DIRECT))
              .filter(name -> !names.contains(name))
              .collect(Collectors.toCollection(LinkedHashSet::new));
    }
    return names;
  }

  /** The names in the expression. */
  static Set<String> in(Expr expr) {
    return names(expr).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Whether a name stands in the expression. */
  static boolean hasNames(Expr expr) {
    return names(expr).findAny().isPresent();
  }

  @Override
  public Stream<String> given(Statement.Given given) {
    return Stream.of(given.name());
  }

  @Override
  public Stream<String> definition(Statement.Definition definition) {
    return Stream.concat(Stream.of(definition.name()), names(definition.formula()));
  }

  @Override
  public Stream<String> show(Statement.Show show) {
    return names(show.value());
  }

  @Override
  public Stream<String> say(Statement.Say say) {
    return say.parts().stream().flatMap(References::names);
  }

  private static Stream<String> names(Part part) {
    if (part instanceof Part.EquationOf equation) {
      return Stream.of(equation.unknown().text());
    }
    if (part instanceof Part.StepsOf steps) {
      return Stream.of(steps.unknown().text());
    }
    if (part instanceof Part.FigureOf figure) {
      return Stream.of(Figures.key(figure.figure()));
    }
    return part instanceof Part.Value value ? names(value.value()) : Stream.empty();
  }

  @Override
  public Stream<String> contrast(Statement.Contrast contrast) {
    return contrast.sides().stream().flatMap(References::names);
  }

  @Override
  public Stream<String> relation(Statement.Relation relation) {
    return Stream.of(Stream.of(relation.name()), names(relation.left()), names(relation.right()))
        .flatMap(names -> names);
  }

  @Override
  public Stream<String> solve(Statement.Solve solve) {
    return Stream.of(
            Stream.of(solve.unknown()),
            solve.relations().stream().map(Statement.Option::text),
            solve.bounds().stream().flatMap(bound -> names(bound.value())))
        .flatMap(names -> names);
  }

  @Override
  public Stream<String> whatIf(Statement.WhatIf whatIf) {
    return Stream.concat(
        whatIf.changes().stream().flatMap(References::names),
        whatIf.shown().isEmpty()
            ? Stream.of(EVERYTHING)
            : whatIf.shown().stream().flatMap(References::names));
  }

  private static Stream<String> names(Change change) {
    Stream<String> values =
        change instanceof Change.Relation relation
            ? Stream.concat(names(relation.left()), names(relation.right()))
            : names(((Change.Value) change).value());
    return Stream.concat(Stream.of(change.name().text()), values);
  }

  @Override
  public Stream<String> compare(Statement.Compare compare) {
    Stream<String> changes =
        compare.cases().stream().flatMap(c -> c.changes().stream()).flatMap(References::names);
    Stream<String> shown =
        compare.shown().isEmpty()
            ? Stream.of(EVERYTHING)
            : compare.shown().stream().flatMap(value -> names(value.value()));
    return Stream.concat(Stream.of(Bodies.ALL), Stream.concat(changes, shown));
  }

  @Override
  public Stream<String> forces(Statement.Forces forces) {
    return Stream.concat(
        Stream.concat(Stream.of(forces.body()), forces.mirrors().stream())
            .map(body -> Bodies.key(body.text())),
        Stream.concat(
            forces.onSlope().stream().flatMap(References::names),
            forces.acting().stream().flatMap(References::names)));
  }

  private static Stream<String> names(Acting acting) {
    return acting.pointing() instanceof Acting.Along along
        ? Stream.concat(names(acting.size()), names(along.angle()))
        : names(acting.size());
  }

  @Override
  public Stream<String> figure(Figure figure) {
    return Stream.of(Figures.key(figure.name()));
  }

  @Override
  public Stream<String> pairs(Statement.Pairs pairs) {
    return Stream.of(Bodies.ALL);
  }

  @Override
  public Stream<String> field(FieldStatement field) {
    return field.accept(new FieldReferences());
  }

  @Override
  public Stream<String> depends(Statement.Depends depends) {
    return Stream.concat(names(depends.value()), Stream.of(depends.on().text()));
  }

  @Override
  public Stream<String> vary(Statement.Vary vary) {
    Stream<Expr> values =
        Stream.concat(
            Stream.of(vary.from(), vary.to()), vary.shown().stream().map(Part.Value::value));
    return Stream.concat(Stream.of(vary.name().text()), values.flatMap(References::names));
  }

  @Override
  public Stream<String> limit(Statement.Limit limit) {
    Stream<Expr> values =
        Stream.concat(limit.goal().stream(), limit.shown().stream().map(Part.Value::value));
    return Stream.concat(Stream.of(limit.name().text()), values.flatMap(References::names));
  }

  @Override
  public Stream<String> near(Statement.Near near) {
    return names(near.value());
  }

  @Override
  public Stream<String> expand(Statement.Expand expand) {
    return names(expand.value());
  }

  @Override
  public Stream<String> picture(Statement.Picture picture) {
    return picture.sides().stream().flatMap(References::names);
  }

  @Override
  public Stream<String> together(Statement.Together together) {
    return together.names().stream().map(Statement.Option::text);
  }

  @Override
  public Stream<String> budget(Statement.Budget budget) {
    return names(budget.value());
  }

  @Override
  public Stream<String> choice(Statement.Choice choice) {
    return Stream.empty();
  }

  @Override
  public Stream<String> law(LawStatement law) {
    return law instanceof LawStatement.Use use
        ? use.stated().stream().flatMap(this::relation)
        : Stream.empty();
  }

  @Override
  public Stream<String> data(DataStatement data) {
    return data.acceptData(new DataNames());
  }

  @Override
  public Stream<String> open(Open open) {
    return open.around().accept(this);
  }

  @Override
  public Stream<String> guard(GuardStatement guard) {
    return guard instanceof GuardStatement.Expected expected
        ? Stream.concat(
            names(expected.value()), expected.range().limits().stream().flatMap(References::names))
        : Stream.empty();
  }

  @Override
  public Stream<String> unreadable(Statement.Unreadable unreadable) {
    return Stream.of(unreadable.defines());
  }

  static Stream<String> names(Expr expr) {
    return expr.accept(new ExprNames());
  }

  private static final class ExprNames implements Expr.Visitor<Stream<String>> {
    @Override
    public Stream<String> literal(Expr.Literal literal) {
      return Stream.empty();
    }

    @Override
    public Stream<String> name(Expr.Name name) {
      return Stream.of(name.text());
    }

    @Override
    public Stream<String> negation(Expr.Negation negation) {
      return negation.operand().accept(this);
    }

    @Override
    public Stream<String> binary(Expr.Binary binary) {
      return Stream.concat(binary.left().accept(this), binary.right().accept(this));
    }

    @Override
    public Stream<String> call(Expr.Call call) {
      return call.argument().accept(this);
    }

    @Override
    public Stream<String> inUnits(Expr.InUnits inUnits) {
      return inUnits.operand().accept(this);
    }

    @Override
    public Stream<String> conversion(Expr.Conversion conversion) {
      return conversion.operand().accept(this);
    }
  }
}
