package plainscale.language.java;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LibraryDocsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Quantity Plainscale.quantity(String text)                 | A quantity as a given is written",
        "Situation Plainscale.given(String name, Quantity value)   | A situation with a quantity under a name",
        "Contrast Plainscale.contrast(Quantity... quantities)      | set against each other",
        "TableOf TableOf.numbers(String heading, String unit, List<? extends Number> values) | column of numbers",
        "plainscale.quantity.Quantity Quantity.plus(Quantity other) | ",
        "plainscale.api.Situation                                  | ",
      })
  void theLibrarysWordsAreFoundBySignature(String signature, String part) {
    String words = LibraryDocs.of(signature).orElse("nothing");
    assertTrue(!words.equals("nothing") && words.contains(part == null ? "" : part), words);
  }

  @Test
  void ofOtherTypesItKnowsNothing() {
    assertEquals(Optional.empty(), LibraryDocs.of("int Math.max(int a, int b)"));
    assertEquals(Optional.empty(), LibraryDocs.of("x:int"));
  }
}
