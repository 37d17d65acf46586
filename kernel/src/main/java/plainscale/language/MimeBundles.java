package plainscale.language;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plainscale.render.Renderers;
import plainscale.sheet.Result;

/**
 * Results as mime bundles: HTML that survives sanitising, plain text always, TeX where there is
 * mathematics.
 */
public final class MimeBundles {
  private MimeBundles() {}

  /** One bundle for all of them, in their order. */
  public static MimeBundle of(List<Result> results) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("text/html", Renderers.cellHtml(results));
    Renderers.latex(results).ifPresent(tex -> data.put("text/latex", tex));
    data.put("text/plain", Renderers.text(results));
    return MimeBundle.of(data);
  }
}
