package plainscale.language.java.process;

import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** Turns the bytes of a stream into texts; a character that comes in two parts is put together. */
public final class Printing extends OutputStream {
  private static final int LONGEST_CHARACTER = 4;

  private final Consumer<String> reader;
  private final CharsetDecoder decoder =
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPLACE)
          .onUnmappableCharacter(CodingErrorAction.REPLACE);

  /** The first bytes of a character whose rest has not come. */
  private byte[] begun = {};

  /** A stream whose texts go to that reader. */
  public Printing(Consumer<String> reader) {
    this.reader = reader;
  }

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public synchronized void write(byte[] source, int offset, int length) {
    ByteBuffer bytes = ByteBuffer.allocate(begun.length + length);
    bytes.put(begun).put(source, offset, length).flip();
    CharBuffer characters = CharBuffer.allocate(bytes.remaining() + LONGEST_CHARACTER);
    decoder.reset().decode(bytes, characters, false);
    begun = new byte[bytes.remaining()];
    bytes.get(begun);
    String text = characters.flip().toString();
    if (!text.isEmpty()) {
      reader.accept(text);
    }
  }
}
