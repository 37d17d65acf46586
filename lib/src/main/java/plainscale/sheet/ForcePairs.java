package plainscale.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plainscale.quantity.ElementaryFunction;

/**
 * Which forces on some bodies are action and reaction, and which only look as if they were.
 *
 * <p>By Newton's third law the partner of the force that B exerts on A is the force of the same
 * kind that A exerts on B; the kind is what the force is called.
 */
final class ForcePairs {
  private final List<Finding.Side> all = new ArrayList<>();
  private final List<BodyForces> diagrams;
  private final Set<Finding.Side> paired = new LinkedHashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private ForcePairs(List<BodyForces> diagrams) {
    this.diagrams = diagrams;
    diagrams.forEach(
        diagram ->
            diagram.forces().forEach(force -> all.add(new Finding.Side(diagram.body(), force))));
  }

  /**
   * What is found among the forces on these bodies. Which forces are a pair hangs on their names
   * only, so that other values give the same pairs in the same order.
   */
  static List<Finding> among(List<BodyForces> diagrams) {
    ForcePairs pairs = new ForcePairs(diagrams);
    pairs.pair(ForcePairs::isSameKind);
    pairs.pair((one, other) -> true);
    pairs.diagrams.forEach(pairs::balances);
    pairs.alike();
    pairs.all.stream().filter(side -> !pairs.paired.contains(side)).forEach(pairs::alone);
    return List.copyOf(pairs.findings);
  }

  private interface Match {
    boolean test(Finding.Side one, Finding.Side other);
  }

  private void pair(Match match) {
    for (Finding.Side one : all) {
      if (!paired.contains(one)) {
        all.stream()
            .filter(other -> !paired.contains(other) && isBetween(one, other))
            .filter(other -> match.test(one, other))
            .findFirst()
            .ifPresent(other -> pair(one, other));
      }
    }
  }

  private void pair(Finding.Side one, Finding.Side other) {
    paired.add(one);
    paired.add(other);
    Finding.Kind kind = isSameKind(one, other) ? judged(one, other) : Finding.Kind.OTHER_NAME;
    findings.add(new Finding(kind, List.of(one, other)));
  }

  private static boolean isBetween(Finding.Side one, Finding.Side other) {
    return !Bodies.isSame(one.body(), other.body())
        && isBy(one, other.body())
        && isBy(other, one.body());
  }

  private static boolean isBy(Finding.Side side, String body) {
    return side.force().agent().filter(agent -> Bodies.isSame(agent, body)).isPresent();
  }

  private static boolean isSameKind(Finding.Side one, Finding.Side other) {
    return kind(one).equals(kind(other));
  }

  private static String kind(Finding.Side side) {
    return side.force().label().toLowerCase(Locale.ROOT);
  }

  private static Finding.Kind judged(Finding.Side one, Finding.Side other) {
    if (isOpposite(one, other)) {
      return Finding.Kind.PAIR;
    }
    return isEqual(one, other) ? Finding.Kind.NOT_OPPOSITE : Finding.Kind.UNEQUAL;
  }

  private static boolean isOpposite(Finding.Side one, Finding.Side other) {
    return Resultant.isZero(one.force().across(), other.force().across())
        && Resultant.isZero(one.force().up(), other.force().up());
  }

  /** Whether two forces have the same size, wherever they point. */
  static boolean isEqual(Finding.Side one, Finding.Side other) {
    return Resultant.isZero(
        one.force().size().apply(ElementaryFunction.ABS),
        other.force().size().apply(ElementaryFunction.ABS).negate());
  }

  private void balances(BodyForces diagram) {
    List<BodyForces.Force> forces = diagram.forces();
    for (int i = 0; i < forces.size(); i++) {
      Finding.Side one = new Finding.Side(diagram.body(), forces.get(i));
      for (BodyForces.Force force : forces.subList(i + 1, forces.size())) {
        Finding.Side other = new Finding.Side(diagram.body(), force);
        if (one.force().size().value().signum() != 0 && isOpposite(one, other)) {
          findings.add(new Finding(Finding.Kind.BALANCE, List.of(one, other)));
        }
      }
    }
  }

  /** Forces of the same name on several bodies whose agents are not drawn. */
  private void alike() {
    Map<String, List<Finding.Side>> groups =
        all.stream()
            .filter(side -> side.force().agent().isPresent() && drawn(side).isEmpty())
            .collect(
                Collectors.groupingBy(ForcePairs::kind, LinkedHashMap::new, Collectors.toList()));
    groups.values().stream()
        .filter(group -> group.stream().map(Finding.Side::body).distinct().count() > 1)
        .forEach(group -> findings.add(new Finding(Finding.Kind.ALIKE, group)));
  }

  private void alone(Finding.Side side) {
    Finding.Kind kind =
        side.force().agent().isEmpty()
            ? Finding.Kind.NO_AGENT
            : drawn(side).isPresent() ? Finding.Kind.PARTNER_MISSING : Finding.Kind.NOT_DRAWN;
    findings.add(new Finding(kind, List.of(side)));
  }

  /** The body that exerts the force, if forces on it are declared. */
  private Optional<String> drawn(Finding.Side side) {
    return diagrams.stream().map(BodyForces::body).filter(body -> isBy(side, body)).findFirst();
  }
}
