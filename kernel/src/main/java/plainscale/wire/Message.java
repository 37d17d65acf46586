package plainscale.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * One message. {@code identities} is what stands before the delimiter: the front end's address on
 * the request channels, the topic on the publishing one. {@code parent} is empty where there is
 * none.
 */
public record Message(
    List<byte[]> identities,
    Header header,
    ObjectNode parent,
    ObjectNode metadata,
    ObjectNode content,
    List<byte[]> buffers) {

  public Message {
    identities = List.copyOf(identities);
    buffers = List.copyOf(buffers);
  }

  /** A message without parent, metadata and buffers. */
  public static Message of(List<byte[]> identities, Header header, ObjectNode content) {
    return new Message(identities, header, Json.object(), Json.object(), content, List.of());
  }

  /** The same message as an effect of another. */
  public Message causedBy(Header cause) {
    return new Message(identities, header, cause.fields(), metadata, content, buffers);
  }
}
