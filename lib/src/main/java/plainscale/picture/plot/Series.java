package plainscale.picture.plot;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import plainscale.picture.Stroke;

/** Something that a plot shows, in the numbers of its axes. An empty name has no legend. */
public sealed interface Series {

  /** What it is, for the legend. */
  String name();

  /** The numbers across that must be on the axis. */
  DoubleStream across();

  /** The numbers upwards that must be on the axis. */
  DoubleStream up();

  /** Calls the method for this kind of series. */
  <R> R accept(Visitor<R> visitor);

  /** One method for each kind of series. */
  interface Visitor<R> {
    R points(Points points);

    R curve(Curve curve);

    R band(Band band);

    R bars(Bars bars);

    R level(Level level);
  }

  /** A place with its standard uncertainties; 0 where there is none. */
  record Spot(double x, double y, double ux, double uy) {
    /** A place without uncertainty. */
    public Spot(double x, double y) {
      this(x, y, 0, 0);
    }
  }

  /** The marks for points, which differ by form. */
  enum Mark {
    DISC,
    RING,
    SQUARE,
    CROSS
  }

  /** Points with bars of one standard uncertainty. */
  record Points(String name, List<Spot> spots, Mark mark) implements Series {
    /** Keeps its own copy of the places. */
    public Points {
      spots = List.copyOf(spots);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.points(this);
    }

    @Override
    public DoubleStream across() {
      return spots.stream().flatMapToDouble(s -> DoubleStream.of(s.x - s.ux, s.x + s.ux));
    }

    @Override
    public DoubleStream up() {
      return spots.stream().flatMapToDouble(s -> DoubleStream.of(s.y - s.uy, s.y + s.uy));
    }
  }

  /** A curve through places in order. */
  record Curve(String name, List<Spot> spots, Stroke stroke) implements Series {
    /** Keeps its own copy of the places. */
    public Curve {
      spots = List.copyOf(spots);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.curve(this);
    }

    @Override
    public DoubleStream across() {
      return spots.stream().mapToDouble(Spot::x);
    }

    @Override
    public DoubleStream up() {
      return spots.stream().mapToDouble(Spot::y);
    }
  }

  /** The room between two curves over the same places. */
  record Band(String name, List<Spot> lower, List<Spot> upper) implements Series {
    /** Keeps its own copies of the places. */
    public Band {
      lower = List.copyOf(lower);
      upper = List.copyOf(upper);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.band(this);
    }

    @Override
    public DoubleStream across() {
      return lower.stream().mapToDouble(Spot::x);
    }

    @Override
    public DoubleStream up() {
      return Stream.concat(lower.stream(), upper.stream()).mapToDouble(Spot::y);
    }
  }

  /** Bars side by side, each from an edge to the next; one edge more than heights. */
  record Bars(String name, List<Double> edges, List<Double> heights) implements Series {
    /** Keeps its own copies of the numbers. */
    public Bars {
      edges = List.copyOf(edges);
      heights = List.copyOf(heights);
      if (edges.size() != heights.size() + 1) {
        throw new IllegalArgumentException(
            edges.size() + " edges do not bound " + heights.size() + " bars.");
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bars(this);
    }

    @Override
    public DoubleStream across() {
      return edges.stream().mapToDouble(Double::doubleValue);
    }

    @Override
    public DoubleStream up() {
      return DoubleStream.concat(
          DoubleStream.of(0), heights.stream().mapToDouble(Double::doubleValue));
    }
  }

  /** A straight line across the plot at a value, upright or level. */
  record Level(String name, double value, boolean upright, Stroke stroke) implements Series {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.level(this);
    }

    @Override
    public DoubleStream across() {
      return upright ? DoubleStream.of(value) : DoubleStream.empty();
    }

    @Override
    public DoubleStream up() {
      return upright ? DoubleStream.empty() : DoubleStream.of(value);
    }
  }
}
