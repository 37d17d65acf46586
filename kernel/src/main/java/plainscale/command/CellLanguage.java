package plainscale.command;

import java.util.List;
import java.util.function.Supplier;
import plainscale.language.Language;
import plainscale.language.NotationLanguage;
import plainscale.language.java.JavaLanguage;

/** What cells may be written in; each is a kernelspec of its own, from the same jar. */
enum CellLanguage {
  /** The notation, which can do nothing but compute. */
  NOTATION("plainscale", "Plainscale", "plainscale", "256m"),

  /** Java, which can do whatever its user can: that stands in the name which people choose. */
  JAVA("plainscale-java", "Plainscale Java (runs any code)", "java", "512m");

  private static final List<String> NOTATION_CELLS =
      List.of(
          """
          given m = 2.70 ± 0.05 g "mass"
          given d = 14.0(5) cm
          w = m g_n
          n = m/(2 [u])
          show n in words
          show w in mN to 2 figures
          say "weight {w}"
          contrast w with k_e e^2/d^2
          """,
          "1 + 1",
          "d + w");

  private static final List<String> JAVA_CELLS =
      List.of(
          """
          var m = quantity("2.70(5) g");
          int twice(int n) { return 2 * n; }
          System.out.println(twice(2));
          m
          """,
          "List.of(1, 2)",
          "m +");

  private final String spec;
  private final String title;
  private final String jupyterName;
  private final String heap;

  CellLanguage(String spec, String title, String jupyterName, String heap) {
    this.spec = spec;
    this.title = title;
    this.jupyterName = jupyterName;
    this.heap = heap;
  }

  /** The name of the kernelspec. */
  String spec() {
    return spec;
  }

  /** What people choose from. */
  String title() {
    return title;
  }

  /** The language's name as front ends know it. */
  String jupyterName() {
    return jupyterName;
  }

  /** The most memory that the kernel may take; Java's holds a compiler. */
  String heap() {
    return heap;
  }

  /** What a kernelspec starts the jar with. */
  List<String> arguments(String connectionFile) {
    return List.of("kernel", connectionFile, name());
  }

  /** Whether that is what the jar was started with. */
  boolean isKernel(String... arguments) {
    return arguments.length == 3
        && !arguments[1].startsWith("-")
        && arguments(arguments[1]).equals(List.of(arguments));
  }

  /** A language that has done nothing yet; its classes are loaded here and not before. */
  Supplier<Language> factory() {
    return switch (this) {
      case NOTATION -> NotationLanguage::new;
      case JAVA -> JavaLanguage::new;
    };
  }

  /** Cells that use most of what a lesson's first cells will use; the last one fails. */
  List<String> rehearsal() {
    return switch (this) {
      case NOTATION -> NOTATION_CELLS;
      case JAVA -> JAVA_CELLS;
    };
  }

  /** Whether this Java has what the language needs; a runtime alone has no compiler. */
  boolean isAvailable() {
    return this == NOTATION || ModuleLayer.boot().findModule("jdk.jshell").isPresent();
  }
}
