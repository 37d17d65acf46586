package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import plainscale.field.Chart;
import plainscale.field.Configuration;
import plainscale.field.Course;
import plainscale.field.Effort;
import plainscale.field.FieldValue;
import plainscale.field.Frame;
import plainscale.field.Motion;
import plainscale.field.Nature;
import plainscale.field.Surroundings;
import plainscale.field.TestCharge;
import plainscale.field.Trajectory;
import plainscale.notation.FieldStatement;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.quantity.Quantity;

/** The motion of a body in a field. */
final class Releasing {
  private static final double HIT = 1e-3;
  private static final int PIECES = 400;

  /** The frame is crossed about so often in the time that is chosen by itself. */
  private static final double CROSSINGS = 12;

  private final Showing showing;
  private final FieldValues values;
  private final FieldModel model;
  private final Effort effort;

  Releasing(Showing showing, FieldValues values, FieldModel model, Effort effort) {
    this.showing = showing;
    this.values = values;
    this.model = model;
    this.effort = effort;
  }

  Result released(FieldStatement.Release release) {
    FieldStatement.Body body = release.body();
    Configuration field = model.configuration();
    TestCharge charge = charge(body, release);
    refuseOnCharge(field, charge, body);
    Frame frame = Surroundings.of(field, charge.place());
    Optional<Double> asked =
        release.duration().map(time -> values.time(time).value().doubleValue());
    double duration = asked.orElseGet(() -> duration(field, charge, frame));
    if (!(duration > 0 && Double.isFinite(duration))) {
      throw problem("The numbers of this motion are too far apart to follow it.", body);
    }
    Trajectory trajectory = motion(field, charge, frame, duration);
    OptionalDouble period = trajectory.period();
    if (asked.isEmpty() && period.isPresent() && period.getAsDouble() < duration) {
      trajectory = motion(field, charge, frame, period.getAsDouble()); // one round shows it all
    }
    Chart chart = Chart.of(model.nature(), field, frame, Chart.Content.NOTHING, effort);
    return new FieldResult.Released(
        release.description(),
        chart,
        charge,
        body,
        trajectory,
        asked.isPresent(),
        period.isPresent() ? period.getAsDouble() : null,
        showing.writing());
  }

  private Trajectory motion(Configuration field, TestCharge charge, Frame frame, double duration) {
    Course course = new Course(frame, duration, HIT * frame.diagonal(), false, PIECES);
    return Motion.of(field, charge, course, effort);
  }

  private TestCharge charge(FieldStatement.Body body, FieldStatement.Release release) {
    double mass = number(values.mass(body.mass()));
    Vector3D place = values.place(body.at()).place();
    Vector3D velocity = body.velocity().map(v -> values.velocity(v).place()).orElse(Vector3D.ZERO);
    if (model.nature() == Nature.GRAVITATIONAL) {
      return TestCharge.mass(mass, place, velocity);
    }
    if (body.charge().isEmpty()) {
      throw showing.problem(
          Problem.Kind.NAME,
          "“%s” is the field of charges; what is released in it has a charge, too."
              .formatted(release.field().text()),
          release.span(),
          List.of("release charge q mass …"));
    }
    double charge = number(values.charge(body.charge().orElseThrow()));
    return new TestCharge(charge, mass, place, velocity);
  }

  private void refuseOnCharge(Configuration field, TestCharge charge, FieldStatement.Body body) {
    if (field.at(charge.place()) instanceof FieldValue.Singular singular) {
      throw problem(
          "The body starts on a source of the field (%s), where the field is not defined."
              .formatted(model.nature().said(singular.on().name())),
          body);
    }
    double hit = HIT * Surroundings.of(field, charge.place()).diagonal();
    boolean close =
        field.sources().stream()
            .anyMatch(
                source -> Vector3D.distance(charge.place(), source.nearest(charge.place())) <= hit);
    if (close) {
      throw problem(
          "The body starts so close to a source that it counts as running into it.", body);
    }
  }

  private ProblemException problem(String sentence, FieldStatement.Body body) {
    return showing.problem(
        Problem.Kind.VALUE,
        sentence,
        body.at().span(),
        List.of("start it somewhere else, a little aside"));
  }

  /** From the speed at the start and the one that the field there gives on the way. */
  private double duration(Configuration field, TestCharge charge, Frame frame) {
    double push = Math.abs(charge.charge()) * field.field(charge.place()).getNorm() / charge.mass();
    double speed = charge.velocity().getNorm() + Math.sqrt(push * frame.diagonal());
    return speed > 0 ? CROSSINGS * frame.diagonal() / speed : 1;
  }

  private static double number(Quantity quantity) {
    return FieldPresenter.number(quantity);
  }
}
