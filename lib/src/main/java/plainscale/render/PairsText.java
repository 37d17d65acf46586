package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;
import plainscale.notation.Direction;
import plainscale.sheet.Finding;
import plainscale.sheet.ForceDiagram;
import plainscale.sheet.Result;

/** What belongs together among forces, in sentences that are the same in every medium. */
final class PairsText {
  private final Writing writing;

  PairsText(Writing writing) {
    this.writing = writing;
  }

  static List<String> lines(Result.Paired paired) {
    PairsText text = new PairsText(paired.writing());
    boolean none = paired.findings().stream().noneMatch(finding -> finding.kind().isPair());
    List<String> lines = new ArrayList<>();
    if (none) {
      lines.add("No action–reaction pair stands among these forces.");
    }
    paired.findings().forEach(finding -> lines.add(text.sentence(finding)));
    return lines;
  }

  private String sentence(Finding finding) {
    Finding.Side one = finding.sides().get(0);
    Finding.Side last = finding.sides().get(finding.sides().size() - 1);
    return switch (finding.kind()) {
      case PAIR ->
          "%s: %s. Action and reaction: equal and opposite, and on two bodies."
              .formatted(one.force().label(), both(one, last));
      case UNEQUAL ->
          "%s: the third law says that these are equal, but %s: one of them is wrong."
              .formatted(one.force().label(), both(one, last));
      case NOT_OPPOSITE ->
          "%s: the third law says that these are opposite, but %s: one direction is wrong."
              .formatted(one.force().label(), both(one, last));
      case OTHER_NAME ->
          "%s and %s act between the same two bodies under different names: are they a pair? Then give them one name."
              .formatted(named(one), named(last));
      case PARTNER_MISSING ->
          "%s: by the third law its partner acts on %s, but there no “%s” by %s stands."
              .formatted(named(one), the(agent(one)), one.force().label(), the(one.body()));
      case BALANCE ->
          "%s and %s on %s are equal and opposite, so they balance; they are no action–reaction pair, because both act on the same body."
              .formatted(one.force().label(), last.force().label(), the(one.body()));
      case ALIKE -> alike(finding.sides());
      case NOT_DRAWN ->
          "%s: its partner acts on %s, which is not drawn.".formatted(named(one), the(agent(one)));
      case NO_AGENT ->
          "%s: nothing says what exerts it (by “…”), so its partner cannot be told."
              .formatted(named(one));
    };
  }

  /** “on the left ball 3.1 mN left, on the right ball 3.1 mN right”. */
  private String both(Finding.Side one, Finding.Side other) {
    return placed(one) + " and " + placed(other);
  }

  private String placed(Finding.Side side) {
    return "%s by %s %s %s"
        .formatted(
            "on " + the(side.body()), the(agent(side)), size(side.force()), towards(side.force()));
  }

  private String size(ForceDiagram.Force force) {
    return ValueText.number(force.size().shown(), writing);
  }

  private String towards(ForceDiagram.Force force) {
    return force
        .direction()
        .map(Direction::word)
        .orElseGet(() -> ForcesText.direction(force, writing));
  }

  private static String alike(List<Finding.Side> sides) {
    String which = sides.stream().map(PairsText::named).collect(joining(" and "));
    List<String> agents =
        sides.stream().map(PairsText::agent).map(PairsText::the).distinct().toList();
    String partners =
        agents.size() == 1
            ? "the partner of each acts on " + agents.get(0)
            : "their partners act on " + String.join(" and ", agents);
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
