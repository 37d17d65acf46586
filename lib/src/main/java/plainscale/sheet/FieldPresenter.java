package plainscale.sheet;

import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import plainscale.field.Chart;
import plainscale.field.Configuration;
import plainscale.field.Effort;
import plainscale.field.Frame;
import plainscale.field.Levels;
import plainscale.field.PotentialGrid;
import plainscale.field.Relief;
import plainscale.field.Section;
import plainscale.field.Surroundings;
import plainscale.notation.FieldStatement;
import plainscale.notation.Problem;
import plainscale.notation.Span;
import plainscale.quantity.Quantity;
import plainscale.quantity.QuantityException;

/** Statements about fields to results, with the values of one wave. */
final class FieldPresenter implements FieldStatement.Visitor<Result> {
  /** Of the potentials on a relief so many at either end are cut off. */
  private static final double CUT = 0.02;

  private static final int RELIEF_COLUMNS = 64;
  private static final int LEVELS = 12;
  private static final int SAMPLES = 600;

  private final Showing showing;
  private final DeclaredFields fields;
  private final FieldValues values;

  FieldPresenter(Showing showing) {
    this.showing = showing;
    this.fields = new DeclaredFields(showing);
    this.values = new FieldValues(showing.wave(), showing.source());
  }

  @Override
  public Result declared(FieldStatement.Declared declared) {
    FieldModel model = values.model(declared);
    List<String> remarks = guarded(declared.span(), () -> model.configuration().remarks());
    List<FieldResult.Row> rows = model.parts().stream().map(FieldSource::row).toList();
    return new FieldResult.Declared(
        declared.name(),
        model.nature(),
        rows,
        declared.items(),
        remarks,
        declared.description(),
        showing.writing());
  }

  @Override
  public Result probe(FieldStatement.Probe probe) {
    FieldModel model = fields.of(probe.field());
    FieldSource.Coordinates at = values.place(probe.at());
    return guarded(
        probe.span(),
        () -> {
          Probing probing = new Probing(model, at);
          return new FieldResult.Probed(
              probe.field().text(),
              at.spot(),
              probe.at(),
              probing.values(),
              probing.remark(),
              probe.description(),
              showing.writing());
        });
  }

  @Override
  public Result map(FieldStatement.Map map) {
    FieldModel model = fields.of(map.field());
    Chart.Content content = map.vectors() ? Chart.Content.ARROWS : Chart.Content.LINES;
    return guarded(
        map.span(),
        () -> {
          Configuration field = model.configuration();
          Frame frame = map.frame().map(this::frame).orElseGet(() -> Surroundings.of(field));
          Chart chart = Chart.of(model.nature(), field, frame, content, effort());
          return new FieldResult.Mapped(map.description(), chart, showing.writing());
        });
  }

  private Frame frame(FieldStatement.Corners corners) {
    Vector3D one = values.place(corners.from()).place();
    Vector3D other = values.place(corners.to()).place();
    if (one.getX() == other.getX() || one.getY() == other.getY()) {
      throw showing.problem(
          Problem.Kind.VALUE,
          "This frame has no size: its corners are opposite each other, so that both coordinates"
              + " differ.",
          corners.span(),
          List.of("from (-5 cm, -4 cm) to (5 cm, 4 cm)"));
    }
    return new Frame(
        Math.min(one.getX(), other.getX()),
        Math.min(one.getY(), other.getY()),
        Math.max(one.getX(), other.getX()),
        Math.max(one.getY(), other.getY()));
  }

  @Override
  public Result relief(FieldStatement.Relief relief) {
    FieldModel model = fields.of(relief.field());
    return guarded(
        relief.span(),
        () -> {
          Configuration field = model.configuration();
          Frame frame = relief.frame().map(this::frame).orElseGet(() -> Surroundings.of(field));
          PotentialGrid grid = Chart.grid(field, frame, RELIEF_COLUMNS, effort());
          Levels levels = Levels.suited(grid, LEVELS);
          return new FieldResult.Reliefed(
              relief.description(), model.nature(), cut(grid, levels), levels, showing.writing());
        });
  }

  /** Cut a step beyond the extreme levels, where there is something beyond them. */
  private static Relief cut(PotentialGrid grid, Levels levels) {
    if (levels.values().isEmpty()) {
      double only = grid.quantile(CUT);
      double room = only == 0 ? 1 : Math.abs(only);
      return Relief.of(grid, only - room, only + room);
    }
    double lowest = levels.values().get(0) - levels.step();
    double highest = levels.values().get(levels.values().size() - 1) + levels.step();
    return Relief.of(grid, lowest, highest);
  }

  @Override
  public Result section(FieldStatement.Section section) {
    FieldModel model = fields.of(section.field());
    Vector3D from = values.place(section.line().from()).place();
    Vector3D to = values.place(section.line().to()).place();
    if (from.equals(to)) {
      throw showing.problem(
          Problem.Kind.VALUE,
          "A section goes from one place to another; these are the same.",
          section.line().span(),
          List.of("from (-5 cm, 0 cm) to (5 cm, 0 cm)"));
    }
    return guarded(
        section.span(),
        () ->
            new FieldResult.Sectioned(
                section.description(),
                model.nature(),
                Section.of(model.configuration(), from, to, SAMPLES + 1, effort()),
                showing.writing()));
  }

  @Override
  public Result release(FieldStatement.Release release) {
    FieldModel model = fields.of(release.field());
    return guarded(
        release.span(), () -> new Releasing(showing, values, model, effort()).released(release));
  }

  private Effort effort() {
    return Effort.usual(showing.wave().budget()::isOver);
  }

  /** What cannot be computed is told as a problem at a place. */
  private <T> T guarded(Span span, Supplier<T> computation) {
    try {
      return computation.get();
    } catch (Effort.Exhausted e) {
      boolean late = !showing.wave().budget().isStopped() && showing.wave().budget().isOver();
      String sentence =
          late ? "This cell takes too long; it was stopped." : String.valueOf(e.getMessage());
      throw showing.problem(Problem.Kind.LIMIT, sentence, span, List.of());
    } catch (QuantityException e) {
      throw showing.problem(Problem.Kind.VALUE, e.sentence(), span, List.of());
    } catch (IllegalArgumentException | IllegalStateException e) {
      String sentence = String.valueOf(e.getMessage());
      throw showing.problem(Problem.Kind.VALUE, sentence, span, List.of());
    }
  }

  /** The number of a quantity in its SI unit. */
  static double number(Quantity quantity) {
    return quantity.value().doubleValue();
  }
}
