package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.Direction;
import plainscale.quantity.Quantity;
import plainscale.sheet.BodyForces;
import plainscale.sheet.Result;

/**
 * A body and the forces on it, with their sum and a diagram on squared paper. The sum is judged by
 * the uncertainties of the forces and never mended.
 *
 * <pre>{@code
 * ForcesOn ball = forces("left ball")
 *     .weight(quantity("2.70(5) g"))
 *     .force("push", quantity("2.06 mN")).left().by("right ball")
 *     .force("thread", quantity("26.6 mN")).along("85.6°").by("hook");
 * check(ball.diagram().net().balance() != BodyForces.Balance.NONE);
 * check(ball.pictures().size() == 1);
 * }</pre>
 */
public final class ForcesOn implements Displayed {
  private final Situation situation;
  private final String body;
  private final String slope;
  private final List<String> acting;
  private final String edition;

  private ForcesOn(
      Situation situation, String body, String slope, List<String> acting, String edition) {
    this.situation = situation;
    this.body = body;
    this.slope = slope;
    this.acting = List.copyOf(acting);
    this.edition = edition;
  }

  static ForcesOn of(Situation situation, String body) {
    return new ForcesOn(situation, body, "", List.of(), "");
  }

  /** The same on a slope that rises to the right by this angle. */
  public ForcesOn onSlope(String angle) {
    return new ForcesOn(situation, body, " slope " + angle, acting, edition);
  }

  /** The same on a slope that rises to the right by this angle. */
  public ForcesOn onSlope(Quantity angle) {
    Phrase phrase = new Phrase(situation);
    String name = phrase.name(angle);
    return new ForcesOn(phrase.situation(), body, " slope " + name, acting, edition);
  }

  /** And its weight, which the Earth exerts, from its mass. */
  public ForcesOn weight(Quantity mass) {
    Phrase phrase = new Phrase(situation);
    return weight(phrase, phrase.name(mass));
  }

  /** And its weight, which the Earth exerts, from the name of its mass. */
  public ForcesOn weight(String mass) {
    return weight(new Phrase(situation), mass);
  }

  private ForcesOn weight(Phrase phrase, String mass) {
    return acting(phrase.situation(), "weight (" + mass + ") g_n down by \"Earth\"");
  }

  /** And a force of that size; where it points is said next. */
  public ForceTo force(String called, Quantity size) {
    Phrase phrase = new Phrase(situation);
    String name = phrase.name(size);
    return new ForceTo(this, phrase.situation(), Written.quoted(called) + " " + name);
  }

  /** And a force of that size, by a formula; where it points is said next. */
  public ForceTo force(String called, String size) {
    return new ForceTo(this, situation, Written.quoted(called) + " " + size);
  }

  /** What exerts the force that was said last. */
  public ForcesOn by(String agent) {
    if (acting.isEmpty()) {
      throw PhysicsException.of("“by” stands after a force.", "weight(m)");
    }
    List<String> all = new ArrayList<>(acting);
    all.set(all.size() - 1, all.get(all.size() - 1) + " by " + Written.quoted(agent));
    return new ForcesOn(situation, body, slope, all, edition);
  }

  /** The same with the force that would balance the others. */
  public ForcesOn withMissing() {
    return new ForcesOn(situation, body, slope, acting, " with missing");
  }

  /** For students: the directions, without sizes. */
  public ForcesOn withDirections() {
    return new ForcesOn(situation, body, slope, acting, " with directions");
  }

  /** For students: squared paper with a dot. */
  public ForcesOn withDot() {
    return new ForcesOn(situation, body, slope, acting, " with dot");
  }

  ForcesOn acting(Situation other, String force) {
    List<String> all = new ArrayList<>(acting);
    all.add(force);
    return new ForcesOn(other, body, slope, all, edition);
  }

  /** The situation in which these forces are declared, to go on with: other bodies, pairs. */
  public Situation situation() {
    String head = "forces on " + Written.quoted(body);
    return situation.with(head, head + slope + ": " + String.join(", ", acting) + edition);
  }

  /** And another body of the same situation. */
  public ForcesOn and(String other) {
    return of(situation(), other);
  }

  /** And another body whose forces are these with left and right exchanged. */
  public Situation mirroredBy(String other) {
    String head = "forces on " + Written.quoted(other);
    return situation().with(head, head + " mirrors " + Written.quoted(body));
  }

  /** Which of the forces that are declared here and before are action and reaction. */
  public Answer<Result.Paired> pairs() {
    return situation().pairs();
  }

  /** The result as data. */
  public Result.Forces result() {
    return Answer.first(results(), Result.Forces.class);
  }

  /** The forces, their components and their sum. */
  public BodyForces diagram() {
    return result().diagram();
  }

  @Override
  public List<Result> results() {
    return situation().results("forces on " + Written.quoted(body));
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }

  /** A force that still needs its direction. */
  public static final class ForceTo {
    private final ForcesOn forces;
    private final Situation situation;
    private final String force;

    private ForceTo(ForcesOn forces, Situation situation, String force) {
      this.forces = forces;
      this.situation = situation;
      this.force = force;
    }

    /** In a direction that has a word. */
    public ForcesOn toward(Direction direction) {
      return forces.acting(situation, force + " " + direction.word());
    }

    /** Upwards. */
    public ForcesOn up() {
      return toward(Direction.UP);
    }

    /** Downwards. */
    public ForcesOn down() {
      return toward(Direction.DOWN);
    }

    /** To the left. */
    public ForcesOn left() {
      return toward(Direction.LEFT);
    }

    /** To the right. */
    public ForcesOn right() {
      return toward(Direction.RIGHT);
    }

    /** Up the slope. */
    public ForcesOn uphill() {
      return toward(Direction.UPHILL);
    }

    /** Down the slope. */
    public ForcesOn downhill() {
      return toward(Direction.DOWNHILL);
    }

    /** Square to the slope, out of it. */
    public ForcesOn away() {
      return toward(Direction.AWAY);
    }

    /** Square to the slope, into it. */
    public ForcesOn into() {
      return toward(Direction.INTO);
    }

    /** At an angle from “right”, anticlockwise. */
    public ForcesOn along(String angle) {
      return forces.acting(situation, force + " along " + angle);
    }

    /** At an angle from “right”, anticlockwise. */
    public ForcesOn along(Quantity angle) {
      Phrase phrase = new Phrase(situation);
      String name = phrase.name(angle);
      return forces.acting(phrase.situation(), force + " along " + name);
    }

    @Override
    public String toString() {
      return force + " still needs its direction: up, down, left, right, or along an angle.";
    }
  }
}
