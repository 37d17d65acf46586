package plainscale.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plainscale.laws.Constants;
import plainscale.notation.DataStatement;
import plainscale.notation.FieldStatement;
import plainscale.notation.Figure;
import plainscale.notation.LawStatement;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.Span;
import plainscale.notation.Statement;

/**
 * What a cell changes in the names of a sheet: the new names, those that changed, and remarks and
 * mistakes about it.
 */
record Definitions(Map<String, Entry> entries, Set<String> changed, List<Result> remarks) {

  /** Puts the definitions of a cell in place of those that the cell made before. */
  static Definitions of(
      Map<String, Entry> before, String cellId, String source, List<Statement> statements) {
    Map<String, Entry> own = new LinkedHashMap<>();
    List<Result> remarks = new ArrayList<>();
    for (Statement statement : statements) {
      for (String name : names(statement)) {
        Entry entry = entry(new Entry(name, cellId, source, said(statement)), before, own);
        Entry twin = own.putIfAbsent(name, entry);
        if (twin != null) {
          remarks.add(new Result.Mistaken(twice(entry, twin)));
        }
      }
    }
    remarks.addAll(Figures.mistakes(statements, source));
    new Groups(own).join(statements);
    own.keySet()
        .forEach(
            name -> remark(before.get(name), name, cellId, own.get(name)).ifPresent(remarks::add));
    return new Definitions(merged(before, own, cellId), changed(before, own, cellId), remarks);
  }

  /** A law that is used counts as the relation that it states. */
  private static Statement said(Statement statement) {
    return statement instanceof LawStatement.Use use
        ? use.stated().<Statement>map(relation -> relation).orElse(use)
        : statement;
  }

  private static Entry entry(Entry entry, Map<String, Entry> before, Map<String, Entry> own) {
    return entry.statement() instanceof Figure ? Figures.numbered(entry, before, own) : entry;
  }

  /** The names that the statement defines. */
  static List<String> names(Statement statement) {
    return Open.within(statement) instanceof DataStatement data
        ? data.named().stream().map(DataStatement.Named::name).toList()
        : name(statement).stream().toList();
  }

  /** Whether an earlier line of the same cell defines the same name, so that this one is told. */
  static boolean isSecond(Statement statement, String cellId, Map<String, Entry> entries) {
    return !(statement instanceof Statement.Unreadable)
        && name(statement)
            .map(entries::get)
            .filter(entry -> entry.cellId().equals(cellId))
            .filter(entry -> !entry.statement().span().equals(statement.span()))
            .isPresent();
  }

  /** The name that a statement defines, if it is one only. */
  static Optional<String> name(Statement statement) {
    if (statement instanceof Open open) {
      return name(open.around()).filter(name -> !name.equals(Open.SIGN));
    }
    if (statement instanceof Figure figure) {
      return Optional.of(Figures.key(figure.name()));
    }
    if (statement instanceof Statement.Given given) {
      return Optional.of(given.name());
    }
    if (statement instanceof Statement.Unreadable unreadable) {
      return Optional.of(unreadable.defines()).filter(name -> !name.isEmpty());
    }
    if (statement instanceof Statement.Relation relation) {
      return Optional.of(relation.name());
    }
    if (statement instanceof LawStatement.Use use) {
      return use.stated().map(Statement.Relation::name);
    }
    if (statement instanceof Statement.Forces forces) {
      return Optional.of(Bodies.key(forces.body().text()));
    }
    if (statement instanceof FieldStatement.Declared field) {
      return Optional.of(field.name());
    }
    if (statement instanceof Statement.Solve solve) {
      return Optional.of(solve.unknown());
    }
    return statement instanceof Statement.Definition definition
        ? Optional.of(definition.name())
        : Optional.empty();
  }

  private static Map<String, Entry> merged(
      Map<String, Entry> before, Map<String, Entry> own, String cellId) {
    Map<String, Entry> merged = new LinkedHashMap<>(before);
    merged.values().removeIf(entry -> entry.cellId().equals(cellId));
    merged.putAll(own);
    return merged;
  }

  /** A cell that is run again as it was changes nothing. */
  private static Set<String> changed(
      Map<String, Entry> before, Map<String, Entry> own, String cellId) {
    Set<String> changed = new LinkedHashSet<>();
    own.forEach(
        (name, entry) -> {
          if (!entry.equals(before.get(name))) {
            changed.add(name);
          }
        });
    before.forEach(
        (name, entry) -> {
          if (entry.cellId().equals(cellId) && !own.containsKey(name)) {
            changed.add(name);
          }
        });
    Bodies.complete(changed);
    return changed;
  }

  private static Problem twice(Entry entry, Entry first) {
    Span span = entry.statement().span();
    int line =
        new Problem(Problem.Kind.NAME, "", first.source(), first.statement().span(), List.of())
            .line();
    String sentence =
        "“%s” is defined twice in this cell; line %d counts.".formatted(entry.name(), line);
    return new Problem(
        Problem.Kind.NAME, sentence, entry.source(), span, List.of(otherName(entry)));
  }

  private static String otherName(Entry entry) {
    return entry
        .origin()
        .map(origin -> "use %s as %s_2 …".formatted(origin.law(), origin.law()))
        .orElse("give one of them another name");
  }

  private static Optional<Result> remark(
      @Nullable Entry old, String name, String cellId, @Nullable Entry now) {
    if (old != null && now != null && isUsedAgain(old, now)) {
      return Optional.of(
          new Result.Noted(
              "“%s” was used in another cell; from now on this use counts. To keep both, name one of them: %s"
                  .formatted(name, otherName(now))));
    }
    if (old != null && !old.cellId().equals(cellId)) {
      return Optional.of(
          new Result.Noted(
              "“" + name + "” was defined in another cell; from now on this definition counts."));
    }
    return old == null && Constants.CODATA.has(name) ? hidden(name) : Optional.empty();
  }

  private static boolean isUsedAgain(Entry old, Entry now) {
    return old.origin().isPresent()
        && now.origin().isPresent()
        && !old.cellId().equals(now.cellId());
  }

  private static Optional<Result> hidden(String name) {
    return Constants.CODATA
        .find(name)
        .map(
            c ->
                new Result.Noted(
                    "“"
                        + name
                        + "” is yours now; the constant "
                        + name
                        + " ("
                        + c.meaning()
                        + ") is hidden."));
  }
}
