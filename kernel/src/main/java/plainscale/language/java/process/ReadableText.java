package plainscale.language.java.process;

import java.lang.reflect.Array;
import java.util.AbstractList;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Any object as text: its own words, arrays and collections by what they hold. */
public final class ReadableText {
  static final int MOST_ELEMENTS = 1_000;
  private static final int DEEPEST = 20;
  private static final String MORE = "… %,d more";

  private ReadableText() {}

  /** What went wrong, in its own words, else what it is called. */
  public static String ofProblem(Exception wrong) {
    String words = wrong.getMessage();
    return words == null || words.isBlank()
        ? "This value cannot be shown: " + wrong.getClass().getSimpleName() + " in its own code."
        : words;
  }

  /** The text of an object. */
  public static String of(@Nullable Object object) {
    return of(object, 0);
  }

  /** What holds itself ends somewhere. */
  private static String of(@Nullable Object object, int depth) {
    if (depth > DEEPEST) {
      return "…";
    }
    if (object instanceof Collection<?> collection && isOrdinary(object)) {
      return "[" + elements(collection, depth) + "]";
    }
    if (object instanceof Map<?, ?> map && isOrdinary(object)) {
      return "{" + entries(map, depth) + "}";
    }
    if (object != null && object.getClass().isArray()) {
      return "[" + elements(boxed(object), depth) + "]";
    }
    return withoutWrapper(String.valueOf(object));
  }

  /** A collection of somebody's own may have words of its own. */
  private static boolean isOrdinary(Object object) {
    return object.getClass().getName().startsWith("java.");
  }

  private static String elements(Collection<?> elements, int depth) {
    return elements.stream()
            .limit(MOST_ELEMENTS)
            .map(element -> of(element, depth + 1))
            .collect(Collectors.joining(", "))
        + more(elements.size());
  }

  private static String entries(Map<?, ?> map, int depth) {
    return map.entrySet().stream()
            .limit(MOST_ELEMENTS)
            .map(entry -> of(entry.getKey(), depth + 1) + "=" + of(entry.getValue(), depth + 1))
            .collect(Collectors.joining(", "))
        + more(map.size());
  }

  private static String more(int size) {
    return size > MOST_ELEMENTS ? ", " + MORE.formatted(size - MOST_ELEMENTS) : "";
  }

  private static Collection<?> boxed(Object array) {
    int length = Array.getLength(array);
    return new AbstractList<@Nullable Object>() {
      @Override
      public @Nullable Object get(int index) {
        return Array.get(array, index);
      }

      @Override
      public int size() {
        return length;
      }
    };
  }

  /** Classes of cells are members of classes that JShell makes. */
  private static String withoutWrapper(String text) {
    return text.replaceAll("REPL\\.\\$JShell\\$\\w+\\$", "");
  }
}
