package plainscale.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintableTest {
  @Test
  void textsForPeopleStayAsTheyAre() {
    for (String text :
        List.of("", "θ = 30°\n\t“x”", "\ud835\udc65", "8\u202f700\u00a0m", "e\u0301")) {
      assertEquals(text, Printable.of(text));
    }
  }

  @Test
  void whatNoPageOrTerminalShowsIsReplaced() {
    assertEquals("a\ufffdb", Printable.of("a\u0000b"));
    assertEquals("\ufffd[31m", Printable.of("\u001b[31m"));
    assertEquals("\ufffd", Printable.of("\u009b"));
    assertEquals("\ufffdx", Printable.of("\ud800x"));
    assertEquals("\ufffd", Printable.of("\uffff"));
    assertEquals("a\ufffdb", Printable.of("a\rb"));
  }

  @Test
  void lineEndsOfAnySystemAreLineEnds() {
    assertEquals("a\nb\n", Printable.of("a\r\nb\n"));
  }
}
