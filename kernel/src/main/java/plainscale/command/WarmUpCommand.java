package plainscale.command;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Loads the classes that a kernel needs, so that they can be archived, and exits. */
@Command(
    name = WarmUpCommand.NAME,
    hidden = true,
    description = "Loads what a kernel needs, and exits.")
final class WarmUpCommand implements Callable<Integer> {
  static final String NAME = "warm-up";

  @Parameters(arity = "0..1", defaultValue = "NOTATION")
  private CellLanguage language = CellLanguage.NOTATION;

  @Override
  public Integer call() throws IOException, InterruptedException {
    return Rehearsal.run(language) ? 0 : Main.FAILED;
  }
}
