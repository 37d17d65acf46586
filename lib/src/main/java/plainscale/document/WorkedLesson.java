package plainscale.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import plainscale.data.DataFolder;
import plainscale.laws.Hazard;
import plainscale.sheet.GuardResult;
import plainscale.sheet.Result;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/** A lesson whose cells have been run, in order, in one sheet. */
public record WorkedLesson(Lesson lesson, List<WorkedCell> cells) {

  /** A cell and what it showed; prose shows nothing. */
  public record WorkedCell(LessonCell cell, List<Result> results) {}

  /**
   * Runs a lesson in the notation, which reads data from its own folder if it has one; {@code
   * progress} hears the number of cells that are done.
   *
   * @throws IllegalArgumentException for a lesson in Java, which needs a runner and consent
   */
  public static WorkedLesson run(Lesson lesson, IntConsumer progress) {
    if (lesson.writtenIn() != WrittenIn.NOTATION) {
      throw new IllegalArgumentException(lesson.name() + " is not in the notation");
    }
    return run(lesson, sheet(lesson)::run, progress);
  }

  /** An empty sheet that reads data from the folder of the lesson if it has one. */
  public static Sheet sheet(Lesson lesson) {
    return lesson.folder().map(DataFolder::new).map(Sheet::new).orElseGet(Sheet::new);
  }

  /** A lesson of which no cell was run. */
  public static WorkedLesson unrun(Lesson lesson) {
    return new WorkedLesson(
        lesson, lesson.cells().stream().map(cell -> new WorkedCell(cell, List.of())).toList());
  }

  /** Runs a lesson's cells with that runner. */
  public static WorkedLesson run(Lesson lesson, CellRunner runner, IntConsumer progress) {
    List<WorkedCell> cells = new ArrayList<>();
    for (LessonCell cell : lesson.cells()) {
      cells.add(new WorkedCell(cell, List.of()));
      if (cell instanceof LessonCell.Code) {
        Run run = runner.run(cell.id(), cell.source());
        show(cells, cell.id(), run.results());
        run.updates().forEach(update -> show(cells, update.cellId(), update.results()));
      }
      progress.accept(cells.size());
    }
    return new WorkedLesson(lesson, cells);
  }

  /** What a later cell changes shows in the earlier ones too, as it does in a notebook. */
  private static void show(List<WorkedCell> cells, String id, List<Result> results) {
    cells.replaceAll(c -> c.cell().id().equals(id) ? new WorkedCell(c.cell(), results) : c);
  }

  /** How many blanks the cells left to be filled in. */
  public int blanks() {
    return cells.stream()
        .flatMap(cell -> cell.results().stream())
        .filter(Result.Unfinished.class::isInstance)
        .mapToInt(result -> ((Result.Unfinished) result).blanks())
        .sum();
  }

  /** The hazards whose cautions its values set off, each once, in the order of its cells. */
  public List<Hazard> setOff() {
    return GuardResult.setOff(cells.stream().flatMap(cell -> cell.results().stream()).toList());
  }

  /** How many mistakes the cells showed. */
  public long mistakes() {
    return cells.stream()
        .flatMap(cell -> cell.results().stream())
        .filter(Result::isMistake)
        .count();
  }
}
