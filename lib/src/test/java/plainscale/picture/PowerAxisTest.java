package plainscale.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerAxisTest {
  @ParameterizedTest
  @CsvSource({"3, 5, 1", "11.5, 23.9, 3", "-20, 20, 5", "-34, 30, 10", "-99, 99, 30"})
  void powersAreLabelledAsThereIsRoom(double lowest, double highest, long step) {
    assertEquals(step, PowerAxis.around(lowest, highest, 360).step());
  }

  @Test
  void anAxisOfOneNumberStillShowsFourPowers() {
    PowerAxis axis = PowerAxis.around(0.4, 0.4, 360);
    assertTrue(axis.last() - axis.first() >= 4);
    assertTrue(axis.at(0.4) > 0 && axis.at(0.4) < 360);
  }

  @Test
  void labelsStandOnTicks() {
    for (int span = 4; span < 500; span++) {
      PowerAxis axis = PowerAxis.around(-span, span / 2.0, 360);
      assertTrue(axis.labelled().allMatch(n -> axis.ticks().anyMatch(t -> t == n)));
      assertTrue(axis.labelled().count() >= 2);
    }
  }
}
