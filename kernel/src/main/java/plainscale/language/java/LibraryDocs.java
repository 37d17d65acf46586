package plainscale.language.java;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.api.ApiDocs;

/** The library's own words on a signature as JShell writes it. */
final class LibraryDocs {
  private static final List<String> PACKAGES =
      List.of(
          "", "plainscale.api.", "plainscale.quantity.", "plainscale.data.", "plainscale.sheet.");
  private static final Pattern METHOD =
      Pattern.compile("(?:.* )?(?<type>[\\w.]+)(?:<.*>)?\\.(?<name>\\w+)\\((?<parameters>.*)\\)");
  private static final Pattern TYPE = Pattern.compile("(?<type>[\\w.]+)(?:<.*>)?");

  private LibraryDocs() {}

  static Optional<String> of(String signature) {
    Matcher method = METHOD.matcher(signature);
    if (method.matches()) {
      List<String> types = types(method.group("parameters"));
      return named(method.group("type"))
          .flatMap(type -> ApiDocs.of(type, method.group("name"), types).stream())
          .findFirst();
    }
    Matcher type = TYPE.matcher(signature);
    return type.matches()
        ? named(type.group("type")).flatMap(name -> ApiDocs.of(name).stream()).findFirst()
        : Optional.empty();
  }

  private static Stream<String> named(String type) {
    return PACKAGES.stream().map(name -> name + type);
  }

  /** The simple names of the types of {@code List<String> names, Quantity... values}. */
  private static List<String> types(String parameters) {
    String plain = withoutArguments(parameters);
    return plain.isBlank()
        ? List.of()
        : Stream.of(plain.split(", *")).map(LibraryDocs::type).toList();
  }

  private static String type(String parameter) {
    String type = parameter.strip().replaceFirst(" \\w+$", "").replace("...", "[]");
    return type.substring(type.lastIndexOf('.') + 1);
  }

  private static String withoutArguments(String text) {
    String plain = text.replaceAll("<[^<>]*>", "");
    return plain.equals(text) ? text : withoutArguments(plain);
  }
}
