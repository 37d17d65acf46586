package plainscale.language;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.algebra.Budget;
import plainscale.data.DataFolder;
import plainscale.notation.Problem;
import plainscale.render.ProblemText;
import plainscale.sheet.Result;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;

/** The cell notation as a kernel's language: one sheet for the life of the kernel. */
public final class NotationLanguage implements Language {
  private static final String OUT_OF_DATE =
      "Out of date: after the last change this cannot be computed any more.";

  /** A front end starts a kernel in the folder of its notebook. */
  private final Sheet sheet = new Sheet(new DataFolder(Path.of("")));

  private final Completer completer = new Completer(sheet);
  private final Inspector inspector = new Inspector(sheet);
  private volatile boolean stop;
  private int unnamed;

  /**
   * A language with an empty sheet. The unit library loads meanwhile, before the first cell wants
   * it; the speller waits until the first word is asked for.
   */
  public NotationLanguage() {
    Thread loading = new Thread(NotationLanguage::load, "plainscale-load");
    loading.setDaemon(true);
    loading.start();
  }

  private static void load() {
    Run run = new Sheet().run("load", "given m = 1.0 ± 0.1 g\nw = m g_n in mN");
    MimeBundles.of(run.results());
  }

  @Override
  public LanguageInfo info() {
    return new LanguageInfo(
        "plainscale",
        "1",
        "text/x-plainscale",
        ".pls",
        "text",
        "Plainscale: physics worked examples. Try: given m = 2.70 ± 0.05 g",
        List.of());
  }

  @Override
  public Outcome execute(Cell cell, Outputs outputs, Input input) {
    stop = false;
    String id = cell.id().orElseGet(() -> "run-" + ++unnamed);
    Run run = sheet.run(id, cell.source(), Budget.usual(() -> stop));
    show(run, id, outputs);
    run.updates()
        .forEach(
            update -> outputs.update(MimeBundles.of(dated(update)), displayId(update.cellId())));
    return outcome(run);
  }

  /**
   * What can never go out of date is the cell's value; all else is a display that later cells may
   * update.
   */
  private static void show(Run run, String id, Outputs outputs) {
    List<Result> results =
        run.results().stream().filter(result -> !(result instanceof Result.Mistaken)).toList();
    if (results.isEmpty()) {
      return;
    }
    if (run.fixed()) {
      outputs.result(MimeBundles.of(results));
    } else {
      outputs.display(MimeBundles.of(results), displayId(id));
    }
  }

  private static String displayId(String cellId) {
    return "plainscale-" + cellId;
  }

  private static List<Result> dated(Run.Update update) {
    boolean broken = update.results().stream().anyMatch(Result.Mistaken.class::isInstance);
    if (!broken) {
      return update.results();
    }
    List<Result> results = new ArrayList<>(List.of(new Result.Noted(OUT_OF_DATE)));
    results.addAll(update.results());
    return results;
  }

  private static Outcome outcome(Run run) {
    List<Problem> problems = run.mistakes().stream().map(Result.Mistaken::problem).toList();
    if (problems.isEmpty()) {
      return new Outcome.Ok();
    }
    List<String> lines = new ArrayList<>();
    for (Problem problem : problems) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(ProblemText.lines(problem));
    }
    Problem first = problems.get(0);
    return new Outcome.Failed(first.kind().title(), first.sentence(), lines);
  }

  @Override
  public void interrupt() {
    stop = true;
  }

  @Override
  public Outcome evaluate(String expression, Outputs outputs) {
    Run run = sheet.evaluate(expression, Budget.usual(() -> stop));
    if (run.ok()) {
      outputs.result(MimeBundles.of(run.results()));
    }
    return outcome(run);
  }

  @Override
  public Completion complete(String code, int cursor) {
    return completer.complete(code, cursor);
  }

  @Override
  public Optional<MimeBundle> inspect(String code, int cursor, int detailLevel) {
    return inspector.inspect(code, cursor);
  }

  @Override
  public Completeness completeness(String code) {
    return CompletenessCheck.of(code, sheet.names());
  }
}
