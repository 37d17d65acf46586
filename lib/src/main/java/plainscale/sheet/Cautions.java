package plainscale.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.laws.Hazard;
import plainscale.laws.Hazards;
import plainscale.notation.GuardStatement;
import plainscale.notation.Problem;
import plainscale.notation.Statement;

/** The cautions that cells ask for. */
final class Cautions {
  private Cautions() {}

  /** The names of the hazards in these statements. */
  static Set<String> in(Stream<Statement> statements) {
    Set<String> names = new LinkedHashSet<>();
    statements
        .filter(GuardStatement.Caution.class::isInstance)
        .flatMap(statement -> ((GuardStatement.Caution) statement).hazards().stream())
        .map(Statement.Option::text)
        .filter(name -> Hazards.find(name).isPresent())
        .forEach(names::add);
    return Set.copyOf(names);
  }

  static Result cautioned(GuardStatement.Caution caution, Showing showing) {
    return new GuardResult.Cautioned(
        caution.hazards().stream().map(option -> hazard(option, showing)).toList());
  }

  private static Hazard hazard(Statement.Option option, Showing showing) {
    return Hazards.find(option.text())
        .orElseThrow(
            () -> {
              List<String> nearest = Hazards.nearest(option.text());
              String sentence = "I know no hazard “" + option.text() + "”.";
              return showing.problem(
                  Problem.Kind.NAME,
                  sentence,
                  option.span(),
                  nearest.isEmpty()
                      ? List.of("one of " + String.join(", ", Hazards.names()))
                      : nearest);
            });
  }
}
