package plainscale.document;

import java.util.Locale;
import java.util.Optional;

/** The two forms in which a lesson is written; either can be made from the other. */
public enum LessonForm {
  /** A notebook, for Jupyter. */
  NOTEBOOK(".ipynb"),
  /** A text, for an editor and for version control. */
  TEXT(".md");

  private final String ending;

  LessonForm(String ending) {
    this.ending = ending;
  }

  /** What the names of its files end in. */
  public String ending() {
    return ending;
  }

  /** The other form. */
  public LessonForm other() {
    return this == TEXT ? NOTEBOOK : TEXT;
  }

  /** The form that the name of a file tells. */
  public static Optional<LessonForm> ofName(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    for (LessonForm form : values()) {
      if (name.endsWith(form.ending)) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  /** The form that the beginning of a file tells: a brace, or the rule of a head. */
  static Optional<LessonForm> ofBeginning(String text) {
    String begin = text.startsWith("\uFEFF") ? text.substring(1) : text;
    String content = begin.stripLeading();
    if (content.startsWith("{")) {
      return Optional.of(NOTEBOOK);
    }
    return content.startsWith(TextHead.RULE) ? Optional.of(TEXT) : Optional.empty();
  }
}
