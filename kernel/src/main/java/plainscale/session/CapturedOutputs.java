package plainscale.session;

import java.util.Map;
import plainscale.language.MimeBundle;
import plainscale.language.Outputs;

/** Keeps what a user expression shows for the reply instead of publishing it. */
final class CapturedOutputs implements Outputs {

  private MimeBundle bundle = MimeBundle.of(Map.of());

  /** The last bundle shown; empty if there was none. */
  synchronized MimeBundle bundle() {
    return bundle;
  }

  @Override
  public void display(MimeBundle shown, String displayId) {
    result(shown);
  }

  @Override
  public void update(MimeBundle shown, String displayId) {}

  @Override
  public synchronized void result(MimeBundle shown) {
    bundle = shown;
  }

  @Override
  public void stream(Stream stream, String text) {}
}
