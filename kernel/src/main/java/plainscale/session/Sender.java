package plainscale.session;

import plainscale.wire.Channel;
import plainscale.wire.Message;

/** The way out for messages; callable from every thread, keeps each thread's order. */
@FunctionalInterface
interface Sender {
  void send(Channel channel, Message message);
}
