package plainscale.language.java;

import java.util.List;
import jdk.jshell.JShell;

/** What cells find without importing it. */
final class Imports {
  private static final List<String> NAMES =
      List.of(
          "java.io.*",
          "java.math.*",
          "java.nio.file.*",
          "java.util.*",
          "java.util.function.*",
          "java.util.stream.*",
          "plainscale.api.*",
          "plainscale.data.DataTable",
          "plainscale.notation.DataStatement.Curve",
          "plainscale.quantity.Quantity",
          "static plainscale.api.Plainscale.*");

  private Imports() {}

  /** Builds a JShell that compiles against the library and has imported it. */
  static JShell into(JShell.Builder builder) {
    JShell jshell =
        builder.compilerOptions("--class-path", CellProcess.classPath(), "-Xlint:none").build();
    NAMES.forEach(name -> jshell.eval("import " + name + ";"));
    return jshell;
  }
}
