package plainscale.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import plainscale.text.Near;

/**
 * The folder of the notebook, and the files in it that a sheet may read: by a relative name that
 * stays inside after symbolic links are followed, plain files only, of a bounded size. Everything
 * else is refused in one sentence; no path outside is ever named in it.
 */
public record DataFolder(Path folder) {
  private static final int MOST_LISTED = 1000;

  /** The bytes of a file. */
  public byte[] bytes(String name) {
    Path file = resolve(name);
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(Limits.BYTES + 1);
      if (bytes.length > Limits.BYTES) {
        throw new DataException(
            "“%s” is larger than %d MB.".formatted(Shortened.of(name), Limits.BYTES >> 20));
      }
      return bytes;
    } catch (IOException e) {
      throw new DataException("“%s” cannot be read.".formatted(Shortened.of(name)));
    }
  }

  /** The table in a file. */
  public DataTable table(String name) {
    return DataTable.read(name, bytes(name));
  }

  /** The file of that name, every link followed. */
  private Path resolve(String name) {
    Path path = relative(name);
    try {
      Path root = folder.toRealPath();
      Path asked = root.resolve(path).normalize();
      refuseOutside(asked, root, name);
      if (!Files.exists(asked)) {
        throw notFound(asked, root, name);
      }
      Path real = asked.toRealPath();
      refuseOutside(real, root, name);
      refuseOtherThanFile(real, name);
      return real;
    } catch (IOException e) {
      throw new DataException("“%s” cannot be read.".formatted(Shortened.of(name)));
    }
  }

  private static Path relative(String name) {
    boolean windows = name.matches("(?s)[A-Za-z]:.*|[\\\\/].*|~.*|\\w+://.*");
    try {
      Path path = Path.of(name);
      if (path.isAbsolute() || windows || name.isBlank()) {
        throw new DataException(
            "“%s” is not a name beside the notebook.".formatted(Shortened.of(name)),
            "put the file into the notebook's folder and write its name only");
      }
      return path;
    } catch (InvalidPathException e) {
      throw new DataException("“%s” cannot be the name of a file.".formatted(Shortened.of(name)));
    }
  }

  private static void refuseOutside(Path path, Path root, String name) {
    if (!path.startsWith(root)) {
      throw new DataException(
          "“%s” leads out of the notebook's folder.".formatted(Shortened.of(name)),
          "put a copy of the file into the notebook's folder");
    }
  }

  private static void refuseOtherThanFile(Path real, String name) {
    if (Files.isDirectory(real)) {
      throw new DataException("“%s” is a folder, not a file.".formatted(Shortened.of(name)));
    }
    if (!Files.isRegularFile(real)) {
      throw new DataException("“%s” is a device, not a file.".formatted(Shortened.of(name)));
    }
  }

  /** The nearest names come from the folder in which the file would lie. */
  private static DataException notFound(Path asked, Path root, String name) throws IOException {
    Path parent = asked.getParent();
    List<String> there = List.of();
    if (parent != null && Files.isDirectory(parent) && parent.toRealPath().startsWith(root)) {
      try (Stream<Path> files = Files.list(parent)) {
        there = files.limit(MOST_LISTED).map(f -> String.valueOf(f.getFileName())).toList();
      }
    }
    List<String> near = Near.to(String.valueOf(asked.getFileName()), there, 3);
    return new DataException(
        "There is no file “%s” beside the notebook.".formatted(Shortened.of(name)), near);
  }
}
