package plainscale.picture;

/** What a text in a picture is; written as its class, so that a page may style it. */
public enum TextRole {
  TITLE,
  LABEL,
  VALUE,
  WORDS,
  SCALE,
  FIGURE,
  ZERO,
  NOTE
}
