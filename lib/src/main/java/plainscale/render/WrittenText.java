package plainscale.render;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainscale.magnitude.Spelling;
import plainscale.notation.Format;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;

/** What stands below the digits of a number that is written out, the same in every medium. */
final class WrittenText {
  private WrittenText() {}

  /** The words in the form that was asked for, then what explains them. */
  static List<String> lines(Result.Numeral number) {
    Spelling words = ValueWords.of(number);
    Set<String> lines = new LinkedHashSet<>();
    lines.add(words.text());
    switch (number.style()) {
      case ORDERS -> lines.add(definition(number));
      case ROUGHLY -> lines.add(number.writing().phrases().say("roughly.rule"));
      case PARTS ->
          lines.add(ValueWords.of(number.shown(), number.exact(), number.writing()).text());
      case NUMBER, DIGITS, WORDS, FULL_WORDS -> lines.addAll(spelled(number));
    }
    words.remark().ifPresent(lines::add);
    lines.add(ContrastText.figures(ValueText.digits(number), number.exact(), number.writing()));
    return new ArrayList<>(lines);
  }

  private static List<String> spelled(Result.Numeral number) {
    Spelling full = ValueWords.spelled(number.shown(), number.writing());
    return full.inWords() ? List.of(full.text()) : List.of();
  }

  private static String definition(Result.Numeral number) {
    return ValueWords.single(number.writing()).definition(number.writing().words().language());
  }

  /** The remarks on numbers in a sentence that have no words as asked for. */
  static List<String> remarks(Result.Narrated narrated) {
    return narrated.pieces().stream()
        .filter(Piece.Live.class::isInstance)
        .map(piece -> ((Piece.Live) piece).numeral())
        .filter(number -> inWords(number.style()))
        .map(ValueWords::of)
        .map(Spelling::remark)
        .flatMap(Optional::stream)
        .distinct()
        .toList();
  }

  /** "Figure 2: two balls and their forces". */
  static String caption(Result.Captioned captioned) {
    String number = captioned.writing().phrases().say("figure", captioned.number());
    return captioned.caption().isEmpty() ? number : number + ": " + captioned.caption();
  }

  private static boolean inWords(Format.Style style) {
    return style != Format.Style.NUMBER && style != Format.Style.DIGITS;
  }
}
