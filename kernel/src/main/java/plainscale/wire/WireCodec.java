package plainscale.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Frames from and to messages:
 *
 * <pre>identities…, "&lt;IDS|MSG&gt;", signature, header, parent, metadata, content, buffers…</pre>
 *
 * Frames are checked from the outside in, count, then signature, then JSON, so that nothing of an
 * unsigned message is ever parsed. {@link #encode} may be called from every thread, {@link #decode}
 * from one.
 */
public final class WireCodec {

  private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
  private static final int JSON_FRAMES = 4;

  private final Signer signer;
  private final SeenSignatures seen = new SeenSignatures();

  /** A codec for one connection; an empty key turns signing and checking off. */
  public WireCodec(String key) {
    this.signer = new Signer(key);
  }

  /** The frames of a message, signed. */
  public List<byte[]> encode(Message message) {
    List<byte[]> json =
        List.of(
            Json.write(message.header().fields()),
            Json.write(message.parent()),
            Json.write(message.metadata()),
            Json.write(message.content()));
    List<byte[]> frames = new ArrayList<>(message.identities());
    frames.add(DELIMITER);
    frames.add(signer.sign(json));
    frames.addAll(json);
    frames.addAll(message.buffers());
    return frames;
  }

  /** The message in the frames, or the reason to drop them; never throws, whatever the bytes. */
  public Decoded decode(List<byte[]> frames) {
    int delimiter = indexOfDelimiter(frames);
    if (delimiter < 0) {
      return new Decoded.Rejected(Rejection.NO_DELIMITER);
    }
    int json = delimiter + 2;
    int buffers = json + JSON_FRAMES;
    if (frames.size() < buffers) {
      return new Decoded.Rejected(Rejection.TOO_FEW_FRAMES);
    }
    return rejection(frames.get(delimiter + 1), frames.subList(json, buffers))
        .<Decoded>map(Decoded.Rejected::new)
        .orElseGet(() -> parse(frames, delimiter));
  }

  private static int indexOfDelimiter(List<byte[]> frames) {
    for (int i = 0; i < frames.size(); i++) {
      if (Arrays.equals(frames.get(i), DELIMITER)) {
        return i;
      }
    }
    return -1;
  }

  /** A signature counts as used only once it has proved good, or anyone could block messages. */
  private Optional<Rejection> rejection(byte[] signature, List<byte[]> json) {
    if (signer.isOff()) {
      return Optional.empty();
    } else if (signature.length == 0) {
      return Optional.of(Rejection.UNSIGNED);
    } else if (!MessageDigest.isEqual(signature, signer.sign(json))) {
      return Optional.of(Rejection.WRONG_SIGNATURE);
    }
    return seen.add(signature) ? Optional.empty() : Optional.of(Rejection.REPLAYED);
  }

  private static Decoded parse(List<byte[]> frames, int delimiter) {
    List<ObjectNode> json = new ArrayList<>(JSON_FRAMES);
    try {
      for (byte[] frame : frames.subList(delimiter + 2, delimiter + 2 + JSON_FRAMES)) {
        json.add(Json.read(frame));
      }
    } catch (IOException e) {
      return new Decoded.Rejected(Rejection.MALFORMED_JSON);
    }
    Header header = new Header(json.get(0));
    if (!header.isUsable()) {
      return new Decoded.Rejected(Rejection.MALFORMED_HEADER);
    }
    List<byte[]> buffers = frames.subList(delimiter + 2 + JSON_FRAMES, frames.size());
    return new Decoded.Accepted(
        new Message(
            frames.subList(0, delimiter), header, json.get(1), json.get(2), json.get(3), buffers));
  }
}
