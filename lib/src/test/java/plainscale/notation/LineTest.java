package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the parts of a line stand in its source. */
class LineTest {
  private static String text(String source, Span span) {
    return source.substring(span.start(), span.end());
  }

  private static String parts(String source, Line line) {
    return line.parts().stream()
        .map(part -> part.what() + " " + text(source, part.span()))
        .collect(Collectors.joining("; "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          given m = 2.70 ± 0.05 g "mass"     | VALUE 2.70; UNCERTAINTY 0.05
          given m = (2.70 ± 0.05) g          | VALUE 2.70; UNCERTAINTY 0.05
          given s = 0.900(3) m               | CONCISE 0.900(3)
          given T = -5.0 °C                  | VALUE -5.0
          given d = 14.0 cm ± 2 %            | VALUE 14.0; UNCERTAINTY 2
          given F = 5.3×10⁻³ N               | VALUE 5.3×10⁻³
          given U = 5.007, -4.9, 5.1 V       | VALUE 5.007; VALUE -4.9; VALUE 5.1
          given m = ? ± ? g                  | VALUE ?; UNCERTAINTY ?
          x = (a + b) c in cm "size"         | FORMULA (a + b) c
          x = 3.0 [cm]*a                     | NUMBER 3.0; FORMULA 3.0 [cm]*a
          sqrt(a)                            | FORMULA sqrt(a)
          relation r: (a + b) c = d (e) "so" | RELATION (a + b) c = d (e)
          solve r, s for q in nC with boxes  | RELATIONS r, s
          contrast 4.7e13 with 2 m           | NUMBER 4.7e13; NUMBER 2
          say "About {4.7e13 in words}."     | NUMBER 4.7e13
          forces on b: pull 2 [N] up, push F down with missing | NUMBER 2; FORCES pull 2 [N] up, push F down
          field f: charge 3 nC at (0 cm, 1 cm) "one" | NUMBER 3; NUMBER 0; NUMBER 1; SOURCES charge 3 nC at (0 cm, 1 cm)
          """)
  void thePartsThatCanBeLeftBlankAreKnownWithTheirPlaces(String source, String parts) {
    List<Line> lines = Notation.lines(source, Names.NONE);
    assertEquals(1, lines.size());
    assertEquals(parts, parts(source, lines.get(0)));
  }

  @Test
  void commentsAndEmptyLinesKeepTheirPlaces() {
    String source = "# the key: 67 nC\n\ngiven m = 2 g  # a count\nx = 1 +  # begun\n    2  # done";
    List<Line> lines = Notation.lines(source, Names.NONE);
    assertEquals(4, lines.size());
    assertNull(lines.get(0).read());
    assertNull(lines.get(1).read());
    assertEquals("# the key: 67 nC", text(source, lines.get(0).comments().get(0)));
    assertEquals("# a count", text(source, lines.get(2).comments().get(0)));
    assertEquals(
        List.of("# begun", "# done"),
        lines.get(3).comments().stream().map(span -> text(source, span)).toList());
    assertEquals("x = 1 +  # begun\n    2  # done", text(source, lines.get(3).span()));
    assertEquals("1 +  # begun\n    2", text(source, lines.get(3).parts().get(2).span()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          solve r for q in nC "charge"   | solve r for q in nC
          solve r for q with small θ     | solve r for q with small θ
          say "All of it."               | say
          """)
  void theWordsAtTheEndOfALineBeginThere(String source, String before) {
    Line line = Notation.lines(source, Names.NONE).get(0);
    assertEquals(before, source.substring(0, line.end()).strip());
  }

  @Test
  void aLineThatCannotBeReadHasNoParts() {
    Line line = Notation.lines("given m = 2.70 flurbs", Names.NONE).get(0);
    assertInstanceOf(Statement.Unreadable.class, line.read());
    assertEquals(List.of(), line.parts());
  }
}
