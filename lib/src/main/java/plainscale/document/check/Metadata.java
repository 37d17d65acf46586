package plainscale.document.check;

import java.util.List;
import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.Schema;

/**
 * What the lesson and its cells say of themselves, by the published schema. In a lesson of a later
 * format what breaks the schema may be new, and is a remark.
 */
record Metadata() implements Rule {
  @Override
  public String name() {
    return "metadata";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    boolean newer = FormatVersion.isNewer(lesson);
    Stream<Finding> head =
        findings(
            lesson.whole(),
            Schema.NOTEBOOK.faults(lesson.lesson().metadata()),
            Schema.NOTEBOOK.nearMisses(lesson.lesson().metadata()),
            newer);
    return Stream.concat(
        head, lesson.lesson().cells().stream().flatMap(cell -> findings(cell, newer)));
  }

  private Stream<Finding> findings(LessonCell cell, boolean newer) {
    return findings(
        CheckedLesson.at(cell),
        Schema.CELL.faults(cell.metadata()),
        isTold(cell) ? List.of() : Schema.CELL.nearMisses(cell.metadata()),
        newer);
  }

  /** The reader of a text remarks slips in the first line of a cell. */
  private static boolean isTold(LessonCell cell) {
    return cell.line() > 0;
  }

  private Stream<Finding> findings(
      Place place, List<Schema.Fault> faults, List<Schema.Fault> nearMisses, boolean newer) {
    return Stream.concat(
        faults.stream()
            .map(
                fault ->
                    newer
                        ? place.remark(this, fault.sentence(), fault.repair())
                        : place.error(this, fault.sentence(), fault.repair())),
        nearMisses.stream().map(miss -> place.remark(this, miss.sentence(), miss.repair())));
  }
}
