package plainscale.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import plainscale.language.Cell;
import plainscale.language.MimeBundle;
import plainscale.language.NotationLanguage;
import plainscale.language.Outputs;

/**
 * Runs a sample cell of each kind and exits, so that the classes that a kernel needs are loaded and
 * can be archived.
 */
@Command(
    name = WarmUpCommand.NAME,
    hidden = true,
    description = "Loads what a kernel needs, and exits.")
final class WarmUpCommand implements Callable<Integer> {
  static final String NAME = "warm-up";

  private static final String SAMPLE =
      """
      given m = 2.70 ± 0.05 g "mass"
      given d = 14.0(5) cm
      w = m g_n
      n = m/(2 [u])
      show n in words
      show w in mN to 2 figures
      say "weight {w}"
      contrast w with k_e e^2/d^2
      d + w
      """;

  @Override
  public Integer call() throws Exception {
    NotationLanguage language = new NotationLanguage();
    language.info();
    language.execute(new Cell(SAMPLE, Optional.empty(), false), new Nowhere());
    language.complete("m", 1);
    language.inspect("m", 1, 0);
    return 0;
  }

  private static final class Nowhere implements Outputs {
    @Override
    public void display(MimeBundle bundle, String displayId) {}

    @Override
    public void update(MimeBundle bundle, String displayId) {}

    @Override
    public void result(MimeBundle bundle) {}

    @Override
    public void stream(Stream stream, String text) {}
  }
}
