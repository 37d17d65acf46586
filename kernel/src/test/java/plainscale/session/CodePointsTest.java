package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodePointsTest {

  @ParameterizedTest
  @ValueSource(strings = {"", "plain", "θ²", "𝜃𝜃", "a𝜃b🧲c", "half \uD835 pair"})
  void everyCodePointPositionSurvivesTheWayThereAndBack(String text) {
    int count = (int) text.codePoints().count();
    for (int i = 0; i <= count; i++) {
      assertEquals(i, CodePoints.fromUtf16(text, CodePoints.toUtf16(text, i)));
    }
  }

  @Test
  void positionsOutsideGoToTheNearerEnd() {
    assertEquals(0, CodePoints.toUtf16("𝜃x", -5));
    assertEquals(3, CodePoints.toUtf16("𝜃x", 99));
    assertEquals(0, CodePoints.fromUtf16("𝜃x", -5));
    assertEquals(2, CodePoints.fromUtf16("𝜃x", 99));
  }
}
