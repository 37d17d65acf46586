package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plainscale.magnitude.Writing;
import plainscale.picture.Scene;
import plainscale.picture.force.Body;
import plainscale.picture.force.Edition;
import plainscale.picture.force.Force;
import plainscale.picture.force.ForceDiagram;
import plainscale.picture.force.Pair;
import plainscale.quantity.Quantity;
import plainscale.sheet.BodyForces;
import plainscale.sheet.Finding;
import plainscale.sheet.Result;

/** The diagrams of forces on squared paper. */
final class ForcePictures {
  private static final String MISSING = "missing";

  private final Writing writing;

  private ForcePictures(Writing writing) {
    this.writing = writing;
  }

  /** The forces on one body. */
  static Scene of(Result.Forces forces) {
    ForcePictures pictures = new ForcePictures(forces.writing());
    Edition edition =
        switch (forces.diagram().edition()) {
          case WHOLE, MISSING -> Edition.WHOLE;
          case DIRECTIONS -> Edition.DIRECTIONS;
          case DOT -> Edition.DOT;
        };
    List<Body> bodies = List.of(pictures.body(forces.diagram()));
    return ForceDiagram.of("", bodies, List.of(), edition, forces.writing());
  }

  /**
   * Several bodies beside one another with their pairs linked; none if there is nothing to link.
   */
  static List<Scene> of(Result.Paired paired) {
    List<BodyForces> drawn = paired.bodies();
    boolean open = drawn.stream().allMatch(body -> body.edition().isOpen());
    if (drawn.size() < 2 || drawn.size() > ForceDiagram.MOST_BODIES || !open) {
      return List.of();
    }
    ForcePictures pictures = new ForcePictures(paired.writing());
    List<Body> bodies = drawn.stream().map(pictures::body).toList();
    List<Pair> pairs =
        paired.findings().stream()
            .filter(finding -> finding.kind() == Finding.Kind.PAIR)
            .map(finding -> pair(finding, drawn))
            .toList();
    return List.of(ForceDiagram.of("", bodies, pairs, Edition.WHOLE, paired.writing()));
  }

  private static Pair pair(Finding finding, List<BodyForces> bodies) {
    int first = place(finding.sides().get(0), bodies);
    int second = place(finding.sides().get(1), bodies);
    String label = finding.sides().get(0).force().label();
    return new Pair(Math.min(first, second), Math.max(first, second), label);
  }

  private static int place(Finding.Side side, List<BodyForces> bodies) {
    return IntStream.range(0, bodies.size())
        .filter(i -> bodies.get(i).body().equals(side.body()))
        .findFirst()
        .orElseThrow();
  }

  private Body body(BodyForces forces) {
    List<Force> drawn = new ArrayList<>();
    forces.forces().forEach(force -> drawn.add(force(force)));
    forces.balancing().ifPresent(net -> drawn.add(hint(net)));
    double slope = forces.onSlope().map(ForcePictures::number).orElse(0.0);
    String verdict = ForcesText.verdict(forces, writing);
    return new Body(Bodies.the(forces.body()), drawn, verdict, slope);
  }

  private Force force(BodyForces.Force force) {
    String size = ValueText.number(force.size().shown(), writing);
    return new Force(force.label(), number(force.across()), number(force.up()), size);
  }

  private Force hint(BodyForces.Net net) {
    String size = ValueText.number(net.size().shown(), writing);
    return new Force(MISSING, number(net.across()), number(net.up()), size, true);
  }

  private static double number(Quantity quantity) {
    return quantity.value().doubleValue();
  }
}
