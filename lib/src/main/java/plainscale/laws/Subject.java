package plainscale.laws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What a value is called: its name in the sheet, which may be empty, and the words that it is
 * described by. The parts of a name count as words too: {@code E_surface} is at a surface.
 */
public record Subject(String name, String description) {
  private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** The words, in small letters, first those of the description. */
  List<String> words() {
    List<String> words = new ArrayList<>(split(description));
    words.add(""); // no phrase goes from the description on into the name
    words.addAll(split(name));
    return words;
  }

  private static List<String> split(String text) {
    return Arrays.stream(NO_LETTER.split(text.toLowerCase(Locale.ROOT)))
        .filter(word -> !word.isEmpty())
        .toList();
  }

  /** The name without its index. */
  String symbol() {
    int index = name.indexOf('_');
    return index < 0 ? name : name.substring(0, index);
  }
}
