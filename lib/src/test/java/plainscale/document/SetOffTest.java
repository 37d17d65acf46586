package plainscale.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainscale.laws.Hazard;
import plainscale.laws.Hazards;

/** The cautions that the values of a lesson set off. */
class SetOffTest {
  private static final String HOT = "given T = 80 °C \"water\"";
  private static final String DOME = "given W = 0.75 J \"energy stored on the dome\"";

  private static List<String> setOff(String... cells) throws LessonException {
    Notebooks notebook = new Notebooks();
    for (String cell : cells) {
      notebook.code(cell);
    }
    return WorkedLesson.run(notebook.lesson(), done -> {}).setOff().stream()
        .map(Hazard::name)
        .toList();
  }

  @Test
  void eachHazardIsThereOnceInTheOrderOfTheCells() throws LessonException {
    assertEquals(
        List.of("hot_water", "electrostatic_generator"),
        setOff(HOT, "given x = 3 m", DOME, "given T_2 = 90 °C \"water\""));
    assertEquals(List.of(), setOff("given x = 3 m", "caution latex"));
  }

  @Test
  void theHandoutShowsCautionsWithTheirHeading() throws LessonException {
    String html = new Notebooks().code("caution latex\n" + HOT).handout();
    String title = Hazards.find("latex").orElseThrow().title();
    assertTrue(html.contains("<b>Caution: " + title + "</b><br/>"), html);
    assertTrue(html.contains(Hazards.LAST_WORD), html);
    assertTrue(
        html.contains("<b>Caution (hot water, steam and hot surfaces):</b> T = 80 °C"), html);
  }
}
