package plainscale.language.java.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReadableTextTest {

  @Test
  void arraysAndCollectionsShowWhatTheyHold() {
    assertEquals("[1.5, 2.0]", ReadableText.of(new double[] {1.5, 2}));
    assertEquals("[[1], [2, 3]]", ReadableText.of(new int[][] {{1}, {2, 3}}));
    assertEquals("[[a], null]", ReadableText.of(java.util.Arrays.asList(List.of("a"), null)));
    assertEquals("{a=[true]}", ReadableText.of(Map.of("a", new boolean[] {true})));
    assertEquals("[]", ReadableText.of(new Object[0]));
  }

  @Test
  void otherObjectsUseTheirOwnWords() {
    assertEquals("null", ReadableText.of(null));
    assertEquals("plain", ReadableText.of("plain"));
    assertEquals("PT2S", ReadableText.of(java.time.Duration.ofSeconds(2)));
  }

  @Test
  void manyElementsAreCountedInsteadOfShown() {
    String text = ReadableText.of(Collections.nCopies(12_000, 7));
    assertTrue(text.endsWith(", … 11,000 more]"), text);
    assertTrue(text.length() < 4 * ReadableText.MOST_ELEMENTS);
  }

  @Test
  void whatHoldsItselfEnds() {
    List<Object> loop = new ArrayList<>();
    loop.add(loop);
    assertTrue(ReadableText.of(loop).contains("…"));
  }
}
