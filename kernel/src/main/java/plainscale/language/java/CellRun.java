package plainscale.language.java;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import plainscale.language.Outcome;
import plainscale.language.Outcome.Failed;

/** One run of one cell: its pieces in their order, up to the first that fails. */
final class CellRun {
  private static final String STOP = "Stopped. What was computed before is kept.";
  private static final Failed STOPPED = new Failed("Stopped", STOP, List.of(STOP));

  private final JShell jshell;
  private final SourceCodeAnalysis analysis;
  private final Cells cells;
  private final Origins origins;
  private final String source;
  private final BooleanSupplier stop;
  private final List<Snippet> created = new ArrayList<>();

  CellRun(JShell jshell, Cells cells, Origins origins, String source, BooleanSupplier stop) {
    this.jshell = jshell;
    this.analysis = jshell.sourceCodeAnalysis();
    this.cells = cells;
    this.origins = origins;
    this.source = source;
    this.stop = stop;
  }

  /** Runs the cell; nothing of it if its text stops in the middle. */
  Outcome run() {
    cells.begin();
    Outcome outcome = pieces();
    cells.end();
    return outcome;
  }

  /** Evaluates an expression beside the cells; what it declares by itself is taken back. */
  Outcome evaluateAndForget() {
    Outcome outcome = run();
    created.forEach(jshell::drop);
    return outcome;
  }

  private Outcome pieces() {
    List<Piece> pieces = Piece.of(source, analysis);
    List<Piece> broken = pieces.stream().filter(piece -> !piece.whole()).toList();
    List<Piece> used = broken.isEmpty() ? pieces : broken;
    for (int i = 0; i < used.size(); i++) {
      boolean last = i == used.size() - 1;
      Optional<Outcome> failed =
          stop.getAsBoolean() ? Optional.of(STOPPED) : evaluate(used.get(i), last);
      if (failed.isPresent()) {
        return failed.get();
      }
    }
    return new Outcome.Ok();
  }

  /** How the cell ends, if it ends with this piece. */
  private Optional<Outcome> evaluate(Piece piece, boolean last) {
    for (SnippetEvent event : jshell.eval(piece.text())) {
      if (event.causeSnippet() == null) {
        created.add(event.snippet());
        origins.add(event.snippet().id(), source, piece);
        Optional<Outcome> failed = failure(event, piece);
        if (failed.isPresent()) {
          return failed;
        }
        failed = show(event.snippet(), piece, last);
        if (failed.isPresent()) {
          return failed;
        }
      }
    }
    return cells.wasStopped() ? Optional.of(STOPPED) : Optional.empty();
  }

  private Optional<Outcome> failure(SnippetEvent event, Piece piece) {
    // A lock that the stop has met may throw something of its own on the way.
    boolean stopped = cells.wasStopped() || (event.exception() != null && stop.getAsBoolean());
    if (stopped) {
      return Optional.of(STOPPED);
    }
    if (event.exception() != null) {
      return Optional.of(RunProblems.of(event.exception(), origins));
    }
    Snippet snippet = event.snippet();
    return switch (event.status()) {
      case REJECTED ->
          Optional.of(CompileProblems.of(source, piece, jshell.diagnostics(snippet).toList()));
      case RECOVERABLE_NOT_DEFINED -> Optional.of(undeclared(snippet, piece));
      default -> Optional.empty();
    };
  }

  /** A variable or class cannot wait for what it uses, as a method can. */
  private Failed undeclared(Snippet snippet, Piece piece) {
    String names =
        snippet instanceof DeclarationSnippet declaration
            ? jshell.unresolvedDependencies(declaration).collect(Collectors.joining(", "))
            : "";
    List<Diag> diagnostics = jshell.diagnostics(snippet).filter(Diag::isError).toList();
    if (!diagnostics.isEmpty()) {
      return CompileProblems.of(source, piece, diagnostics);
    }
    String sentence =
        "Line %d uses what is not declared: %s. Try: declare it before."
            .formatted(piece.lineInCell(source, 1), names);
    return new Failed("CompileProblem", sentence, List.of(sentence));
  }

  private Optional<Outcome> show(Snippet snippet, Piece piece, boolean last) {
    boolean expression =
        snippet.kind() == Snippet.Kind.EXPRESSION
            || snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
    List<String> wrong =
        expression && !piece.isQuiet(analysis) ? cells.show(last).lines().toList() : List.of();
    return wrong.isEmpty()
        ? Optional.empty()
        : Optional.of(new Failed("NotShown", wrong.get(0), wrong));
  }
}
