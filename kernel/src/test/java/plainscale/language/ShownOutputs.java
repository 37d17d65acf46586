package plainscale.language;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps what cells show, as a front end would. */
final class ShownOutputs implements Outputs {
  final Map<String, MimeBundle> displays = new LinkedHashMap<>();
  final List<String> updated = new ArrayList<>();
  final List<MimeBundle> results = new ArrayList<>();

  @Override
  public void display(MimeBundle bundle, String displayId) {
    displays.put(displayId, bundle);
  }

  @Override
  public void update(MimeBundle bundle, String displayId) {
    displays.put(displayId, bundle);
    updated.add(displayId);
  }

  @Override
  public void result(MimeBundle bundle) {
    results.add(bundle);
  }

  @Override
  public void stream(Stream stream, String text) {
    throw new IllegalStateException("the notation writes to no stream");
  }

  static String text(MimeBundle bundle) {
    return String.valueOf(bundle.data().get("text/plain"));
  }
}
