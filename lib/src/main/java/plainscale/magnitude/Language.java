package plainscale.magnitude;

import java.util.Locale;

/** A language that numbers can be spelled in: {@code Language.ENGLISH}. */
public record Language(Locale locale) {

  /** American English. */
  public static final Language ENGLISH = new Language(Locale.US);
}
