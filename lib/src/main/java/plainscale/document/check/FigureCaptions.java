package plainscale.document.check;

import java.util.List;
import java.util.stream.Stream;
import plainscale.notation.Figure;
import plainscale.notation.Statement;

/** Pictures without a number in a lesson that numbers others. */
record FigureCaptions() implements Rule {
  @Override
  public String name() {
    return "figure";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.lines(Figure.class).findAny().isEmpty()
        ? Stream.empty()
        : lesson.code().flatMap(cell -> check(lesson.lines(cell)));
  }

  private Stream<Finding> check(List<CheckedLesson.Line> lines) {
    boolean numbered = lines.stream().anyMatch(line -> line.statement() instanceof Figure);
    return numbered
        ? Stream.empty()
        : lines.stream()
            .filter(FigureCaptions::isPicture)
            .limit(1)
            .map(
                line ->
                    CheckedLesson.at(line)
                        .remark(
                            this,
                            "Other pictures of the lesson have a number and a caption, and this one has none.",
                            "write figure, a name and a caption in quotation marks on the line after it"));
  }

  /** Numbers that are set against each other, and pairs of forces, are read where they stand. */
  private static boolean isPicture(CheckedLesson.Line line) {
    boolean inPlace =
        line.statement() instanceof Statement.Contrast
            || line.statement() instanceof Statement.Near
            || line.statement() instanceof Statement.Pairs;
    return line.read().drawing() && !inPlace;
  }
}
