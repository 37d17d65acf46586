package plainscale.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plainscale.algebra.Equation;
import plainscale.algebra.UnknownKinds;
import plainscale.notation.Problem;
import plainscale.notation.Statement;
import plainscale.units.Kind;
import plainscale.units.Kinds;
import plainscale.units.UnitException;

/**
 * Whether the units of a relation can agree, as far as what is given and defined tells: a mistake
 * in a relation is told where it stands, also if nobody solves it.
 */
final class RelationUnits {
  static final String REPAIR = "look again at the relation, or at the units of what stands in it";
  private static final int MOST_NAMES = 6;

  private final Showing showing;

  RelationUnits(Showing showing) {
    this.showing = showing;
  }

  /** Throws if they cannot, whatever the unknowns are. */
  void refuseDisagreement(Statement.Relation relation) {
    Equation equation = new Equation(relation.left(), relation.right());
    UnknownKinds.Found found = UnknownKinds.of(List.of(equation), this::kind);
    if (found.disagreement().isPresent()) {
      String sentence = sentence(relation.name(), equation) + inWords(equation, this::kind);
      throw showing.problem(Problem.Kind.UNIT, sentence, relation.span(), List.of(REPAIR));
    }
  }

  static String sentence(String relation, Equation equation) {
    return "The units of the relation “%s” cannot agree, whatever its unknowns are: %s."
        .formatted(relation, equation.text());
  }

  /** What the known names of an equation are: " Here p is a pressure, V is a volume." */
  static String inWords(Equation equation, Function<String, Optional<Kind>> kind) {
    String words =
        Derivations.names(equation).stream()
            .map(name -> kind.apply(name).map(k -> name + " is " + words(k)).orElse(null))
            .filter(Objects::nonNull)
            .limit(MOST_NAMES)
            .collect(Collectors.joining(", "));
    return words.isEmpty() ? "" : " Here " + words + ".";
  }

  private static String words(Kind kind) {
    try {
      return Kinds.of(kind).withArticle();
    } catch (UnitException brokenPower) {
      return "of a kind without a name";
    }
  }

  /** Of what relations only tell nothing is known here; what has no value has no kind. */
  private Optional<Kind> kind(String name) {
    @Nullable Entry entry = showing.names().entries().get(name);
    boolean own =
        entry == null
            || entry.statement() instanceof Statement.Given
            || entry.statement() instanceof Statement.Definition;
    return own ? showing.wave().kind(name) : Optional.empty();
  }
}
