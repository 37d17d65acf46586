package plainscale.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plainscale.fixtures.Block;
import plainscale.render.Renderers;

/** A cell that should be told of, and the same with other numbers or words, which should not. */
record GuardFixture(Block block) {
  private static final Pattern DEFINES = Pattern.compile("(?:given )?(\\S+) =.*");

  static List<GuardFixture> read(String name) {
    return Block.read(name).stream().map(GuardFixture::new).toList();
  }

  List<Result> told() {
    return results(block.all("cell"));
  }

  String text() {
    return Renderers.text(told());
  }

  /** Whether there is a cell of which nothing is to be told. */
  boolean hasQuiet() {
    return !block.all("instead").isEmpty();
  }

  List<Result> quiet() {
    List<String> lines = new ArrayList<>(block.all("cell"));
    for (String other : block.all("instead")) {
      int before = lines.size();
      lines.replaceAll(line -> name(line).equals(name(other)) ? other : line);
      assertEquals(true, lines.contains(other) && lines.size() == before, other);
    }
    return results(lines);
  }

  private static String name(String line) {
    Matcher matcher = DEFINES.matcher(line);
    return matcher.matches() ? matcher.group(1) : "";
  }

  private static List<Result> results(List<String> lines) {
    Run run = new Sheet().run("cell", String.join("\n", lines));
    assertEquals(List.of(), run.mistakes());
    return run.results();
  }

  @Override
  public String toString() {
    return block.one("id");
  }
}
