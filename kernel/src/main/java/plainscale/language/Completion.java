package plainscale.language;

import java.util.List;

/**
 * Candidates to replace the text from {@code start} to {@code end} (UTF-16 positions), best first.
 */
public record Completion(int start, int end, List<Item> items) {

  /** One candidate: the text to insert and its kind in a word ("constant", "unit", "given", …). */
  public record Item(String text, String kind) {}
}
