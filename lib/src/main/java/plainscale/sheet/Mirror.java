package plainscale.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plainscale.notation.Acting;
import plainscale.notation.Direction;
import plainscale.notation.Expr;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/**
 * The forces on a body that is the mirror image of another in an upright plane: left is right, an
 * angle is what it lacks of 180°, and what each exerts on the other changes its name.
 */
final class Mirror {
  private static final UnitOfMeasure DEGREE = UnitParser.parse("°");
  private static final BigDecimal STRAIGHT = BigDecimal.valueOf(180);

  private final Statement.Forces image;
  private final Statement.Forces original;

  private Mirror(Statement.Forces image, Statement.Forces original) {
    this.image = image;
    this.original = original;
  }

  /** The image's forces, written out in the names of the original. */
  static Statement.Forces of(Statement.Forces image, Statement.Forces original) {
    return new Mirror(image, original).forces();
  }

  private Statement.Forces forces() {
    Expr slope = original.onSlope().map(Mirror::turned).orElse(null);
    List<Acting> acting = original.acting().stream().map(this::mirrored).toList();
    return new Statement.Forces(image.span(), image.body(), null, slope, acting, image.edition());
  }

  private Acting mirrored(Acting force) {
    return new Acting(
        force.label(), force.size(), mirrored(force.pointing()), agent(force.agent().orElse(null)));
  }

  private static Acting.Pointing mirrored(Acting.Pointing pointing) {
    if (pointing instanceof Acting.Along along) {
      return new Acting.Along(turned(along.angle()));
    }
    Direction direction = ((Acting.Towards) pointing).direction();
    boolean level = direction == Direction.LEFT || direction == Direction.RIGHT;
    return new Acting.Towards(level ? direction.opposite() : direction);
  }

  private static Expr turned(Expr angle) {
    Span span = angle.span();
    Expr straight = new Expr.Literal(span, STRAIGHT, DEGREE, true);
    return new Expr.Binary(span, Expr.Operator.MINUS, straight, angle, span);
  }

  private @Nullable String agent(@Nullable String agent) {
    boolean other = agent != null && Bodies.isSame(agent, image.body().text());
    return other ? original.body().text() : agent;
  }
}
