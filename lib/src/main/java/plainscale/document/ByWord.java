package plainscale.document;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/** Finds what a word stands for. */
final class ByWord {
  private ByWord() {}

  static <T> Optional<T> find(T[] values, Function<T, String> word, String wanted) {
    return Arrays.stream(values).filter(value -> word.apply(value).equals(wanted)).findFirst();
  }
}
