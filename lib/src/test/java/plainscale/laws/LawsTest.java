package plainscale.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.algebra.Equation;
import plainscale.algebra.UnknownKinds;
import plainscale.notation.Expr;
import plainscale.notation.Greek;
import plainscale.notation.Keywords;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.table.Table;
import plainscale.units.Kind;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** What holds for every row of the table of laws. */
class LawsTest {
  private static final int FEWEST = 160;

  /** No more than a line of a lesson. */
  private static final int LONGEST_WHEN = 110;

  private static final int LONGEST_MEANING = 70;
  private static final int SEEN_FIRST = 3;
  private static final UnitOfMeasure OTHER = UnitParser.parse("kg^2 m^5/(A^3 K^7)");

  static List<Law> laws() {
    return Laws.all();
  }

  @Test
  void thereAreManyLawsOfEveryField() {
    assertTrue(Laws.all().size() >= FEWEST, Laws.all().size() + " laws");
    Map<String, Long> byField =
        Laws.all().stream().collect(Collectors.groupingBy(Law::field, Collectors.counting()));
    assertEquals(Table.read(Laws.class, "table/fields.tsv").size(), byField.size());
    byField.forEach((field, count) -> assertTrue(count >= 8, field + ": " + count));
  }

  private static Kind constant(String name) {
    return Constants.CODATA.find(name).orElseThrow().quantity().kind();
  }

  /** The project's own check, with the units of the row. */
  private static UnknownKinds.Found check(Law law, Map<String, Kind> kinds) {
    Function<String, Optional<Kind>> known =
        name ->
            Optional.ofNullable(kinds.get(name))
                .or(() -> Optional.of(name).filter(Constants.CODATA::has).map(LawsTest::constant));
    return UnknownKinds.of(List.of(law.equation()), known);
  }

  private static Map<String, Kind> kinds(Law law) {
    return law.symbols().stream()
        .collect(Collectors.toMap(Law.Symbol::name, symbol -> symbol.unit().kind()));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void bothSidesAreOfOneKind(Law law) {
    assertEquals(Optional.empty(), check(law, kinds(law)).disagreement(), law.relation());
  }

  /** All but the mass that stands in every term and cancels. */
  @ParameterizedTest
  @MethodSource("laws")
  void anotherUnitOfAnySymbolIsSeen(Law law) {
    for (Law.Symbol symbol : law.symbols()) {
      if (law.name().equals("energy_conservation") && symbol.name().equals("m")) {
        continue;
      }
      Map<String, Kind> kinds = kinds(law);
      kinds.put(symbol.name(), OTHER.kind());
      assertTrue(check(law, kinds).disagreement().isPresent(), law.relation() + " " + symbol);
    }
  }

  @ParameterizedTest
  @MethodSource("laws")
  void everyLetterIsExplainedOrAConstantAndNoSymbolHidesAConstant(Law law) {
    Set<String> symbols =
        law.symbols().stream().map(Law.Symbol::name).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(law.symbols().size(), symbols.size(), "a symbol twice");
    symbols.forEach(name -> assertFalse(Constants.CODATA.has(name), name));
    symbols.forEach(name -> assertEquals(Greek.normal(name), name));
    symbols.forEach(name -> assertFalse(Keywords.isReserved(name), name));
    Set<String> letters = letters(law.equation());
    assertTrue(letters.containsAll(symbols), "explained, but not in the relation");
    letters.removeAll(symbols);
    letters.forEach(name -> assertTrue(Constants.CODATA.has(name), name + " is not explained"));
    law.symbols().forEach(symbol -> assertFalse(symbol.meaning().isBlank(), symbol.name()));
  }

  private static Set<String> letters(Equation equation) {
    return Stream.of(equation.left(), equation.right())
        .flatMap(side -> side.accept(new Letters()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void itsNameCanBeWrittenAndItsCellsAreShort(Law law) {
    assertTrue(law.name().matches("[a-z]\\w{2,}"), law.name());
    assertFalse(Keywords.isReserved(law.name()), law.name());
    assertFalse(Constants.CODATA.has(law.name()), law.name());
    assertTrue(law.holds().length() <= LONGEST_WHEN, law.holds());
    assertFalse(law.holds().endsWith("."), law.holds());
    law.symbols().forEach(s -> assertTrue(s.meaning().length() <= LONGEST_MEANING, s.meaning()));
    assertFalse(law.sources().isEmpty());
    assertTrue(law.words().size() >= 2 || law.words().get(0).split(" ", -1).length > 1);
  }

  /** As in a sheet that has none of its symbols. */
  @ParameterizedTest
  @MethodSource("laws")
  void theRelationIsOneOfTheNotation(Law law) {
    List<Statement> read = Notation.parse("relation law_1: " + law.relation(), Names.NONE);
    assertEquals(1, read.size());
    assertTrue(read.get(0) instanceof Statement.Relation);
  }

  @Test
  void namesAndTitlesAreUnique() {
    assertEquals(Laws.all().size(), Set.copyOf(laws().stream().map(Law::name).toList()).size());
    Set<String> titles = new HashSet<>();
    laws().forEach(law -> assertTrue(titles.add(law.title()), law.title()));
  }

  @Test
  void everySourceIsUsed() {
    Set<String> used =
        laws().stream().flatMap(l -> l.sources().stream()).collect(Collectors.toSet());
    Table.read(Laws.class, "table/sources.tsv")
        .forEach(row -> assertTrue(used.contains(row.get("source")), row.get("key")));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void itsSearchWordsItsTitleAndItsNameFindIt(Law law) {
    Stream.concat(law.words().stream(), Stream.of(law.title(), law.name()))
        .forEach(words -> assertFound(law.name(), words));
  }

  private static void assertFound(String name, String words) {
    List<String> first = Laws.search(words).stream().limit(SEEN_FIRST).map(Law::name).toList();
    assertTrue(first.contains(name), words + ": " + first);
  }

  /** What is typed is seldom what stands in the table. */
  @ParameterizedTest
  @CsvSource({
    "coulomb, force between two charges",
    "coulomb, the force charges exert on one another: how charged balls repel",
    "pendulum, pend",
    "pendulum, how long does a pendulum swing",
    "pendulum, swings",
    "pendulum, pendulm",
    "thin_lens, focal lengths of a lens",
    "thin_lens, lens",
    "escape_speed, escape velocity of the earth",
    "half_life_decay, half lives",
    "ideal_gas, IDEAL GAS",
    "resistors_parallel, parallel resistor",
    "doppler, dopler shift",
    "buoyancy, archimedes",
    "charge_number, how many electrons",
    "hooke, stretching of springs",
    "free_fall, how long does a stone fall",
  })
  void otherWordsFindItToo(String name, String words) {
    assertFound(name, words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "   ", "xyzzy", "?!", "zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz"})
  void wordsOfNothingFindNothing(String words) {
    assertEquals(List.of(), Laws.search(words));
  }

  @ParameterizedTest
  @CsvSource({"coulmb, coulomb", "pendlum, pendulum", "bernouli, bernoulli", "coulom, coulomb"})
  void aNearNameIsOffered(String slip, String name) {
    assertTrue(Laws.near(slip).contains(name), Laws.near(slip)::toString);
  }

  @Test
  void aSymbolMayBeWrittenWithoutItsLine() {
    Law law = Laws.find("coulomb").orElseThrow();
    for (String written : List.of("q_1", "q1", "q₁")) {
      assertEquals("q_1", law.symbol(written).orElseThrow().name());
    }
    assertEquals(Optional.empty(), law.symbol("q_3"));
  }

  @Test
  void equalFactorsSideBySideBecomeASquare() {
    Law law = Laws.find("coulomb").orElseThrow();
    Expr q = new Expr.Name(new Span(0, 1), "q");
    Equation equation = law.with(Map.of("q_1", q, "q_2", q), new Span(4, 11));
    assertEquals("F = k_e q^2/r^2", equation.text());
    assertEquals(new Span(4, 11), equation.left().span());
  }
}
