package plainscale.api;

import java.util.List;
import plainscale.picture.Scene;
import plainscale.render.Pictures;
import plainscale.render.Renderers;
import plainscale.sheet.Result;

/**
 * What has something to show: the results that the notation shows for the same thing, in the same
 * media.
 *
 * <pre>{@code
 * Displayed pendulum = law("pendulum");
 * check(pendulum.text().contains("T = 2*π sqrt(l/g_n)"));
 * check(pendulum.results().size() == 1);
 * }</pre>
 */
public interface Displayed {

  /**
   * The results, in order.
   *
   * @throws PhysicsException if what was asked has no answer
   */
  List<Result> results();

  /** The results in plain text; for pictures stands the text that says the same. */
  default String text() {
    return Renderers.text(results());
  }

  /** The results as HTML for a page, with MathML and inline SVG. */
  default String html() {
    return Renderers.pageHtml(results());
  }

  /** The pictures that belong to the results; {@link plainscale.picture.SvgWriter} writes them. */
  default List<Scene> pictures() {
    return Pictures.of(results());
  }
}
