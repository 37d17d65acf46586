package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordListTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "sphere;      q;         charge of the Sphere;  true",
        "sphere;      q;         spheres;               false",
        "sphere*;     q;         spheres;               true",
        "bell jar;    p;         in the bell jar;       true",
        "bell jar;    p;         jar with a bell;       false",
        "half life;   t;         half-life of radon;    true",
        "surface;     E_surface; '';                    true",
        "=η;          η;         '';                    true",
        "=η;          η_1;       '';                    true",
        "=R;          r;         '';                    false",
        "δ*;          Δm;        '';                    true",
        "a|b;         x;         b;                     true",
        "the q;       q;         of the;                false",
      })
  void aTermIsAWordAPhraseABeginningOrAName(
      String terms, String name, String description, boolean in) {
    assertEquals(in, WordList.of(terms).in(new Subject(name, description)));
  }

  @Test
  void aDashAsksForNothing() {
    assertTrue(WordList.of("-").isEmpty());
  }
}
