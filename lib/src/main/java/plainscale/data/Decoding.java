package plainscale.data;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Bytes of a file as characters: UTF-16 if a byte-order mark says so, UTF-8 if every byte fits it,
 * else Windows-1252 (which holds all letters of ISO 8859-1), and that is remarked.
 */
record Decoding(Reader reader, Optional<Remark> remark) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final int CHUNK = 8192;

  /** Beginnings of files that are not text (file formats' own signatures), and what they are. */
  private static final List<Signature> OTHER_FILES =
      List.of(
          new Signature("PK\u0003\u0004", "a spreadsheet or an archive"),
          new Signature("\u00D0\u00CF\u0011\u00E0", "an old spreadsheet"),
          new Signature("%PDF", "a PDF"),
          new Signature("\u0089PNG", "a picture"));

  private record Signature(String start, String what) {}

  static Decoding of(byte[] bytes) {
    refuseOtherFiles(bytes);
    Optional<Charset> marked = byMark(bytes);
    if (marked.isPresent()) {
      return new Decoding(reader(bytes, marked.get()), Optional.empty());
    }
    return isUtf8(bytes)
        ? new Decoding(reader(bytes, StandardCharsets.UTF_8), Optional.empty())
        : new Decoding(reader(bytes, WINDOWS), Optional.of(notUtf8()));
  }

  private static Remark notUtf8() {
    return new Remark(
        Remark.Kind.ENCODING,
        0,
        0,
        "",
        "",
        "This file is not UTF-8; it was read as Windows-1252, so look at letters such as µ and °.",
        List.of("save it as CSV UTF-8"));
  }

  private static Optional<Charset> byMark(byte[] bytes) {
    return startsWith(bytes, "\u00FE\u00FF") || startsWith(bytes, "\u00FF\u00FE")
        ? Optional.of(StandardCharsets.UTF_16)
        : Optional.empty();
  }

  private static boolean startsWith(byte[] bytes, String start) {
    byte[] wanted = start.getBytes(StandardCharsets.ISO_8859_1);
    return bytes.length >= wanted.length
        && ByteBuffer.wrap(bytes, 0, wanted.length).equals(ByteBuffer.wrap(wanted));
  }

  private static void refuseOtherFiles(byte[] bytes) {
    for (Signature signature : OTHER_FILES) {
      if (startsWith(bytes, signature.start())) {
        throw new DataException(
            "This file is " + signature.what() + ", not a table in plain text.", "save it as CSV");
      }
    }
  }

  private static Reader reader(byte[] bytes, Charset charset) {
    return new InputStreamReader(new ByteArrayInputStream(bytes), charset);
  }

  private static boolean isUtf8(byte[] bytes) {
    CharsetDecoder strict =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(CHUNK);
    CoderResult result = CoderResult.OVERFLOW;
    while (result.isOverflow()) {
      out.clear();
      result = strict.decode(in, out, true);
    }
    return result.isUnderflow();
  }
}
