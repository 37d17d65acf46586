import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import plainscale.magnitude.Language;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;

/**
 * Spells the number on each line of the input: {@code java -cp plainscale.jar SpellMany.java GERMAN
 * MILLIARD}.
 */
class SpellMany {
  public static void main(String[] arguments) throws IOException {
    Words words = Words.of(Language.valueOf(arguments[0]), Scale.valueOf(arguments[1]));
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    try (var lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII))) {
      lines.lines().forEach(line -> out.println(words.spelled(new BigDecimal(line)).text()));
    }
    out.flush();
  }
}
