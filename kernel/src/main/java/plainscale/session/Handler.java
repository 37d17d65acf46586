package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** What is done for one type of message. */
@FunctionalInterface
interface Handler {

  /** The content of the reply; empty for messages that have none. */
  Optional<ObjectNode> handle(Request request);
}
