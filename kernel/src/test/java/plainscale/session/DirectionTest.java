package plainscale.session;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** One direction: wire ← session → language. */
class DirectionTest {

  private static final String WIRE = "plainscale.wire..";
  private static final String SESSION = "plainscale.session..";
  private static final String LANGUAGE = "plainscale.language..";
  private static final int FEWEST_CLASSES = 45;

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("plainscale.wire", "plainscale.session", "plainscale.language");

  @Test
  void enoughClassesAreSeenForTheRulesToMeanSomething() {
    assertTrue(CLASSES.size() >= FEWEST_CLASSES, CLASSES.size() + " classes");
  }

  @Test
  void theWireKnowsNoSocketNoSessionAndNoLanguage() {
    noClasses()
        .that()
        .resideInAPackage(WIRE)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(SESSION, LANGUAGE, "org.zeromq..", "zmq..")
        .check(CLASSES);
  }

  @Test
  void aLanguageKnowsNothingOfMessages() {
    noClasses()
        .that()
        .resideInAPackage(LANGUAGE)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "plainscale.wire..",
            "plainscale.session..",
            "plainscale.command..",
            "org.zeromq..",
            "com.fasterxml..")
        .check(CLASSES);
  }

  @Test
  void onlyOneClassTouchesSockets() {
    noClasses()
        .that()
        .doNotHaveSimpleName("SocketLoop")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.zeromq..", "zmq..")
        .check(CLASSES);
  }

  @Test
  void nobodyInterruptsAThreadExceptItself() {
    noClasses()
        .that()
        .doNotHaveSimpleName("KernelServer")
        .should()
        .callMethod(Thread.class, "interrupt")
        .check(CLASSES);
  }

  @Test
  void whoServesCellsKnowsNoFilesOfLessons() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("plainscale.document..", "plainscale.lessons..")
        .check(CLASSES);
  }
}
