package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lessons with slips of the keyboard: they are read, or refused in a sentence. */
class TextFuzzTest {
  private static final int MUTATIONS = 4000;
  private static final int MOST_SLIPS = 4;

  private static final String TEXT =
      """
      ---
      plainscale: 1
      title: "Two balls: a charge"
      minutes: 45
      aims:
      - weigh
      - count
      hazards: [electrostatics]
      metadata:
        kernelspec: {display_name: Plainscale, language: plainscale, name: plainscale}
        tags: [a, 1, null]
      ---

      # Title

      Words, *more* words.

      - item

      ```python
      print("prose")
      ```

      ```plainscale givens role: measurement, minutes: 5
      given m = 2.70 ± 0.05 g "mass"
      ```

      <!-- cell role: question, lines: 3, blank: {student: all} -->
      How many?

      ```attachment name: drop.png, type: image/png
      iVBORw0KGgoAAAA=
      ```

      ````text-cell metadata: {"a b": 1}
      ```plainscale
      ````

      ```raw-cell
      \\begin{x}
      ```

      ```plainscale
      w = m g_n
      ```
      """;

  private static final List<String> SLIPS =
      List.of(
          "",
          "\n",
          "\n\n",
          " ",
          "\t",
          "\r\n",
          "`",
          "```",
          "````",
          "~~~",
          "---",
          ":",
          ": ",
          ",",
          "-",
          "\"",
          "'",
          "{",
          "}",
          "[",
          "]",
          "#",
          "&a",
          "*a",
          "!",
          "|",
          ">",
          "%",
          "@",
          "<!--",
          "-->",
          "<pre>",
          "cell",
          "plainscale",
          "text-cell",
          "attachment",
          "metadata:",
          "role: note",
          "1",
          "\0",
          "\uFEFF",
          "\ud83d",
          "é",
          "\u0085",
          "\u2028",
          "\\",
          "<!-- cell -->",
          "```plainscale\n");

  private final Random random = new Random(20261127);

  private String mutated(String text) {
    StringBuilder mutated = new StringBuilder(text);
    int slips = 1 + random.nextInt(MOST_SLIPS);
    for (int i = 0; i < slips; i++) {
      int from = random.nextInt(mutated.length() + 1);
      int to = Math.min(mutated.length(), from + reach());
      String put =
          random.nextInt(4) == 0
              ? mutated.substring(from, Math.min(mutated.length(), from + 40)).repeat(2)
              : SLIPS.get(random.nextInt(SLIPS.size()));
      mutated.replace(from, to, put);
    }
    return mutated.toString();
  }

  /** Mostly a sign or none, at times some lines. */
  private int reach() {
    return random.nextInt(5) == 0 ? random.nextInt(120) : random.nextInt(3);
  }

  @Test
  void aTextWithSlipsIsReadAndWrittenOrRefusedInASentence() {
    int read = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      String text = mutated(TEXT);
      try {
        Lesson lesson = Lesson.parse("slip.md", text);
        read++;
        String written = lesson.text();
        Lesson again = Lesson.parse("slip.md", written);
        assertEquals(contents(lesson), contents(again), text);
        assertEquals(written, again.text(), text);
        assertEquals(written, Lesson.parse("slip.ipynb", lesson.notebook()).text(), text);
      } catch (LessonException e) {
        assertTrue(e.sentence().startsWith("slip.md"), e.sentence());
        assertTrue(e.sentence().endsWith("."), e.sentence());
      }
    }
    assertTrue(read > MUTATIONS / 8 && read < MUTATIONS, read + " were read");
  }

  private static List<String> contents(Lesson lesson) {
    return lesson.cells().stream()
        .map(cell -> cell.getClass() + cell.id() + cell.source() + LessonJson.line(cell.metadata()))
        .toList();
  }

  @Test
  void aNotebookWithSlipsIsReadOrRefusedInASentence() throws LessonException {
    String notebook = Lesson.parse("slip.md", TEXT).notebook();
    int read = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      try {
        Lesson.parse("slip.ipynb", mutated(notebook)).text();
        read++;
      } catch (LessonException e) {
        assertTrue(e.sentence().startsWith("slip.ipynb"), e.sentence());
      }
    }
    assertTrue(read > MUTATIONS / 20 && read < MUTATIONS, read + " were read");
  }
}
