package plainscale.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The documentation of the library's types for programs that show it while one writes. It is read
 * from the sources that lie in the same jar, when it is first asked for.
 *
 * <pre>{@code
 * String words = ApiDocs.of("plainscale.api.Plainscale", "quantity", List.of("String"))
 *     .orElseThrow();
 * check(words.startsWith("A quantity as a given is written"));
 * check(ApiDocs.of("plainscale.api.Wording").isPresent());
 * check(ApiDocs.of("java.lang.String").isEmpty());
 * }</pre>
 */
public final class ApiDocs {
  private static final Map<String, Optional<DocComments>> READ = new ConcurrentHashMap<>();

  /** Where the sources lie in the jar. */
  private static final String SOURCES = "/META-INF/plainscale-sources/";

  private ApiDocs() {}

  /**
   * What a type is, in plain text; its full name, a nested one as in a source or as at run time.
   */
  public static Optional<String> of(String className) {
    return comments(className).flatMap(read -> read.ofType(nested(className)));
  }

  /**
   * What a method is, in plain text, by the simple names of the types of its parameters: {@code
   * String}, {@code List}, {@code Quantity[]} for {@code Quantity...}. What a type inherits is
   * found where it is declared. The same for a field or a constant, without parameters.
   */
  public static Optional<String> of(
      String className, String memberName, List<String> parameterSimpleTypes) {
    Optional<DocComments> read = comments(className);
    Optional<String> own =
        read.flatMap(
            comments -> comments.ofMember(nested(className), memberName, parameterSimpleTypes));
    return own.or(
        () ->
            read.stream()
                .flatMap(comments -> comments.supertypes(nested(className)).stream())
                .flatMap(type -> of(type, memberName, parameterSimpleTypes).stream())
                .findFirst());
  }

  /** {@code ForcesOn.ForceTo} of {@code plainscale.api.ForcesOn$ForceTo}. */
  private static String nested(String className) {
    return className.substring(packageLength(className)).replace('$', '.');
  }

  private static int packageLength(String className) {
    int start = 0;
    while (start < className.length() && Character.isLowerCase(className.charAt(start))) {
      int dot = className.indexOf('.', start);
      if (dot < 0) {
        return start;
      }
      start = dot + 1;
    }
    return start;
  }

  private static Optional<DocComments> comments(String className) {
    String outer = nested(className).split("\\.", 2)[0];
    String source =
        SOURCES
            + className.substring(0, packageLength(className)).replace('.', '/')
            + outer
            + ".java";
    return READ.computeIfAbsent(source, ApiDocs::read);
  }

  private static Optional<DocComments> read(String source) {
    try (InputStream in = ApiDocs.class.getResourceAsStream(source)) {
      return in == null
          ? Optional.empty()
          : Optional.of(DocComments.of(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
