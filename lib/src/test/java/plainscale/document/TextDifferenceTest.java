package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A small change of a lesson is a small change of both its files. */
class TextDifferenceTest {
  private static final String TEXT =
      """
      ---
      plainscale: 1
      title: One drop
      minutes: 45
      ---

      # One drop of water

      A drop is a small thing.
      It has many molecules.

      ```plainscale givens role: measurement
      given m = 0.050 g "mass of one drop"
      given M = 18.0 g/mol "molar mass"
      ```

      <!-- cell role: question -->
      How many molecules are in it?

      ```plainscale
      N = m N_A/M "molecules in the drop"
      ```
      """;

  private Lesson before;

  @BeforeEach
  void read() throws LessonException {
    before = Lesson.parse("drop.md", TEXT);
  }

  /** The lines of one text that are not in the other at their place, by the longest common part. */
  private static List<String> changed(String from, String to) {
    List<String> one = from.lines().toList();
    List<String> two = to.lines().toList();
    int[][] common = new int[one.size() + 1][two.size() + 1];
    for (int i = one.size() - 1; i >= 0; i--) {
      for (int j = two.size() - 1; j >= 0; j--) {
        common[i][j] =
            one.get(i).equals(two.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    List<String> changed = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < one.size() || j < two.size()) {
      if (i < one.size() && j < two.size() && one.get(i).equals(two.get(j))) {
        i++;
        j++;
      } else if (j == two.size() || (i < one.size() && common[i + 1][j] >= common[i][j + 1])) {
        changed.add("- " + one.get(i++).strip());
      } else {
        changed.add("+ " + two.get(j++).strip());
      }
    }
    return changed;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "small thing     | tiny thing",
        "It has many     | It has countless",
        "0.050 g         | 0.048 g",
        "18.0            | 18.02",
        "molar mass      | mass of a mole",
        "in it?          | within?",
        "\"molecules in  | \"particles in",
        "title: One drop | title: A drop",
        "minutes: 45     | minutes: 40",
        "role: question  | role: caution"
      })
  void anotherWordIsOneLineOfTheTextAndOneOfTheNotebook(String word, String other)
      throws LessonException {
    Lesson after = Lesson.parse("drop.md", TEXT.replace(word, other));
    assertEquals(2, changed(before.text(), after.text()).size());
    assertEquals(2, changed(before.notebook(), after.notebook()).size());
  }

  @Test
  void aFirstWordIsTheNameOfItsCellToo() throws LessonException {
    Lesson after = Lesson.parse("drop.md", TEXT.replace("One drop of", "A drop of"));
    assertEquals(
        List.of(
            "- \"id\": \"one-drop-of-water\",",
            "+ \"id\": \"a-drop-of-water\",",
            "- \"# One drop of water\\n\",",
            "+ \"# A drop of water\\n\","),
        changed(before.notebook(), after.notebook()));
  }

  @Test
  void aNewCellIsItsOwnLinesOnly() throws LessonException {
    String cell = "```plainscale\nn = m/M \"amount\"\n```\n\n";
    int place = TEXT.indexOf("<!-- cell");
    Lesson after = Lesson.parse("drop.md", TEXT.substring(0, place) + cell + TEXT.substring(place));
    assertEquals(
        List.of("+ ```plainscale", "+ n = m/M \"amount\"", "+ ```", "+ "),
        changed(before.text(), after.text()));
    List<String> notebook = changed(before.notebook(), after.notebook());
    assertEquals(10, notebook.size(), notebook.toString());
    assertEquals(List.of(), notebook.stream().filter(line -> line.startsWith("-")).toList());
  }

  @Test
  void twoCellsThatChangePlacesAreMovedLines() throws LessonException {
    List<LessonCell> cells = new ArrayList<>(before.cells());
    cells.add(cells.remove(1));
    String moved = new Lesson("drop.md", before.metadata(), cells).text();
    List<String> changed = changed(before.text(), moved);
    assertEquals(10, changed.size(), changed.toString());
  }

  @Test
  void aTextThatWasWrittenComesBackToTheByte() throws LessonException {
    assertEquals(TEXT, before.text());
    assertEquals(TEXT, Lesson.parse("drop.ipynb", before.notebook()).text());
    assertEquals(
        before.notebook(), Lesson.parse("drop.md", before.text()).notebook(), "the notebook too");
  }
}
