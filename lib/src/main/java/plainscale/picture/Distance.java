package plainscale.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Writing;

/** How far apart the smallest and the largest number of a picture are, in words. */
record Distance(Ratio ratio, int numbers, Writing writing) {

  static Distance of(Marks marks, Writing writing) {
    return new Distance(marks.outermost(), marks.main().size(), writing);
  }

  /** "about 12 orders of magnitude". */
  String orders() {
    return ratio.ordersText(writing);
  }

  /** What orders of magnitude are, where it is not the usual. */
  Optional<String> definition() {
    return Optional.of(writing.orders())
        .filter(orders -> orders != Orders.RATIO)
        .map(orders -> orders.definition(writing.words().language()))
        .map(meant -> writing.phrases().say("picture.definition", meant));
  }

  /** Both, as a sentence of a text alternative. */
  String sentence() {
    String said = writing.phrases().say("picture.distance", orders(), times());
    return definition().map(meant -> said + " " + meant).orElse(said);
  }

  /** "the larger is about 2.5 trillion (2.5 × 10¹²) times the smaller". */
  String times() {
    if (ratio.value().compareTo(BigDecimal.ONE) == 0) {
      return writing.phrases().say("picture.same", numbers);
    }
    if (new Mark("", ratio.value(), "").isEveryday()) {
      return times("picture.times", Digits.of(ratio.value(), writing.digits()).text(), "");
    }
    String words = Captions.named(ratio.value(), writing);
    String power = ratio.powerOfTen().text(writing.digits());
    // A number without a name is a power of ten already.
    return times(words.equals(power) ? "picture.times" : "picture.times.power", words, power);
  }

  private String times(String key, String number, String power) {
    Agreement agreement = Agreement.of(number, ratio.value(), writing.words());
    return writing.phrases().say(key, numbers, number, agreement, power);
  }

  /** Both as lines under a picture. */
  List<TextBlock.Line> lines() {
    return List.of(
        new TextBlock.Line(orders(), Theme.VALUE), new TextBlock.Line(times(), Theme.WORDS));
  }
}
