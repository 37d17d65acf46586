package plainscale.document.check;

import java.util.Locale;

/** How much a finding matters, the worst first. */
public enum Severity {
  /** The lesson does not do what it says. */
  ERROR,
  /** A class would stumble over it. */
  WARNING,
  /** Worth a look. */
  REMARK;

  /** The word for it in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
