package plainscale.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter out = new StringWriter();

  @Test
  void aTerminalSeesABarThatGoesAway() {
    Progress progress = new Progress(new PrintWriter(out), true);
    progress.show("Lesson", 1, 2);
    assertTrue(out.toString().contains("████████████············ 1/2 Lesson"), out.toString());
    progress.done("Lesson: done");
    assertTrue(
        out.toString().endsWith("\r\u001B[KLesson: done" + System.lineSeparator()), out.toString());
  }

  @Test
  void elsewhereOnlyTheLineThatStaysIsWritten() {
    Progress progress = new Progress(new PrintWriter(out), false);
    progress.show("Lesson", 1, 2);
    progress.done("Lesson: done");
    assertEquals("Lesson: done" + System.lineSeparator(), out.toString());
  }
}
