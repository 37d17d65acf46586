package plainscale.wire;

/** Why frames are not a message to act on; {@link #sentence()} is for the log. */
public enum Rejection {
  NO_DELIMITER("frames without the delimiter"),
  TOO_FEW_FRAMES("too few frames"),
  UNSIGNED("an unsigned message"),
  WRONG_SIGNATURE("a message with a wrong signature"),
  REPLAYED("a message whose signature was used before"),
  MALFORMED_JSON("a message that is not four JSON objects"),
  MALFORMED_HEADER("a message whose header lacks msg_id or msg_type");

  private final String sentence;

  Rejection(String sentence) {
    this.sentence = sentence;
  }

  /** What was dropped, in a few words. */
  public String sentence() {
    return sentence;
  }
}
