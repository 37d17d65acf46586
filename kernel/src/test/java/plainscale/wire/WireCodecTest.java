package plainscale.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WireCodecTest {

  private static final String KEY = "5f0c9a3e-key";
  private static final int SIGNATURE = 3;
  private static final int HEADER = 4;
  private static final int CONTENT = 7;

  @ParameterizedTest
  @ValueSource(strings = {KEY, ""})
  void decodingUndoesEncoding(String key) {
    Message sent = sample("m1");
    Message came = accepted(new WireCodec(key).decode(new WireCodec(key).encode(sent)));
    assertEquals(sent.header(), came.header());
    assertEquals(sent.parent(), came.parent());
    assertEquals(sent.metadata(), came.metadata());
    assertEquals(sent.content(), came.content());
    assertFramesEqual(sent.identities(), came.identities());
    assertFramesEqual(sent.buffers(), came.buffers());
  }

  /** Computed with Python's hmac module: hmac.new(b"key", b"{}" * 4, "sha256").hexdigest(). */
  @Test
  void theSignatureIsTheHexDigestOfTheFourFrames() {
    byte[] empty = bytes("{}");
    byte[] signature = new Signer("key").sign(List.of(empty, empty, empty, empty));
    assertEquals(
        "ca767b02c5bc061ed184a9a029e7f93a7f2f7ed4e8fe74120fc1212f0b008fa3",
        new String(signature, StandardCharsets.US_ASCII));
  }

  @Test
  void withoutAKeyTheSignatureIsEmpty() {
    assertEquals(0, new WireCodec("").encode(sample("m1")).get(SIGNATURE).length);
  }

  @Test
  void fieldsOfTheHeaderThatWeDoNotKnowAreKept() {
    Header header =
        new Header(Header.of("execute_request", "s", "m").fields().put("subshell_id", "sub-1"));
    Message message = Message.of(List.of(), header, Json.object());
    Message came = accepted(new WireCodec(KEY).decode(new WireCodec(KEY).encode(message)));
    assertEquals("sub-1", came.header().fields().path("subshell_id").textValue());
  }

  @Test
  void framesWithoutDelimiterAreRejected() {
    List<byte[]> frames = frames();
    frames.remove(2);
    assertRejected(Rejection.NO_DELIMITER, frames);
    assertRejected(Rejection.NO_DELIMITER, List.of());
  }

  @Test
  void aDelimiterWithTooLittleBehindItIsRejected() {
    List<byte[]> frames = frames();
    assertRejected(Rejection.TOO_FEW_FRAMES, frames.subList(0, CONTENT));
    assertRejected(Rejection.TOO_FEW_FRAMES, frames.subList(0, SIGNATURE));
  }

  @Test
  void anUnsignedMessageIsRejectedWhenThereIsAKey() {
    List<byte[]> frames = frames();
    frames.set(SIGNATURE, new byte[0]);
    assertRejected(Rejection.UNSIGNED, frames);
  }

  @ParameterizedTest
  @ValueSource(ints = {HEADER, HEADER + 1, HEADER + 2, CONTENT})
  void aChangeInAnySignedFrameIsRejected(int index) {
    List<byte[]> frames = frames();
    byte[] changed = frames.get(index).clone();
    changed[0] ^= 1;
    frames.set(index, changed);
    assertRejected(Rejection.WRONG_SIGNATURE, frames);
  }

  @Test
  void aSignatureOfAnotherKeyOrLengthIsRejected() {
    assertRejected(Rejection.WRONG_SIGNATURE, new WireCodec("other").encode(sample("m1")));
    List<byte[]> frames = frames();
    frames.set(SIGNATURE, bytes("00"));
    assertRejected(Rejection.WRONG_SIGNATURE, frames);
    frames.set(SIGNATURE, new byte[10_000]);
    assertRejected(Rejection.WRONG_SIGNATURE, frames);
  }

  @Test
  void theSameMessageAgainIsRejected() {
    WireCodec codec = new WireCodec(KEY);
    List<byte[]> frames = frames();
    accepted(codec.decode(frames));
    assertEquals(new Decoded.Rejected(Rejection.REPLAYED), codec.decode(frames));
  }

  @Test
  void aForgeryDoesNotUseUpTheSignatureOfTheTrueMessage() {
    WireCodec codec = new WireCodec(KEY);
    List<byte[]> forged = frames();
    forged.set(CONTENT, bytes("{\"code\":\"other\"}"));
    assertEquals(new Decoded.Rejected(Rejection.WRONG_SIGNATURE), codec.decode(forged));
    accepted(codec.decode(frames()));
  }

  @Test
  void onlyTheLatestSignaturesAreRemembered() {
    SeenSignatures seen = new SeenSignatures();
    for (int i = 0; i <= 65_536; i++) {
      assertEquals(true, seen.add(bytes(String.format("%016x", i))));
    }
    assertEquals(false, seen.add(bytes(String.format("%016x", 65_536))));
    assertEquals(true, seen.add(bytes(String.format("%016x", 0))));
  }

  static Stream<byte[]> brokenObjects() {
    return Stream.of(
        bytes("{"),
        bytes("[]"),
        bytes(""),
        new byte[] {'{', '"', (byte) 0xFF, (byte) 0xFE, '"', ':', '1', '}'},
        bytes("{\"a\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}"),
        bytes("{\"a\":1e999999999,\"b\":" + "9".repeat(50_000) + "}"));
  }

  @ParameterizedTest
  @MethodSource("brokenObjects")
  void aSignedMessageThatIsNotJsonIsRejected(byte[] frame) {
    for (int index : new int[] {HEADER, HEADER + 1, HEADER + 2, CONTENT}) {
      List<byte[]> frames = frames();
      frames.set(index, frame);
      assertRejected(Rejection.MALFORMED_JSON, resigned(frames));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"msg_id\":\"m\"}",
        "{\"msg_type\":\"t\"}",
        "{\"msg_id\":1,\"msg_type\":\"t\"}",
        "{\"msg_id\":\"m\",\"msg_type\":null}",
        "{\"msg_id\":\"m\",\"msg_type\":\"\"}"
      })
  void aHeaderThatCannotBeAnsweredIsRejected(String header) {
    List<byte[]> frames = frames();
    frames.set(HEADER, bytes(header));
    assertRejected(Rejection.MALFORMED_HEADER, resigned(frames));
  }

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  /** With a good signature, so that the bytes get as far as they can. */
  @ParameterizedTest
  @MethodSource("seeds")
  void randomBytesNeverThrow(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<byte[]> frames = new ArrayList<>();
    for (int i = random.nextInt(9); i > 0; i--) {
      frames.add(randomFrame(random));
    }
    if (random.nextBoolean()) {
      frames.add(random.nextInt(frames.size() + 1), bytes("<IDS|MSG>"));
    }
    for (String key : List.of(KEY, "")) {
      assertInstanceOf(Decoded.Rejected.class, new WireCodec(key).decode(frames));
      assertInstanceOf(Decoded.class, new WireCodec(key).decode(resigned(frames)));
    }
  }

  /** One flipped bit anywhere inside a signed message: it may pass only if the flip is repaired. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aFlippedBitBelowTheSignatureNeverThrows(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<byte[]> frames = frames();
    int index = random.nextInt(HEADER, CONTENT + 1);
    byte[] changed = frames.get(index).clone();
    changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
    frames.set(index, changed);
    assertRejected(Rejection.WRONG_SIGNATURE, frames);
    assertInstanceOf(Decoded.class, new WireCodec(KEY).decode(resigned(frames)));
  }

  @Test
  void messagesCannotBeChangedThroughTheirLists() {
    Message message = sample("m1");
    assertThrows(UnsupportedOperationException.class, () -> message.buffers().clear());
    assertThrows(UnsupportedOperationException.class, () -> message.identities().clear());
  }

  private static byte[] randomFrame(SplittableRandom random) {
    byte[] frame = new byte[random.nextInt(64)];
    random.nextBytes(frame);
    return frame;
  }

  private static Message sample(String id) {
    return new Message(
        List.of(bytes("client-1"), new byte[] {0, (byte) 200}),
        Header.of("execute_request", "session-1", id),
        Json.object().put("msg_id", "before"),
        Json.object().put("cellId", "c1"),
        Json.object().put("code", "θ = 12°\n🧲").put("silent", false),
        List.of(new byte[] {1, 2, 3}, new byte[0]));
  }

  private static List<byte[]> frames() {
    return new ArrayList<>(new WireCodec(KEY).encode(sample("m1")));
  }

  /** The same frames with the signature that fits them, where there is room for one. */
  private static List<byte[]> resigned(List<byte[]> frames) {
    List<byte[]> result = new ArrayList<>(frames);
    int delimiter =
        IntStream.range(0, frames.size())
            .filter(i -> new String(frames.get(i), StandardCharsets.UTF_8).equals("<IDS|MSG>"))
            .findFirst()
            .orElse(frames.size());
    if (delimiter + 6 <= frames.size()) {
      List<byte[]> json = frames.subList(delimiter + 2, delimiter + 6);
      result.set(delimiter + 1, new Signer(KEY).sign(json));
    }
    return result;
  }

  private static void assertRejected(Rejection reason, List<byte[]> frames) {
    assertEquals(new Decoded.Rejected(reason), new WireCodec(KEY).decode(frames));
  }

  private static Message accepted(Decoded decoded) {
    return assertInstanceOf(Decoded.Accepted.class, decoded).message();
  }

  private static void assertFramesEqual(List<byte[]> expected, List<byte[]> actual) {
    assertEquals(expected.size(), actual.size());
    for (int i = 0; i < expected.size(); i++) {
      assertArrayEquals(expected.get(i), actual.get(i));
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
