package plainscale.magnitude;

import java.util.Optional;

/**
 * A number in words, or, with a remark that says why not, as a power of ten: {@code ("8.7
 * trillion", none)}.
 */
public record Spelling(String text, Optional<String> remark) {

  static Spelling of(String text) {
    return new Spelling(text, Optional.empty());
  }

  /** Whether the text is words as asked for and not a replacement. */
  public boolean inWords() {
    return remark.isEmpty();
  }
}
