package plainscale.field;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.events.EventHandler;

/** What ends a field line, and which of it did. */
final class Stops {
  private static final double PLACE_ACCURACY = 1e-9;
  private static final double CHECKS_IN_DIAGONAL = 300;
  private static final int MOST_ROUNDS = 100;

  private final LineTracer tracer;
  private final List<Integer> inReach = new ArrayList<>();
  private LineEnd end = LineEnd.Elsewhere.TOO_LONG;

  /** Charges around the start itself (a shell, a ring) do not stop the line. */
  Stops(LineTracer tracer, Vector2D start) {
    this.tracer = tracer;
    for (int i = 0; i < tracer.footprints().size(); i++) {
      if (tracer.footprints().get(i).distance(start.getX(), start.getY()) > 0) {
        inReach.add(i);
      }
    }
  }

  void addTo(AbstractIntegrator integrator, double diagonal) {
    double check = diagonal / CHECKS_IN_DIAGONAL;
    double accuracy = PLACE_ACCURACY * diagonal;
    integrator.addEventHandler(new Charge(), check, accuracy, MOST_ROUNDS);
    integrator.addEventHandler(new Edge(), check, accuracy, MOST_ROUNDS);
    integrator.addEventHandler(new Null(), 2 * check, accuracy, MOST_ROUNDS);
  }

  /** What ended the line, if something did before its greatest length. */
  LineEnd end(boolean early) {
    return early ? end : LineEnd.Elsewhere.TOO_LONG;
  }

  private int nearest(double x, double y) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i : inReach) {
      double distance = tracer.footprints().get(i).distance(x, y);
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }

  /** A stop where a function of the place goes through zero. */
  private abstract static class Stop implements EventHandler {
    abstract double above(double x, double y);

    abstract void reached(double x, double y);

    @Override
    public void init(double s, double[] place, double last) {}

    @Override
    public double g(double s, double[] place) {
      return above(place[0], place[1]);
    }

    @Override
    public Action eventOccurred(double s, double[] place, boolean increasing) {
      if (increasing) {
        return Action.CONTINUE;
      }
      reached(place[0], place[1]);
      return Action.STOP;
    }

    @Override
    public void resetState(double s, double[] place) {}
  }

  private final class Charge extends Stop {
    @Override
    double above(double x, double y) {
      int nearest = nearest(x, y);
      return nearest < 0 ? 1 : tracer.footprints().get(nearest).distance(x, y);
    }

    @Override
    void reached(double x, double y) {
      end = new LineEnd.AtCharge(nearest(x, y));
    }
  }

  private final class Edge extends Stop {
    @Override
    double above(double x, double y) {
      return tracer.frame().margin(x, y);
    }

    @Override
    void reached(double x, double y) {
      end = LineEnd.Elsewhere.FRAME;
    }
  }

  private final class Null extends Stop {
    @Override
    double above(double x, double y) {
      return tracer.aboveNull(x, y);
    }

    @Override
    void reached(double x, double y) {
      end = LineEnd.Elsewhere.NULL_POINT;
    }
  }
}
