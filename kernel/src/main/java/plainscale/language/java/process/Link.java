package plainscale.language.java.process;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;
import java.util.function.Consumer;

/**
 * One end of the two pipes between the kernel and the process of its cells. What is sent are
 * frames: the number of a channel, a length, bytes. All channels keep one order, so that what a
 * cell has shown is there before the word that it has ended.
 */
public final class Link {

  /** What the two talk about. */
  public enum Channel {
    /** JShell's own commands and their results, in both directions. */
    COMMAND('c'),
    /** What a cell prints, shows and asks for, to the kernel. */
    EVENT('e'),
    /** What the cell's user has typed, to the cell. */
    ANSWER('a');

    private final char code;

    Channel(char code) {
      this.code = code;
    }

    private static Channel of(int code) throws IOException {
      for (Channel channel : values()) {
        if (channel.code == code) {
          return channel;
        }
      }
      throw new IOException("no channel " + code);
    }
  }

  private final DataInputStream in;
  private final DataOutputStream out;

  /** An end that reads from one pipe and writes to the other. */
  public Link(InputStream in, OutputStream out) {
    this.in = new DataInputStream(in);
    this.out = new DataOutputStream(out);
  }

  /** Sends a frame; whole, whichever thread calls. */
  public synchronized void send(Channel channel, byte[] bytes) throws IOException {
    out.writeByte(channel.code);
    out.writeInt(bytes.length);
    out.write(bytes);
    out.flush();
  }

  /** A stream of which every flush is a frame. */
  public OutputStream sink(Channel channel) {
    return new ByteArrayOutputStream() {
      @Override
      public synchronized void flush() throws IOException {
        if (size() > 0) {
          send(channel, toByteArray());
          reset();
        }
      }
    };
  }

  /** Hands each frame to the receiver of its channel until the other end is gone. */
  public void receive(Map<Channel, Consumer<byte[]>> receivers) {
    try {
      while (true) {
        Channel channel = Channel.of(in.readUnsignedByte());
        byte[] bytes = new byte[in.readInt()];
        in.readFully(bytes);
        receivers.getOrDefault(channel, unwanted -> {}).accept(bytes);
      }
    } catch (EOFException e) {
      // The other end is gone: what was to be received has been.
    } catch (IOException e) {
      // A broken pipe says the same.
    }
  }
}
