package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.picture.Scene;
import plainscale.sheet.Result;

/** The pictures that results are shown with, by themselves. */
public final class Pictures {
  private Pictures() {}

  /** The pictures in the order in which a page has them. */
  public static List<Scene> of(List<Result> results) {
    List<Scene> scenes = new ArrayList<>();
    HtmlRenderer renderer = new HtmlRenderer(Medium.PAGE.seenBy(scenes::add));
    results.forEach(result -> result.accept(renderer));
    return List.copyOf(scenes);
  }
}
