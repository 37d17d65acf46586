package plainscale;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.api.Displays;

/** One direction of dependence in the library. */
class DirectionTest {
  private static final int FEWEST_CLASSES = 100;

  /** Each knows only what stands before it. */
  private static final List<String> CHAIN =
      List.of(
          "text",
          "table",
          "units",
          "quantity",
          "notation",
          "algebra",
          "laws",
          "sheet",
          "render",
          "document",
          "api");

  /** Class data, fields, and the writing and drawing of magnitudes stand beside the chain. */
  private static final List<String> BESIDE = List.of("data", "magnitude", "picture", "field");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(
              Stream.concat(CHAIN.stream(), BESIDE.stream())
                  .map(name -> "plainscale." + name)
                  .toArray(String[]::new));

  private static String in(String name) {
    return "plainscale." + name + "..";
  }

  private static void assertKnowsNone(String name, List<String> others) {
    noClasses()
        .that()
        .resideInAPackage(in(name))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(others.stream().map(DirectionTest::in).toArray(String[]::new))
        .check(CLASSES);
  }

  @Test
  void enoughClassesAreSeenForTheRulesToMeanSomething() {
    assertTrue(CLASSES.size() >= FEWEST_CLASSES, CLASSES.size() + " classes");
    for (String name : CHAIN) {
      assertTrue(CLASSES.containPackage("plainscale." + name), name);
    }
  }

  static IntStream places() {
    return IntStream.range(0, CHAIN.size() - 1);
  }

  @ParameterizedTest
  @MethodSource("places")
  void aPackageKnowsNoneThatStandsAfterIt(int place) {
    assertKnowsNone(CHAIN.get(place), CHAIN.subList(place + 1, CHAIN.size()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"magnitude", "picture"})
  void magnitudesAndPicturesKnowNumbersOnly(String name) {
    assertKnowsNone(name, CHAIN.subList(CHAIN.indexOf("units"), CHAIN.size()));
  }

  @Test
  void aFieldKnowsNumbersOnly() {
    assertKnowsNone("field", CHAIN);
    assertKnowsNone("field", List.of("magnitude", "picture"));
    assertTrue(CLASSES.containPackage("plainscale.field"));
  }

  @Test
  void onlyThePicturesOfFieldsKnowFields() {
    noClasses()
        .that()
        .resideInAPackage(in("picture"))
        .and()
        .resideOutsideOfPackage(in("picture.field"))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(in("field"), in("picture.field"))
        .check(CLASSES);
    assertTrue(CLASSES.containPackage("plainscale.picture.field"));
  }

  @Test
  void aMagnitudeKnowsNoPicture() {
    assertKnowsNone("magnitude", List.of("picture", "data"));
    assertKnowsNone("picture", List.of("data"));
  }

  @Test
  void dataKnowUnitsAndQuantitiesOnly() {
    assertKnowsNone("data", CHAIN.subList(CHAIN.indexOf("notation"), CHAIN.size()));
    assertKnowsNone("data", List.of("magnitude", "picture"));
  }

  @Test
  void whatComesBeforeTheSheetKnowsNothingBesideIt() {
    CHAIN.subList(0, CHAIN.indexOf("sheet")).forEach(name -> assertKnowsNone(name, BESIDE));
  }

  @Test
  void thereAreNoCircles() {
    slices().matching("plainscale.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void nothingIsPrintedPastTheResults() {
    // The display of plain programs prints by its purpose.
    JavaClasses others = CLASSES.that(DescribedPredicate.not(type(Displays.class)));
    GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(others);
  }

  @Test
  void onlyTheUnitsKnowTheUnitLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackage(in("units"))
        .and()
        .doNotHaveSimpleName("Prefixes") // takes the list of prefixes, and nothing else, from it
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tech.units..", "javax.measure..", "systems.uom..")
        .check(CLASSES);
  }

  @Test
  void onlyTheSchemaKnowsItsValidator() {
    noClasses()
        .that()
        .haveNameNotMatching("plainscale\\.document\\.Schema.*")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.networknt..")
        .check(CLASSES);
  }
}
