package plainscale.wire;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The last signatures that were accepted, each by its first 64 bits (they come from a keyed hash,
 * so two good messages do not share them by chance or by intent).
 */
final class SeenSignatures {

  private static final int REMEMBERED = 65_536;
  private static final int HEX_DIGITS = 16;

  private final Map<Long, Boolean> seen =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Boolean> eldest) {
          return size() > REMEMBERED;
        }
      };

  /** Remembers a verified signature; false if it is already known. */
  boolean add(byte[] signature) {
    String head = new String(signature, 0, HEX_DIGITS, StandardCharsets.US_ASCII);
    return seen.put(new BigInteger(head, 16).longValue(), true) == null;
  }
}
