package plainscale.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import plainscale.field.Chart;
import plainscale.field.Configuration;
import plainscale.field.Contour;
import plainscale.field.Contouring;
import plainscale.field.Effort;
import plainscale.field.FieldLines;
import plainscale.field.Frame;
import plainscale.field.Levels;
import plainscale.field.LineMap;
import plainscale.field.Nature;
import plainscale.field.PointCharge;
import plainscale.field.PotentialGrid;
import plainscale.field.Relief;
import plainscale.field.Spread;
import plainscale.magnitude.Writing;
import plainscale.picture.SvgWriter;
import plainscale.picture.field.FieldMap;
import plainscale.picture.field.ReliefMap;

/** Milliseconds for the map of ten charges: a grid, twelve equipotentials, a hundred lines. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Threads(1)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class FieldMapBenchmark {
  private static final Frame FRAME = new Frame(-0.8, -0.6, 0.8, 0.6);
  private static final Configuration TEN = Configuration.of(8.9875517862e9, charges());
  private static final PotentialGrid GRID = grid();
  private static final Levels LEVELS = Levels.suited(GRID, 12);

  private static List<PointCharge> charges() {
    Random random = new Random(10);
    List<PointCharge> charges = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      double x = 1.2 * (random.nextDouble() - 0.5);
      double y = 0.9 * (random.nextDouble() - 0.5);
      charges.add(PointCharge.at(x, y, i % 2 == 0 ? 1e-9 : -1e-9));
    }
    return charges;
  }

  private static Effort effort() {
    return Effort.usual(() -> false);
  }

  @Benchmark
  public static PotentialGrid grid() {
    return PotentialGrid.of(TEN, FRAME, 200, 150, effort());
  }

  @Benchmark
  public static List<Contour> equipotentials() {
    return Contouring.of(GRID, LEVELS, effort());
  }

  @Benchmark
  public static FieldLines lines() {
    return LineMap.of(TEN, FRAME, 16e9, Spread.EQUAL_ANGLES, effort());
  }

  @Benchmark
  public static Object wholeMap() {
    PotentialGrid grid = grid();
    List<Contour> contours = Contouring.of(grid, Levels.suited(grid, 12), effort());
    return List.of(contours, lines());
  }

  /** What a cell does for a map: lines, equipotentials, null points, scene, SVG. */
  @Benchmark
  public static String mapToSvg() {
    Chart chart = Chart.of(Nature.ELECTRIC, TEN, FRAME, Chart.Content.LINES, effort());
    return SvgWriter.write(FieldMap.of("", chart, Writing.USUAL));
  }

  /** The same for a relief. */
  @Benchmark
  public static String reliefToSvg() {
    PotentialGrid grid = Chart.grid(TEN, FRAME, 64, effort());
    Levels levels = Levels.suited(grid, 12);
    double highest = levels.values().get(levels.values().size() - 1);
    Relief relief = Relief.of(grid, levels.values().get(0), highest);
    return SvgWriter.write(ReliefMap.of("", Nature.ELECTRIC, relief, levels, Writing.USUAL));
  }
}
