package plainscale.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The bodies on which a sheet declares forces. They are entries like names, under a key with
 * spaces, which no name has; so the newest declaration counts, and what leans on it is updated.
 */
final class Bodies {
  /** What leans on all bodies leans on this. */
  static final String ALL = "forces on all bodies";

  private static final String KEY = "forces on ";

  private Bodies() {}

  /** Under which name the forces on a body are entered. */
  static String key(String body) {
    return KEY + body;
  }

  private static boolean isKey(String name) {
    return name.startsWith(KEY);
  }

  /** The entries that declare forces, in their order. */
  static List<Entry> in(Map<String, Entry> entries) {
    return entries.values().stream().filter(entry -> isKey(entry.name())).toList();
  }

  /** A change of one body is a change for what leans on all of them. */
  static void complete(Set<String> changed) {
    if (changed.stream().anyMatch(Bodies::isKey)) {
      changed.add(ALL);
    }
  }

  /** A name, or for all bodies each of them. */
  static Stream<String> each(String name, Map<String, Entry> entries) {
    return name.equals(ALL)
        ? Stream.concat(Stream.of(ALL), in(entries).stream().map(Entry::name))
        : Stream.of(name);
  }

  /** Whether two texts mean the same body: “Earth”, “the earth”. */
  static boolean isSame(String one, String other) {
    return normal(one).equals(normal(other));
  }

  private static String normal(String body) {
    return body.toLowerCase(Locale.ROOT).replaceFirst("^the\\s+", "").replaceAll("\\s+", " ");
  }
}
