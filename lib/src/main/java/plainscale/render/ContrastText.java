package plainscale.render;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;
import plainscale.notation.Printer;
import plainscale.sheet.Result;

/** The sentences of a contrast, the same in every medium. */
final class ContrastText {
  private final Result.Contrasted contrast;
  private final Writing writing;
  private final Phrases phrases;
  private final Words words;

  ContrastText(Result.Contrasted contrast) {
    this.contrast = contrast;
    this.writing = contrast.writing();
    this.phrases = writing.phrases();
    this.words = writing.words();
  }

  /** What a side is called: its description, else its name, else its formula. */
  static String name(Result.Side side) {
    Result.Label label = side.label();
    if (!label.description().isEmpty()) {
      return label.description();
    }
    return label.name().or(() -> label.formula().map(Printer::print)).orElse("");
  }

  /**
   * "The second is 1.9 trillion times the first: about 12 orders of magnitude (ratio in powers of
   * ten)."
   */
  String comparison() {
    if (ratio().value().compareTo(BigDecimal.ONE) == 0) {
      return phrases.say("same");
    }
    String times = words.mixed(ratio().value()).text();
    String orders = ratio().ordersText(writing);
    String definition = writing.orders().definition(words.language());
    String comparison = phrases.say("comparison", larger(), times, smaller(), agreement(times));
    return phrases.say("comparison.orders", comparison, orders, definition);
  }

  private Agreement agreement(String times) {
    return Agreement.of(times, ratio().value(), words);
  }

  private Ratio ratio() {
    return contrast.ratio();
  }

  /** Counts are told one by one, other quantities by parts. */
  Optional<String> share() {
    if (ratio().value().compareTo(BigDecimal.TEN) < 0) {
      return Optional.empty();
    }
    String many = words.mixed(ratio().value()).text();
    return Optional.of(
        contrast.counts()
            ? phrases.say("for-every-one", smaller(), many, larger(), agreement(many))
            : phrases.say("one-part", smaller(), many, larger(), agreement(many)));
  }

  private int larger() {
    return 1 + place(true);
  }

  private int smaller() {
    return 1 + place(false);
  }

  private int place(boolean largest) {
    List<BigDecimal> sizes =
        contrast.sides().stream().map(side -> side.shown().value().abs()).toList();
    int place = 0;
    for (int i = 1; i < sizes.size(); i++) {
      int order = sizes.get(i).compareTo(sizes.get(place));
      // Of equal ones the last counts as the largest, so that the two places differ.
      if (largest ? order >= 0 : order < 0) {
        place = i;
      }
    }
    return place;
  }

  /** The ratio in full digits. */
  Digits digits() {
    return Digits.of(ratio().value(), writing.digits());
  }

  /** The ratio as a power of ten with its uncertainty, where that says more than the digits. */
  Optional<String> power() {
    String written = ValueText.number(contrast.times(), writing);
    return written.equals(digits().text()) ? Optional.empty() : Optional.of(written);
  }

  /** What a reader should know about the comparison. */
  List<String> remarks() {
    return contrast.remarks().stream()
        .sorted()
        .map(remark -> phrases.say("remark." + remark))
        .toList();
  }

  String ratioLabel() {
    return phrases.say("ratio");
  }

  /** One line that makes the largest of counts graspable, or the ratio of other quantities. */
  Optional<String> perspective() {
    return contrast
        .perspective()
        .map(
            line ->
                phrases.say(
                    "perspective",
                    line.rule().name(),
                    line.text(words),
                    contrast.counts() ? larger() : 0));
  }

  /** The uncertain form of a side, where it has one: "(4.19 ± 0.23) × 10¹¹". */
  Optional<String> uncertain(Result.Side side) {
    return side.shown().uncertainty().map(u -> ValueText.number(side.shown(), writing));
  }

  /** "3 significant figures, 9 zeros that keep the place". */
  static String figures(Digits digits, boolean exact, Writing writing) {
    if (exact) {
      return writing.phrases().say("figures.exact");
    }
    return digits.zeros() == 0
        ? writing.phrases().say("figures", digits.significantFigures())
        : writing.phrases().say("figures.zeros", digits.significantFigures(), digits.zeros());
  }
}
