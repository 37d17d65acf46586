package plainscale.lessons;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The lessons beside this class, in both forms: whatever lies there ships. */
public final class ShippedLessons {
  private static final String FOLDER = "/plainscale/lessons";

  private ShippedLessons() {}

  /** The notebooks by file name, in the order of the names. */
  public static SortedMap<String, String> notebooks() {
    return files(".ipynb");
  }

  /** The same lessons as texts, likewise. */
  public static SortedMap<String, String> texts() {
    return files(".md");
  }

  /** The tables that lessons read, likewise. */
  public static SortedMap<String, String> tables() {
    return files(".csv");
  }

  private static SortedMap<String, String> files(String ending) {
    try {
      URI self = self();
      if (!self.getScheme().equals("jar")) {
        Path folder = Objects.requireNonNull(Path.of(self).getParent(), "a class has a folder");
        return files(folder, ending);
      }
      try (FileSystem jar = FileSystems.newFileSystem(self, Map.of())) {
        return files(jar.getPath(FOLDER), ending);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The place of this class; the folder of the package may be in the class path several times. */
  private static URI self() {
    URL url =
        Objects.requireNonNull(
            ShippedLessons.class.getResource("ShippedLessons.class"), "no place of a class");
    try {
      return url.toURI();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static SortedMap<String, String> files(Path folder, String ending) throws IOException {
    SortedMap<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(ending)).toList()) {
        found.put(String.valueOf(file.getFileName()), Files.readString(file));
      }
    }
    return found;
  }
}
