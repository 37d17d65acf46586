package plainscale.magnitude;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import com.ibm.icu.text.PluralRules;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plainscale.table.Table;

class PhrasesTest {
  private static final List<Object> COUNTS = List.of(0, 1, 2, 5, 1_000_000);

  /** One argument of a pattern: how it is used, and the keywords that it chooses by. */
  private record Argument(Set<ArgType> types, Set<String> keywords) {

    /** Something for every branch. */
    List<Object> samples() {
      if (types.contains(ArgType.PLURAL)) {
        return COUNTS;
      }
      return keywords.isEmpty() ? List.of("7") : List.copyOf(keywords);
    }
  }

  /** A pattern in a language, what it says in English, and what the arguments are called there. */
  record Sentence(String language, String key, String pattern, String english, String names) {
    List<String> named() {
      return Arrays.stream(names.split(" ")).filter(name -> !name.isEmpty()).toList();
    }

    Map<Integer, Argument> arguments() {
      return PhrasesTest.arguments(pattern);
    }

    @Override
    public String toString() {
      return language + " " + key;
    }
  }

  static List<String> languages() throws IOException, URISyntaxException {
    Path folder = Path.of(Objects.requireNonNull(Phrases.class.getResource("phrases")).toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString().replace(".tsv", "")).sorted().toList();
    }
  }

  private static List<Table.Row> rows(String language) {
    return Table.read(Phrases.class, "phrases/" + language + ".tsv");
  }

  private static Map<String, String> patterns(String language) {
    return rows(language).stream().collect(toMap(r -> r.get("key"), r -> r.get("pattern")));
  }

  static Stream<Sentence> sentences() throws IOException, URISyntaxException {
    return languages().stream()
        .flatMap(
            language -> {
              Map<String, String> patterns = patterns(language);
              return rows("en").stream().map(english -> sentence(language, english, patterns));
            });
  }

  private static Sentence sentence(
      String language, Table.Row english, Map<String, String> patterns) {
    String key = english.get("key");
    String pattern = patterns.getOrDefault(key, "");
    return new Sentence(language, key, pattern, english.get("pattern"), english.get("arguments"));
  }

  private static Map<Integer, Argument> arguments(String pattern) {
    Map<Integer, Argument> arguments = new TreeMap<>();
    MessagePattern parsed = new MessagePattern(pattern);
    List<Argument> open = new ArrayList<>();
    for (int i = 0; i < parsed.countParts(); i++) {
      Part part = parsed.getPart(i);
      if (part.getType() == Part.Type.ARG_START) {
        int number = parsed.getPart(i + 1).getValue();
        Argument argument =
            arguments.computeIfAbsent(number, n -> new Argument(new TreeSet<>(), new TreeSet<>()));
        argument.types().add(part.getArgType());
        open.add(argument);
      } else if (part.getType() == Part.Type.ARG_LIMIT) {
        open.remove(open.size() - 1);
      } else if (part.getType() == Part.Type.ARG_SELECTOR) {
        open.get(open.size() - 1).keywords().add(parsed.getSubstring(part));
      }
    }
    return arguments;
  }

  /** All ways to fill in the arguments. */
  private static List<List<Object>> samples(Sentence sentence) {
    Argument unused = new Argument(Set.of(), Set.of());
    List<List<Object>> samples = List.of(List.of());
    for (int i = 0; i < sentence.named().size(); i++) {
      List<Object> next = sentence.arguments().getOrDefault(i, unused).samples();
      samples = samples.stream().flatMap(before -> extended(before, next)).toList();
    }
    return samples;
  }

  private static Stream<List<Object>> extended(List<Object> before, List<Object> next) {
    return next.stream().map(n -> Stream.concat(before.stream(), Stream.of(n)).toList());
  }

  @Test
  void everyLanguageOfNumberWordsHasItsSentences() throws IOException, URISyntaxException {
    Set<String> spoken =
        Arrays.stream(Language.values())
            .map(language -> language.locale().getLanguage())
            .collect(toCollection(TreeSet::new));
    assertEquals(new ArrayList<>(spoken), languages());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageHasTheSentencesOfEnglishOnceEach(String language) {
    assertEquals(keys("en"), keys(language));
  }

  private static List<String> keys(String language) {
    return rows(language).stream().map(row -> row.get("key")).sorted().toList();
  }

  @ParameterizedTest
  @MethodSource("sentences")
  void everySentenceUsesItsArgumentsAndNoOthers(Sentence sentence) {
    Set<Integer> used = sentence.arguments().keySet();
    List<String> named = sentence.named();
    for (int i = 0; i < named.size(); i++) {
      assertTrue(used.contains(i) || named.get(i).endsWith("?"), "lacks " + i);
    }
    used.forEach(i -> assertTrue(i < named.size(), "there is no argument " + i));
  }

  @ParameterizedTest
  @MethodSource("sentences")
  void keywordsAreThoseOfEnglishOrOfTheLanguagesPlurals(Sentence sentence) {
    Set<String> plurals =
        PluralRules.forLocale(Locale.forLanguageTag(sentence.language())).getKeywords();
    sentence
        .arguments()
        .forEach(
            (i, argument) -> {
              if (argument.types().contains(ArgType.PLURAL)) {
                assertEquals(plurals, withoutExact(argument.keywords()));
              } else {
                assertTrue(known(sentence, i).containsAll(argument.keywords()), sentence::pattern);
              }
            });
  }

  private static Set<String> withoutExact(Set<String> keywords) {
    return keywords.stream().filter(k -> !k.startsWith("=")).collect(Collectors.toSet());
  }

  private static Set<String> known(Sentence sentence, int i) {
    if (sentence.named().get(i).equals("agreement?")) {
      return Arrays.stream(Agreement.values()).map(Agreement::toString).collect(Collectors.toSet());
    }
    Argument inEnglish = arguments(sentence.english()).get(i);
    return inEnglish == null ? Set.of() : inEnglish.keywords();
  }

  @ParameterizedTest
  @MethodSource("sentences")
  void noBraceIsLeftInAnySentence(Sentence sentence) {
    MessageFormat format =
        new MessageFormat(sentence.pattern(), Locale.forLanguageTag(sentence.language()));
    for (List<Object> sample : samples(sentence)) {
      String said = format.format(sample.toArray());
      assertFalse(said.contains("{") || said.contains("}"), said);
      assertFalse(said.isBlank() || said.contains("  "), said);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "en-GB, 1, 1 significant figure",
    "en-IN, 3, 3 significant figures",
    "de, 1, 1 signifikante Stelle",
    "es, 2, 2 cifras significativas",
    "fr, 2, 2 chiffres significatifs",
    "fr, 1000000, 1 000 000 de chiffres significatifs",
    "pt-BR, 1, 1 algarismo significativo",
    "pt-PT, 2, 2 algarismos significativos",
    "it, 1, 1 cifra significativa",
    "hi, 3, 3 सार्थक अंक"
  })
  void figuresAreCountedInTheReadersLanguage(String tag, int figures, String sentence) {
    Language language = Language.of(Locale.forLanguageTag(tag)).orElseThrow();
    String said = Phrases.of(language).say("figures", figures);
    assertEquals(sentence, said.replaceAll("[\u00a0\u202f]", " "));
  }

  @Test
  void aPhraseThatIsNotThereIsRefused() {
    Phrases phrases = Phrases.of(Language.GERMAN);
    assertThrows(IllegalArgumentException.class, () -> phrases.say("figur"));
  }
}
