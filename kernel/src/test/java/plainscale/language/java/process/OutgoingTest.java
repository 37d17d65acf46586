package plainscale.language.java.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OutgoingTest {

  private final Outgoing outgoing = new Outgoing();

  private String next() {
    return outgoing.next() instanceof Event.Printed printed
        ? (printed.error() ? "err " : "out ") + printed.text()
        : "shown";
  }

  @Test
  void textsOfOneStreamAreJoinedAndTheOrderStays() {
    outgoing.print(false, "a");
    outgoing.print(false, "b");
    outgoing.print(true, "oh");
    outgoing.add(new Event.Shown(true, Map.of()));
    outgoing.print(true, "c");
    assertEquals(
        List.of("out ab", "err oh", "shown", "err c"), List.of(next(), next(), next(), next()));
  }

  @Test
  void beyondAMillionCharactersTheRestIsLeftOutUntilTheNextCell() {
    String line = "x".repeat(300_000);
    for (int i = 0; i < 10; i++) {
      outgoing.print(false, line);
    }
    String text = next();
    assertTrue(text.length() < Outgoing.MOST_CHARACTERS + 2 * line.length(), text.length() + "");
    assertTrue(text.endsWith("the rest is left out: a cell may print a million characters.\n"));
    outgoing.begin();
    outgoing.print(false, "again");
    assertEquals("out again", next());
  }

  @Test
  void charactersThatComeInPartsArePutTogether() {
    List<String> texts = new ArrayList<>();
    try (Printing printing = new Printing(texts::add)) {
      for (byte b : "aé∆😀!".getBytes(StandardCharsets.UTF_8)) {
        printing.write(b);
      }
      printing.write(new byte[] {(byte) 0xFF, 'z'}, 0, 2);
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
    assertEquals("aé∆😀!\uFFFDz", String.join("", texts));
  }
}
