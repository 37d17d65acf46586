package plainscale.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plainscale.quantity.Arithmetic;
import plainscale.quantity.Quantity;

/** The names of the façade stand beside Java's own, and each has its documentation at run time. */
class NamesTest {

  static List<Class<?>> types() throws IOException {
    List<Class<?>> types = new ArrayList<>();
    try (Stream<Path> files = Files.list(Compiling.sources("main").resolve("plainscale/api"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        if (!name.equals("package-info")) {
          types.add(loaded("plainscale.api." + name));
        }
      }
    }
    types.removeIf(type -> !Modifier.isPublic(type.getModifiers()));
    return types;
  }

  private static Class<?> loaded(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "java.lang",
        "java.io",
        "java.math",
        "java.net",
        "java.nio.file",
        "java.util",
        "java.util.concurrent",
        "java.util.function",
        "java.util.prefs",
        "java.util.regex",
        "java.util.stream"
      })
  void noTypeIsCalledAsOneThatCellsImport(String imported) throws IOException {
    assertTrue(types().size() > 15);
    for (Class<?> type : types()) {
      String name = imported + "." + type.getSimpleName();
      assertThrows(ClassNotFoundException.class, () -> Class.forName(name));
    }
  }

  @Test
  void noMethodIsCalledAsOneOfJavasMathematics() {
    Set<String> mathematics =
        Stream.of(Math.class.getMethods()).map(Method::getName).collect(Collectors.toSet());
    for (Method method : Plainscale.class.getDeclaredMethods()) {
      assertTrue(!mathematics.contains(method.getName()), method.getName());
    }
  }

  static Stream<Class<?>> documented() throws IOException {
    return Stream.concat(
        types().stream(), Stream.of(Quantity.class, Arithmetic.class, ForcesOn.ForceTo.class));
  }

  @ParameterizedTest
  @MethodSource("documented")
  void everyPublicMethodHasItsDocumentation(Class<?> type) {
    String name = type.getName();
    assertTrue(ApiDocs.of(name).isPresent(), name);
    for (Method method : type.getDeclaredMethods()) {
      boolean ofObject = List.of("toString", "equals", "hashCode").contains(method.getName());
      if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !ofObject) {
        String words = ApiDocs.of(name, method.getName(), parameters(method)).orElse("");
        assertTrue(words.length() > 5 && !words.contains("{@"), method + ": " + words);
      }
    }
    for (Constructor<?> constructor : type.getConstructors()) {
      assertTrue(type.isRecord(), constructor.toString());
    }
  }

  private static List<String> parameters(Executable executable) {
    return Arrays.stream(executable.getParameterTypes()).map(Class::getSimpleName).toList();
  }

  @Test
  void documentationIsPlainText() {
    assertEquals(
        "A measured number of a unit with its standard uncertainty, as an instrument gives it to a"
            + " program: measured(14.0, 0.5, \"cm\").\n\n"
            + "Throws PhysicsException if that is no unit, or a number is not finite",
        ApiDocs.of("plainscale.api.Plainscale", "measured", List.of("double", "double", "String"))
            .orElseThrow());
    assertEquals(
        "The square root.",
        ApiDocs.of("plainscale.quantity.Quantity", "sqrt", List.of()).orElseThrow());
    assertEquals(
        "To the left.",
        ApiDocs.of("plainscale.api.ForcesOn$ForceTo", "left", List.of()).orElseThrow());
    assertTrue(ApiDocs.of("plainscale.api.Plainscale", "quantity", List.of("int")).isEmpty());
    assertTrue(ApiDocs.of("plainscale.api.Nothing").isEmpty());
    assertTrue(ApiDocs.of("").isEmpty());
  }
}
