package plainscale.language.java.process;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.Map;

/** What a cell does that its user sees. */
public sealed interface Event extends Serializable {

  /** It printed. */
  record Printed(boolean error, String text) implements Event {}

  /** It showed something, in several mime types; {@code value} for the value of the cell itself. */
  record Shown(boolean value, Map<String, String> data) implements Event {}

  /** It waits for a line; the answer must carry the same number. */
  record Asked(int number, String prompt) implements Event {}

  /** The event as a frame. */
  default byte[] bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(this);
    }
    return bytes.toByteArray();
  }

  /** The event of a frame. */
  static Event of(byte[] frame) throws IOException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(frame))) {
      return (Event) in.readObject();
    } catch (ClassNotFoundException e) {
      throw new IOException(e);
    }
  }
}
