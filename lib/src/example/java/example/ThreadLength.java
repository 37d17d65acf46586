package example;

import static plainscale.api.Plainscale.given;
import static plainscale.api.Plainscale.measured;
import static plainscale.api.Plainscale.quantity;

import java.util.Locale;
import plainscale.api.Situation;
import plainscale.quantity.Quantity;

/**
 * How long must the threads be? Two rubbed balls hang side by side and push each other apart; their
 * distance is read to half a centimetre. The longer the threads, the further apart they hang, and
 * the better their charge is known. This program lets the threads grow until 60 nC would be found
 * within 5 %, and then says what makes the rest.
 */
public final class ThreadLength {
  private static final double WANTED = 0.05;
  private static final Quantity EXPECTED = quantity("60.0 nC");

  private ThreadLength() {}

  public static void main(String[] args) {
    Situation balls =
        given("m", "2.70 ± 0.05 g", "mass of one ball")
            .relation("balance", "k_e q^2/d^2 = m g_n d/(2*s)", "push over weight = slope of thread");
    double thread = 0.15; // in metres
    Situation planned;
    double share;
    do {
      thread += 0.15;
      planned = balls.given("s", measured(thread, 0.002, "m"), "thread");
      planned = planned.given("d", read(planned), "centre to centre");
      Quantity charge = planned.solveFor("q").value();
      share = charge.uncertaintyIn("nC") / charge.valueIn("nC");
      print("%.2f m of thread: %.1f cm apart, the charge to %.1f %%", thread, apart(planned), share);
    } while (share > WANTED);
    System.out.println(planned.solveFor("q").in("nC").situation().budget("q"));
  }

  /** What a class would read off the ruler if the charge were as expected. */
  private static Quantity read(Situation planned) {
    Quantity distance = planned.given("q", EXPECTED).solveFor("d").value();
    return measured(distance.valueIn("cm"), 0.5, "cm");
  }

  private static double apart(Situation planned) {
    return planned.value("d").valueIn("cm");
  }

  private static void print(String form, double thread, double apart, double share) {
    System.out.println(String.format(Locale.ROOT, form, thread, apart, 100 * share));
  }
}
