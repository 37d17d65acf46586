package plainscale.language;

/**
 * The protocol's four answers to {@code is_complete_request}, and the indent that an incomplete
 * text asks for.
 */
public record Completeness(Status status, String indent) {

  /** Names as on the wire, in lower case. */
  public enum Status {
    COMPLETE,
    INCOMPLETE,
    INVALID,
    UNKNOWN
  }

  /** An answer without indent. */
  public static Completeness of(Status status) {
    return new Completeness(status, "");
  }
}
