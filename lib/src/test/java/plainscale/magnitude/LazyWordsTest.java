package plainscale.magnitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainscale.render.Renderers;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/** A sheet that says nothing in words does not wait for the rules and tables of words. */
class LazyWordsTest {
  private static final Pattern LOADED = Pattern.compile("\\] ([\\w.$]+) source:");

  /** What reads the tables of names and the spell-out rules, and the rules themselves. */
  private static final Pattern OF_WORDS =
      Pattern.compile(
          "plainscale\\.magnitude\\.(Grammar|ScaleNames|IcuRules|SmallNumbers|Speller).*"
              + "|com\\.ibm\\.icu\\.text\\.(RuleBasedNumberFormat|NFRule.*|PluralRules.*)");

  private static final Map<String, String> SAID =
      Map.of("cell", "0.0265 N", "word", "ten", "language", "GERMAN");

  @TempDir private Path folder;

  @Test
  void aCellWithoutWordsLoadsNothingOfThem() throws Exception {
    assertEquals(Set.of(), loadedBy("cell"));
  }

  @Test
  void theFirstWordLoadsWhatItNeeds() throws Exception {
    Set<String> loaded = loadedBy("word");
    assertTrue(loaded.contains("plainscale.magnitude.ScaleNames"), loaded::toString);
    assertTrue(loaded.contains("com.ibm.icu.text.RuleBasedNumberFormat"), loaded::toString);
  }

  @Test
  void choosingALanguageReadsTheTableOfLanguagesAlone() throws Exception {
    assertEquals(
        Set.of("plainscale.magnitude.Grammar", "plainscale.magnitude.Grammar$Loaded"),
        loadedBy("language"));
  }

  private Set<String> loadedBy(String what) throws IOException, InterruptedException {
    Path log = folder.resolve(what);
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + log,
                "-cp",
                System.getProperty("java.class.path"),
                Cell.class.getName(),
                what)
            .redirectErrorStream(true)
            .start();
    String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, child.waitFor(), said);
    assertTrue(said.contains(SAID.get(what)), said);
    String classes = Files.readString(log);
    assertTrue(classes.contains(" plainscale."), "the log does not name our classes");
    return LOADED
        .matcher(classes)
        .results()
        .map(found -> found.group(1))
        .filter(OF_WORDS.asMatchPredicate())
        .collect(Collectors.toSet());
  }

  /** The program of the child. */
  static final class Cell {
    private Cell() {}

    public static void main(String[] arguments) {
      switch (arguments[0]) {
        case "cell" -> {
          Run run = new Sheet().run("a", "given m = 2.70 g\nw = m g_n");
          System.out.println(Renderers.text(run.results()));
        }
        case "word" -> System.out.println(Words.ENGLISH.spelled(BigDecimal.TEN).text());
        case "language" -> System.out.println(Language.of(Locale.GERMANY));
        default -> throw new IllegalArgumentException(arguments[0]);
      }
    }
  }
}
