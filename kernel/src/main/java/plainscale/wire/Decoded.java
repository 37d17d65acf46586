package plainscale.wire;

/** What {@link WireCodec#decode} makes of frames. */
public sealed interface Decoded {

  /** A well-formed message with a good signature. */
  record Accepted(Message message) implements Decoded {}

  /** Frames to drop. */
  record Rejected(Rejection reason) implements Decoded {}
}
