package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;

/** A notebook and its text hold the same lesson. */
class TextTwinTest {
  private static final int LESSONS = 1000;

  /** What a text does not hold: the digest, and what the kernel says of itself; what it adds. */
  private static ObjectNode expected(ObjectNode metadata) {
    ObjectNode expected = metadata.deepCopy();
    if (!expected.has("plainscale")) {
      expected.putObject("plainscale");
    }
    if (expected.get("plainscale") instanceof ObjectNode own) {
      own.remove("twin");
      if (!own.has("format")) {
        own.put("format", 1);
      }
    }
    return expected;
  }

  private static void assertSame(Lesson before, Lesson after, String text) {
    assertEquals(expected(before.metadata()), after.metadata(), text);
    assertEquals(before.cells().size(), after.cells().size(), text);
    for (int i = 0; i < before.cells().size(); i++) {
      LessonCell one = before.cells().get(i);
      LessonCell two = after.cells().get(i);
      assertInstanceOf(one.getClass(), two, text);
      assertEquals(one.source(), two.source(), text);
      assertEquals(one.id(), two.id(), text);
      assertEquals(one.metadata(), two.metadata(), text);
      assertEquals(attachments(one), attachments(two), text);
    }
  }

  private static ObjectNode attachments(LessonCell cell) {
    if (cell instanceof LessonCell.Prose prose) {
      return prose.attachments();
    }
    return cell instanceof LessonCell.Raw raw
        ? raw.attachments()
        : LessonJson.MAPPER.createObjectNode();
  }

  @Test
  void aThousandNastyNotebooksComeBackFromTheirTexts() throws LessonException {
    NastyLessons nasty = new NastyLessons(20261126);
    for (int i = 0; i < LESSONS; i++) {
      Lesson before = nasty.lesson();
      String text = before.text();
      Lesson after = Lesson.parse("test.md", text);
      assertSame(before, after, text);
      assertEquals(text, after.text());
      assertEquals(text, Lesson.parse("test.ipynb", after.notebook()).text());
    }
  }
}
