package plainscale.language.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import jdk.jshell.JShell;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import plainscale.language.Outcome;
import plainscale.sheet.Result;
import plainscale.sheet.Run;

/** The cells of one lesson in Java, run in this process: what they show are results. */
public final class JavaCells {
  private final LocalCells cells = new LocalCells();
  private final Origins origins = new Origins();
  private final JShell jshell =
      Imports.into(JShell.builder().executionEngine(new Here(cells), Map.of()));

  /** Runs a cell; a mistake of its author is among the results. */
  public Run run(String cellId, String source) {
    origins.begin();
    Outcome outcome = new CellRun(jshell, cells, origins, source, () -> false).run();
    List<Result> results = new ArrayList<>(cells.results());
    if (outcome instanceof Outcome.Failed failed) {
      results.add(new Result.Failed(failed.name(), failed.lines()));
    }
    return new Run(results, List.of(), false);
  }

  private record Here(LocalCells cells) implements ExecutionControlProvider {
    @Override
    public String name() {
      return "here";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
      return cells;
    }
  }
}
