package plainscale.document.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plainscale.document.CellRunner;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;

/**
 * Checks a lesson by all rules.
 *
 * <pre>{@code
 * List<Finding> findings = LessonCheck.of(Lesson.read(Path.of("lesson.ipynb")));
 * }</pre>
 */
public final class LessonCheck {
  /** All rules; those that look at the lesson as a whole come first. */
  static final List<Rule> RULES =
      List.of(
          new ReaderRemarks(),
          new FormatVersion(),
          new Metadata(),
          new LessonTitle(),
          new LessonMinutes(),
          new DeclaredSettings(),
          new Cautions(),
          new CellRoles(),
          new CellsNotRun(),
          new CellMistakes(),
          new ImplausibleValues(),
          new GivenUnits(),
          new GivenDescriptions(),
          new UnusedGivens(),
          new UnusedResults(),
          new SameDescriptions(),
          new TypedNumbers(),
          new BracedNames(),
          new PictureWords(),
          new AttachedPictures(),
          new FigureCaptions());

  private LessonCheck() {}

  /** Runs the lesson and tells what was found, in the order of its cells and lines. */
  public static List<Finding> of(Lesson lesson) {
    return of(lesson, done -> {});
  }

  /** The same; {@code progress} hears how many cells have been run. */
  public static List<Finding> of(Lesson lesson, IntConsumer progress) {
    return of(lesson, Optional.empty(), progress);
  }

  /** The same; cells in Java are run by that runner, and not at all without one. */
  public static List<Finding> of(Lesson lesson, Optional<CellRunner> runner, IntConsumer progress) {
    CheckedLesson checked = CheckedLesson.run(lesson, runner, progress);
    List<Finding> findings = new ArrayList<>();
    RULES.forEach(rule -> rule.check(checked).forEach(findings::add));
    Map<String, Integer> order = checked.isText() ? Map.of() : order(lesson.cells());
    findings.sort(
        Comparator.comparingInt((Finding finding) -> order.getOrDefault(finding.cell(), -1))
            .thenComparingInt(Finding::line));
    return List.copyOf(findings);
  }

  private static Map<String, Integer> order(List<LessonCell> cells) {
    return IntStream.range(0, cells.size())
        .boxed()
        .collect(Collectors.toMap(i -> cells.get(i).id(), i -> i, (first, again) -> first));
  }

  /** What the rules are called in findings. */
  public static List<String> ruleNames() {
    return RULES.stream().map(Rule::name).toList();
  }
}
