package plainscale.lessons;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import plainscale.magnitude.Ratio;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;

/** The values in results, in words: whatever record holds a value that is shown, or a ratio. */
final class Spelled {
  private static final int DEEPEST = 8;

  private final Set<String> words = new TreeSet<>();
  private Words language = Words.ENGLISH;

  private Spelled() {}

  /** All of them, several words each: “419 billion”, “four hundred nineteen billion”. */
  static Set<String> in(List<Result> results) {
    Spelled spelled = new Spelled();
    for (Result result : results) {
      spelled.language = writing(result).words();
      spelled.walk(result, 0);
    }
    spelled.words.removeIf(words -> !words.contains(" "));
    return spelled.words;
  }

  /** Of some sides of a result. */
  static Set<String> of(List<Result.Side> sides, Writing writing) {
    Spelled spelled = new Spelled();
    spelled.language = writing.words();
    spelled.walk(sides, 0);
    return spelled.words;
  }

  private static Writing writing(Result result) {
    for (RecordComponent component : result.getClass().getRecordComponents()) {
      if (value(result, component) instanceof Writing writing) {
        return writing;
      }
    }
    return Writing.USUAL;
  }

  private void walk(@Nullable Object value, int depth) {
    if (depth > DEEPEST) {
      return;
    }
    if (value instanceof Shown shown) {
      add(shown.value());
    } else if (value instanceof Ratio ratio) {
      add(ratio.value());
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> walk(inner, depth + 1));
    } else if (value instanceof Collection<?> many) {
      many.forEach(one -> walk(one, depth + 1));
    } else if (value instanceof Record record
        && record.getClass().getName().startsWith("plainscale.sheet.")) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        walk(value(record, component), depth + 1);
      }
    }
  }

  private static @Nullable Object value(Object record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private void add(BigDecimal value) {
    for (Words in : List.of(language, Words.ENGLISH)) {
      for (Spelling spelling : List.of(in.mixed(value), in.spelled(value))) {
        if (spelling.inWords()) {
          words.add(spelling.text());
        }
      }
    }
  }
}
