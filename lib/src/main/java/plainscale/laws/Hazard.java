package plainscale.laws;

import java.util.List;

/**
 * A row of {@code hazards.tsv}: what can hurt in a lesson, and the usual cautions.
 *
 * @param name its name in cells and in the head of a lesson: {@code electrostatic_generator}
 * @param title what it is called in a heading
 * @param words words by which it is found
 * @param cautions two to four sentences
 * @param source where they are published, or that they are common practice
 */
public record Hazard(
    String name, String title, List<String> words, List<String> cautions, String source) {
  /** Keeps its own copies of the lists. */
  public Hazard {
    words = List.copyOf(words);
    cautions = List.copyOf(cautions);
  }
}
