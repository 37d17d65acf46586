package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.sheet.BodyForces;
import plainscale.sheet.Finding;
import plainscale.sheet.Result;

/** What belongs together among forces, in sentences that are the same in every medium. */
final class PairsText {
  private final Writing writing;

  PairsText(Writing writing) {
    this.writing = writing;
  }

  static List<String> lines(Result.Paired paired) {
    PairsText text = new PairsText(paired.writing());
    List<String> lines = new ArrayList<>();
    if (paired.findings().stream().noneMatch(finding -> finding.kind().isPair())) {
      lines.add("No action–reaction pair stands among these forces.");
    }
    paired.findings().stream()
        .filter(finding -> finding.kind() != Finding.Kind.NOT_DRAWN)
        .forEach(finding -> lines.add(text.sentence(finding)));
    lines.addAll(text.notDrawn(paired.findings()));
    lines.addAll(paired.notes());
    return lines;
  }

  private String sentence(Finding finding) {
    Finding.Side one = finding.sides().get(0);
    Finding.Side last = finding.sides().get(finding.sides().size() - 1);
    return switch (finding.kind()) {
      case PAIR ->
          "%s: %s, %s. Action and reaction: equal and opposite, and on two bodies."
              .formatted(one.force().label(), placed(one), placed(last));
      case UNEQUAL ->
          "%s: the third law says these are equal, but %s and %s stand here: one of them is wrong."
              .formatted(between(one, last), size(one.force()), size(last.force()));
      case NOT_OPPOSITE ->
          "%s: the third law says these are opposite, but here %s: one of them is wrong."
              .formatted(between(one, last), pointing(one.force(), last.force()));
      case OTHER_NAME ->
          "%s and %s act between the same two bodies under different names; if they are action and reaction, give them one name."
              .formatted(named(one), named(last));
      case PARTNER_MISSING ->
          "%s: by the third law its partner acts on %s, but no “%s” by %s stands there."
              .formatted(named(one), the(agent(one)), one.force().label(), the(one.body()));
      case BALANCE ->
          "%s and %s on %s are equal and opposite, so these two balance; they are no action–reaction pair, because both act on the same body."
              .formatted(one.force().label(), last.force().label(), the(one.body()));
      case ALIKE -> alike(finding.sides());
      case NOT_DRAWN -> notDrawn(one);
      case NO_AGENT ->
          "%s: nothing says what exerts it (by “…”), so its partner cannot be told."
              .formatted(named(one));
    };
  }

  private String pointing(BodyForces.Force one, BodyForces.Force other) {
    String first = towards(one);
    String second = towards(other);
    return first.equals(second)
        ? "both point " + first
        : "one points %s and the other %s".formatted(first, second);
  }

  /** One sentence for all whose partners act on something that is not drawn. */
  private List<String> notDrawn(List<Finding> findings) {
    List<String> partners =
        findings.stream()
            .filter(finding -> finding.kind() == Finding.Kind.NOT_DRAWN)
            .map(finding -> notDrawn(finding.sides().get(0)))
            .toList();
    return partners.isEmpty()
        ? List.of()
        : List.of("Partners on something that is not drawn: " + String.join("; ", partners) + ".");
  }

  private static String notDrawn(Finding.Side side) {
    return "that of %s acts on %s".formatted(named(side), the(agent(side)));
  }

  private static String between(Finding.Side one, Finding.Side other) {
    return "%s between %s and %s"
        .formatted(one.force().label(), the(one.body()), the(other.body()));
  }

  /** “by the right ball on the left ball 3.1 mN left”. */
  private String placed(Finding.Side side) {
    return "by %s on %s %s %s"
        .formatted(the(agent(side)), the(side.body()), size(side.force()), towards(side.force()));
  }

  private String size(BodyForces.Force force) {
    return ValueText.number(force.size().shown(), writing);
  }

  private String towards(BodyForces.Force force) {
    return ForcesText.direction(force, writing);
  }

  private static String alike(List<Finding.Side> sides) {
    String which = Bodies.list(sides.stream().map(PairsText::named).toList());
    List<String> agents =
        sides.stream().map(PairsText::agent).map(PairsText::the).distinct().toList();
    String partners =
        agents.size() == 1
            ? "the partner of each acts on " + agents.get(0)
            : "their partners act on " + Bodies.list(agents);
    return "%s look alike, but they are no pair: %s.".formatted(which, partners);
  }

  /** “weight on the left ball”. */
  static String named(Finding.Side side) {
    return side.force().label() + " on " + the(side.body());
  }

  private static String agent(Finding.Side side) {
    return side.force().agent().orElse("");
  }

  private static String the(String body) {
    return Bodies.the(body);
  }
}
