package plainscale.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.document.Lesson;
import plainscale.document.LessonException;
import plainscale.document.check.Finding;
import plainscale.document.check.LessonCheck;
import plainscale.document.check.Severity;

/** What {@code check --strict} counts is in none of the lessons that ship. */
class ShippedLessonsCheckTest {
  static List<LessonsTest.Shipped> lessons() {
    return LessonsTest.lessons();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void hasNoErrorsAndNoWarnings(LessonsTest.Shipped lesson) throws LessonException {
    List<Finding> findings = LessonCheck.of(Lesson.parse(lesson.file(), lesson.text()));
    assertEquals(
        List.of(),
        findings.stream().filter(finding -> finding.severity() != Severity.REMARK).toList());
  }
}
