package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainscale.quantity.Quantities.q;
import static plainscale.quantity.Quantities.text;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What comes from one source and cancels leaves nothing, not the dust of binary arithmetic. */
class CancellingTest {

  @Test
  void sineAndCosineSquaredAreOneWithoutUncertainty() {
    Random random = new Random(13);
    for (int i = 0; i < 200; i++) {
      Quantity x = q(1 + random.nextInt(89) + "±1 °");
      Quantity sin = x.apply(ElementaryFunction.SIN);
      Quantity cos = x.apply(ElementaryFunction.COS);
      Quantity one = sin.times(sin).plus(cos.times(cos));
      assertEquals(0.0, one.uncertainty().standard());
      assertEquals("1", text(one));
    }
  }

  @Test
  void aRealSmallRestStays() {
    Quantity x = q("5.0±0.1 m");
    Quantity most = q("0.9999999999").times(x);
    assertEquals(1e-11, x.minus(most).uncertainty().standard(), 1e-16);
  }
}
