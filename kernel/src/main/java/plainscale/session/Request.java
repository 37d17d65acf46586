package plainscale.session;

import com.fasterxml.jackson.databind.node.ObjectNode;
import plainscale.wire.Channel;
import plainscale.wire.Message;

/** One message from a front end together with the way to answer it. */
record Request(Channel channel, Message message, Publisher publisher) {

  String type() {
    return message.header().type();
  }

  ObjectNode content() {
    return message.content();
  }

  void reply(ObjectNode content) {
    publisher.reply(this, content);
  }

  /** Asks the front end that sent this request. */
  void ask(String type, ObjectNode content) {
    publisher.ask(message, type, content);
  }

  /** Publishes an effect of this request. */
  void publish(String type, ObjectNode content) {
    publisher.publish(message.header(), type, content);
  }
}
