package plainscale.field;

import java.util.ArrayList;
import java.util.List;

/** How the lines of a charge are spread over the directions in which they can start. */
public enum Spread {
  /**
   * At equal angles in the plane. The count of lines is in proportion to the charge where they
   * start; how many arrive elsewhere is not, since the flux goes through space.
   */
  EQUAL_ANGLES {
    @Override
    List<Double> shares(int lines) {
      List<Double> shares = new ArrayList<>();
      for (int i = 0; i < lines; i++) {
        shares.add((i + 0.5) / lines);
      }
      return shares;
    }
  },
  /**
   * At equal steps of the cosine of the angle to the line through all charges. Turned about that
   * line, each field line then bounds as much flux as any other, so that lines are in proportion to
   * charge where they arrive, too. Only for point charges and spheres on one line.
   */
  EQUAL_FLUX {
    @Override
    List<Double> shares(int lines) {
      List<Double> shares = new ArrayList<>();
      int half = (lines + 1) / 2;
      for (int i = 0; i < half; i++) {
        double share = Math.acos(1 - (2 * i + 1.0) / half) / (2 * Math.PI);
        shares.add(share);
        shares.add(1 - share);
      }
      return shares;
    }
  };

  /** The starting places as shares of a full turn. */
  abstract List<Double> shares(int lines);
}
