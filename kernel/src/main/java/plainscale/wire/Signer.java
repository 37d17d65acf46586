package plainscale.wire;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * The HMAC-SHA256 of a message's four JSON frames in lower-case hex; empty when there is no key.
 */
final class Signer {

  private static final String ALGORITHM = "HmacSHA256";

  private final @Nullable Mac mac;

  Signer(String key) {
    this.mac = key.isEmpty() ? null : mac(key);
  }

  boolean isOff() {
    return mac == null;
  }

  /** Messages are signed by every thread that sends; the digest's state is not shareable. */
  synchronized byte[] sign(List<byte[]> frames) {
    if (mac == null) {
      return new byte[0];
    }
    for (byte[] frame : frames) {
      mac.update(frame);
    }
    return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
  }

  private static Mac mac(String key) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), ALGORITHM));
      return mac;
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java runtime has " + ALGORITHM, e);
    }
  }
}
