package plainscale.document;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The first words of fences that are ours; all other fences are prose. */
enum FenceWord {
  /** A cell of code. */
  CODE("plainscale"),
  /** A cell of text that cannot stand as it is. */
  TEXT("text-cell"),
  /** A cell that is neither. */
  RAW("raw-cell"),
  /** A picture of the cell of text before it. */
  ATTACHMENT("attachment");

  private final String word;

  FenceWord(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  static List<String> words() {
    return Arrays.stream(values()).map(FenceWord::word).toList();
  }

  /** In capitals or not, since a fence that is not taken for a cell is not run. */
  static Optional<FenceWord> named(String word) {
    return ByWord.find(values(), FenceWord::word, word.toLowerCase(Locale.ROOT));
  }
}
